/** The flame as it is seen: its body, its pixels, and the zone around it that is to scale. */
@NullMarked
package halfwave.picture.flame;

import org.jspecify.annotations.NullMarked;
