package halfwave.quiz;

import halfwave.diagnosis.Outcome;
import halfwave.work.Caution;
import org.jspecify.annotations.Nullable;

/**
 * A move and what came of it.
 *
 * @param move what was done
 * @param minute simulated minute at which it was done with
 * @param outcome what the furnace shows, which is evidence; null where it was no check
 * @param told what is told of it: the outcome, but where the customer is asked since when. Each of
 *     the cases that judge evidence differs a little from how it was built, and its customer says
 *     that somebody worked on it unless it comes and goes; so only that is evidence, and the answer
 *     is the customer's
 * @param danger what should have been minded; null where nothing was dangerous
 */
public record Done(
    Move move,
    int minute,
    @Nullable Outcome outcome,
    @Nullable Outcome told,
    @Nullable Caution danger) {}
