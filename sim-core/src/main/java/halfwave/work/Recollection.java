package halfwave.work;

import halfwave.bench.Condition;
import java.util.EnumSet;
import java.util.List;

/** What a customer remembers of how a trouble began. */
public final class Recollection {

  /** What can be answered to {@link Look#ASK_SINCE_WHEN}. */
  public static final List<Finding> ANSWERS =
      List.copyOf(EnumSet.range(Finding.SINCE_WEEKS, Finding.NOTHING_NOTICED));

  private Recollection() {}

  /**
   * Since when, as one of the {@link #ANSWERS}. Whatever is not exactly as it should be counts: ask
   * for a bench without the small differences between furnaces of a kind.
   */
  public static Finding sinceWhen(Condition c) {
    if (!c.appliance().intermittents().isEmpty()) {
      return Finding.COMES_AND_GOES;
    }
    Finding found = Finding.NOTHING_NOTICED;
    for (Aspect aspect : Aspect.values()) {
      boolean noticed = aspect == Aspect.ROD_COAT ? Seeing.visible(c.rodCoat()) : aspect.wrong(c);
      if (noticed) {
        found = later(found, since(aspect.onset(c)));
      }
    }
    return found;
  }

  private static Finding since(Onset onset) {
    return switch (onset) {
      case GRADUAL -> Finding.SINCE_WEEKS;
      case SUDDEN -> Finding.SINCE_ONE_DAY;
      case SINCE_WORK -> Finding.SINCE_WORK;
    };
  }

  /** People remember the visit of a person best, and a sudden end better than a slow one. */
  private static Finding later(Finding a, Finding b) {
    if (a == Finding.SINCE_WORK || b == Finding.SINCE_WORK) {
      return Finding.SINCE_WORK;
    }
    return a == Finding.SINCE_ONE_DAY ? a : b;
  }
}
