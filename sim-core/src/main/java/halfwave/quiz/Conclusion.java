package halfwave.quiz;

import halfwave.diagnosis.Cause;
import halfwave.work.FurnacePart;
import halfwave.work.Repair;
import org.jspecify.annotations.Nullable;

/**
 * What a learner says at the end.
 *
 * @param cause what was wrong
 * @param place where; null: nowhere, or not said
 * @param repair what puts it right; null: nothing, or not said
 */
public record Conclusion(Cause cause, @Nullable FurnacePart place, @Nullable Repair repair) {}
