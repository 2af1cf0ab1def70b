/** From readings back to the bench that gives them, and how sure that is. */
@NullMarked
package halfwave.matching;

import org.jspecify.annotations.NullMarked;
