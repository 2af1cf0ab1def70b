package halfwave.quiz;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/** What there is to read on a furnace before anything is changed on it. */
public final class AsFound {

  private AsFound() {}

  /**
   * What each open check of the call finds, in their order. Each is done as the first thing on the
   * furnace, with power and gas as it needs them; readings are those a learner's meter shows.
   *
   * @param variant the furnace
   * @param appearances what is remembered of benches
   */
  public static Map<Check, Outcome> of(Variant variant, Appearances appearances) {
    Map<Check, Outcome> found = new LinkedHashMap<>();
    for (Check check : variant.call().checks()) {
      found.put(check, of(variant, appearances, check));
    }
    return Collections.unmodifiableMap(found);
  }

  private static Outcome of(Variant variant, Appearances appearances, Check check) {
    Move.Checked move = new Move.Checked(check);
    Visit visit = Ready.forMove(Visit.begin(variant, appearances, false), move).after(move);
    return Objects.requireNonNull(visit.last().outcome());
  }
}
