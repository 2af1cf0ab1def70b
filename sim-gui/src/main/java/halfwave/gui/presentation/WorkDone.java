package halfwave.gui.presentation;

import halfwave.work.Work;
import org.jspecify.annotations.Nullable;

/**
 * Something that was done at the furnace.
 *
 * @param timeMillis when, on the clock of the bench (ms)
 * @param work what
 * @param found what was found, or null where nothing was looked for
 */
public record WorkDone(long timeMillis, Work work, @Nullable Enum<?> found) {}
