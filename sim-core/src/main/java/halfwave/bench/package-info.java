/** Design and condition; shipped benches; builds the circuit. */
@NullMarked
package halfwave.bench;

import org.jspecify.annotations.NullMarked;
