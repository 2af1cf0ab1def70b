/**
 * Files of benches and their boards, changes of them in words, lumped circuits, sweeps, and decks
 * for ngspice.
 */
@NullMarked
package halfwave.io.bench;

import org.jspecify.annotations.NullMarked;
