package halfwave.quiz;

import halfwave.diagnosis.Outcome;
import halfwave.work.Caution;
import org.jspecify.annotations.Nullable;

/**
 * A move and what came of it.
 *
 * @param move what was done
 * @param minute simulated minute at which it was done with
 * @param outcome what was found; null where it was no check
 * @param danger what should have been minded; null where nothing was dangerous
 */
public record Done(Move move, int minute, @Nullable Outcome outcome, @Nullable Caution danger) {}
