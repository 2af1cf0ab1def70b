/** How the flame signal fades over hours of flame, how sure that is, and what work would help. */
@NullMarked
package halfwave.forecast;

import org.jspecify.annotations.NullMarked;
