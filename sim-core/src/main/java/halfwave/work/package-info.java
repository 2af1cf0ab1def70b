/**
 * What a person can do at a furnace, what it costs, and what it changes.
 *
 * <pre>
 * Work = Look | MeterTest | Repair | Handling
 * </pre>
 *
 * Time and hazards of all work follow from its own minutes and from how its part is reached. Looks
 * read the condition of a {@link halfwave.work.Scene}; repairs put {@link halfwave.work.Aspect}s of
 * it right; handling goes wrong in changes of the bench. All minutes, costs and chances: common
 * practice, no source.
 */
@NullMarked
package halfwave.work;

import org.jspecify.annotations.NullMarked;
