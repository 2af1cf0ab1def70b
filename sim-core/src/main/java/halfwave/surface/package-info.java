/**
 * What settles on an electrode and how hot the electrode is: contamination films and rod heating.
 */
@NullMarked
package halfwave.surface;

import org.jspecify.annotations.NullMarked;
