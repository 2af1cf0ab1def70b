/**
 * Time: the only place where board and circuit meet.
 *
 * <pre>
 * advance(Moment, until, acts) = Segment(events with their causes, samples, Moment)
 * </pre>
 *
 * <p>Time is counted in whole milliseconds. What is physical moves in paces of {@value
 * halfwave.sequence.Sequence#PACE_MILLIS} ms on one grid for all runs, and stands still once
 * nothing changes any more; the board's clocks run out between the paces, exactly. A segment holds
 * what happens from its first instant up to, not including, its last; so the cut makes no
 * difference.
 */
@NullMarked
package halfwave.sequence;

import org.jspecify.annotations.NullMarked;
