/** Meters: what they insert in the circuit and what they show. */
@NullMarked
package halfwave.instrument;

import org.jspecify.annotations.NullMarked;
