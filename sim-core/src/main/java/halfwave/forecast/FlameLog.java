package halfwave.forecast;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was written down of a furnace over the years.
 *
 * @param entries in order of time
 * @param calendar its dates, or null where only hours of flame are known
 */
public record FlameLog(List<Logged> entries, @Nullable Calendar calendar) {

  /** Takes a copy. */
  public FlameLog {
    entries = List.copyOf(entries);
  }
}
