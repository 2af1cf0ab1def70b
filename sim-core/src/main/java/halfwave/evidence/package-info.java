/**
 * What faults look like: every kind, played through a heating call and read with a meter, as a
 * table of symptoms. Nothing in it is written down by hand; all is computed from the bench.
 */
@NullMarked
package halfwave.evidence;

import org.jspecify.annotations.NullMarked;
