package halfwave.diagnosis;

import halfwave.fault.FaultKind;
import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import halfwave.work.Hazard;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Judgement: how often each cause is met, and what effort, danger and mistakes weigh. None of it is
 * measured; whoever knows their own calls better edits the file.
 *
 * @param healthyRatio weight of nothing being wrong, against those of the kinds (1); above zero
 * @param kinds weight of each kind of fault (1); above zero, all kinds
 * @param pairs weight of two kinds together (1); above zero
 * @param hazardMinutes minutes that one would rather spend than meet a hazard; all hazards
 * @param costUnitSeconds what one unit of the cost of parts weighs (s)
 * @param misreadProbability that a look is taken for another one
 * @param misrememberedProbability that a customer, asked since when, says something else than how
 *     the trouble is expected to have begun
 * @param outlierProbability that a reading has nothing to do with the bench
 * @param mishapProbability that a repair breaks something else
 */
public record Priors(
    double healthyRatio,
    Map<FaultKind, Double> kinds,
    Map<Cause, Double> pairs,
    Map<Hazard, Double> hazardMinutes,
    double costUnitSeconds,
    double misreadProbability,
    double misrememberedProbability,
    double outlierProbability,
    double mishapProbability) {

  /** Checks the domain and takes copies. */
  public Priors {
    Guard.positive("healthy", healthyRatio);
    kinds = whole("kinds", FaultKind.class, kinds);
    kinds.forEach((kind, weight) -> Guard.positive("kinds." + kind.id(), weight));
    hazardMinutes = whole("hazardMinutes", Hazard.class, hazardMinutes);
    hazardMinutes.forEach(
        (hazard, minutes) -> Guard.inRange("hazardMinutes." + spelling(hazard), minutes, 0, 1000));
    for (Map.Entry<Cause, Double> pair : pairs.entrySet()) {
      if (pair.getKey().kinds().size() != 2) {
        throw new RejectedValueException(
            "pairs", pair.getKey().id(), Allowed.CONSISTENT, Double.NaN, Double.NaN);
      }
      Guard.positive("pairs." + pair.getKey().id(), pair.getValue());
    }
    pairs = Collections.unmodifiableMap(new LinkedHashMap<>(pairs));
    Guard.inRange("costUnitSeconds", costUnitSeconds, 0, 36_000);
    // zero would rule causes out for good
    Guard.inRange("misreadProbability", misreadProbability, 1e-6, 0.5);
    Guard.inRange("misrememberedProbability", misrememberedProbability, 1e-6, 0.5);
    Guard.inRange("outlierProbability", outlierProbability, 1e-6, 0.5);
    Guard.inRange("mishapProbability", mishapProbability, 1e-6, 0.5);
  }

  private static String spelling(Hazard hazard) {
    return hazard.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static <K extends Enum<K>> Map<K, Double> whole(
      String field, Class<K> type, Map<K, Double> map) {
    for (K constant : type.getEnumConstants()) {
      if (!map.containsKey(constant)) {
        throw new RejectedValueException(
            field, constant + " missing", Allowed.CONSISTENT, Double.NaN, Double.NaN);
      }
    }
    return Collections.unmodifiableMap(new EnumMap<>(map));
  }

  /** Everything that may be wrong: nothing, each kind, the pairs. */
  public List<Cause> causes() {
    List<Cause> causes = new ArrayList<>();
    causes.add(Cause.HEALTHY);
    Arrays.stream(FaultKind.values()).map(Cause::of).forEach(causes::add);
    causes.addAll(pairs.keySet());
    return List.copyOf(causes);
  }

  /** The weight of a cause (1). */
  public double weight(Cause cause) {
    if (cause.healthy()) {
      return healthyRatio;
    }
    return cause.kinds().size() == 1
        ? kinds.getOrDefault(cause.kinds().get(0), 0.0)
        : pairs.getOrDefault(cause, 0.0);
  }
}
