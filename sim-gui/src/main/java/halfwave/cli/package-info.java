/** Commands. */
@NullMarked
package halfwave.cli;

import org.jspecify.annotations.NullMarked;
