/** Sourced constants, argument guards, deterministic maths. */
@NullMarked
package halfwave.quantity;

import org.jspecify.annotations.NullMarked;
