package halfwave.evidence;

import halfwave.work.Look;
import halfwave.work.Scene;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What all looks find at three moments of a heating call.
 *
 * @param standby before the call
 * @param trial at the end of the first trial, or where it would have been
 * @param warm at the end of the call
 */
public record Sights(
    Map<Look, Enum<?>> standby, Map<Look, Enum<?>> trial, Map<Look, Enum<?>> warm) {

  /** Takes copies. */
  public Sights {
    standby = Collections.unmodifiableMap(new EnumMap<>(standby));
    trial = Collections.unmodifiableMap(new EnumMap<>(trial));
    warm = Collections.unmodifiableMap(new EnumMap<>(warm));
  }

  static Map<Look, Enum<?>> of(Scene scene) {
    Map<Look, Enum<?>> found = new EnumMap<>(Look.class);
    for (Look look : Look.values()) {
      found.put(look, look.at(scene));
    }
    return found;
  }

  /**
   * What is found here and not there, in the order of the looks; the light has a place of its own.
   */
  public Map<Look, Enum<?>> unlike(Sights other) {
    Map<Look, Enum<?>> unlike = new EnumMap<>(Look.class);
    for (Look look : Look.values()) {
      if (look == Look.STATUS_LIGHT) {
        continue;
      }
      if (warm.get(look) != other.warm.get(look)) {
        unlike.put(look, warm.get(look));
      } else if (trial.get(look) != other.trial.get(look)) {
        unlike.put(look, trial.get(look));
      } else if (standby.get(look) != other.standby.get(look)) {
        unlike.put(look, standby.get(look));
      }
    }
    return unlike;
  }
}
