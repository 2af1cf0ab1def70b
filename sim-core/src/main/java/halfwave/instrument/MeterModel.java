package halfwave.instrument;

import halfwave.quantity.Guard;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A make of multimeter, as data.
 *
 * @param name short name in lower-case-hyphen form
 * @param voltage input of the volts functions
 * @param lowImpedance input of the low-impedance volts function
 * @param microamps input of the microamps functions
 * @param milliamps input of the milliamps functions; what is left of the microamps input when its
 *     protection conducts
 * @param ohmmeter source of the ohms functions
 * @param method how it makes a number of an alternating wave
 * @param averagingSeconds time constant with which the display goes to a new value (s)
 * @param refreshMillis how long a figure stands before the next
 * @param clampVolts voltage at which the protection of the microamps input conducts past it (V)
 * @param fuseAmps fuse of the current inputs (A rms)
 * @param leadOhms resistance of both test leads together (Ω)
 * @param scales the ranges of each function, smallest first
 */
public record MeterModel(
    String name,
    Voltmeter voltage,
    Voltmeter lowImpedance,
    Microammeter microamps,
    Microammeter milliamps,
    Ohmmeter ohmmeter,
    AlternatingMethod method,
    double averagingSeconds,
    int refreshMillis,
    double clampVolts,
    double fuseAmps,
    double leadOhms,
    Map<MeterFunction, List<Scale>> scales) {

  /** Checks the domain and takes a copy. */
  public MeterModel {
    Guard.positive("microamps.burdenOhms", microamps.burdenOhms());
    Guard.positive("milliamps.burdenOhms", milliamps.burdenOhms());
    Guard.notNegative("averagingSeconds", averagingSeconds);
    Guard.inRange("refreshMillis", refreshMillis, 1, 10_000);
    Guard.positive("clampVolts", clampVolts);
    Guard.positive("fuseAmps", fuseAmps);
    Guard.notNegative("leadOhms", leadOhms);
    Map<MeterFunction, List<Scale>> copy = new EnumMap<>(MeterFunction.class);
    for (MeterFunction function : MeterFunction.values()) {
      copy.put(function, checked(function, scales.get(function)));
    }
    scales = Map.copyOf(copy);
  }

  private static List<Scale> checked(MeterFunction function, @Nullable List<Scale> scales) {
    if (scales == null || scales.isEmpty()) {
      throw new IllegalArgumentException("scales = none: at least one for " + function);
    }
    double before = 0;
    for (Scale scale : scales) {
      boolean fits = scale.largest().dimension() == function.dimension();
      if (!(fits && scale.largest().si() > before)) {
        throw new IllegalArgumentException(
            "scales = " + scales + ": of " + function.dimension() + ", smallest first");
      }
      before = scale.largest().si();
    }
    return List.copyOf(scales);
  }

  /** The ranges of a function, smallest first. */
  List<Scale> scales(MeterFunction function) {
    return scales.getOrDefault(function, List.of());
  }
}
