package halfwave.evidence;

import halfwave.work.Look;
import halfwave.work.Scene;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What all looks find at a few moments of a heating call. What is only seen because the board has
 * given up is left out: it tells of the lockout and not of the fault.
 *
 * @param standby before the call
 * @param start ten seconds into the call, before any trial
 * @param trial at the end of the first trial; empty where there is none
 * @param loss when a proved flame is lost, gas still on; empty where none is
 * @param warm at the end of the call; empty where it does not run then
 */
public record Sights(
    Map<Look, Enum<?>> standby,
    Map<Look, Enum<?>> start,
    Map<Look, Enum<?>> trial,
    Map<Look, Enum<?>> loss,
    Map<Look, Enum<?>> warm) {

  /** Takes copies. */
  public Sights {
    standby = copy(standby);
    start = copy(start);
    trial = copy(trial);
    loss = copy(loss);
    warm = copy(warm);
  }

  private static Map<Look, Enum<?>> copy(Map<Look, Enum<?>> found) {
    return found.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(found));
  }

  static Map<Look, Enum<?>> of(Scene scene) {
    Map<Look, Enum<?>> found = new EnumMap<>(Look.class);
    for (Look look : Look.values()) {
      found.put(look, look.at(scene));
    }
    return found;
  }

  /** What is found here and not there, in the order of the looks; the light is told elsewhere. */
  public Map<Look, Enum<?>> unlike(Sights other) {
    Map<Look, Enum<?>> unlike = new EnumMap<>(Look.class);
    add(unlike, trial, other.trial);
    add(unlike, loss, other.loss.isEmpty() ? other.warm : other.loss);
    add(unlike, warm, other.warm);
    add(unlike, start, other.start);
    add(unlike, standby, other.standby);
    return unlike;
  }

  private static void add(
      Map<Look, Enum<?>> unlike, Map<Look, Enum<?>> here, Map<Look, Enum<?>> there) {
    if (here.isEmpty() || there.isEmpty()) {
      return;
    }
    for (Look look : Look.values()) {
      Enum<?> found = here.get(look);
      if (look != Look.STATUS_LIGHT && found != null && found != there.get(look)) {
        unlike.putIfAbsent(look, found);
      }
    }
  }
}
