/**
 * What is done to an appliance, and what it then does: acts in words, scripts, and their course.
 */
@NullMarked
package halfwave.io.sequence;

import org.jspecify.annotations.NullMarked;
