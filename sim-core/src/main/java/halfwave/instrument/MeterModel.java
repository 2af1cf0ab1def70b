package halfwave.instrument;

import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
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

  /** One step of the last digit of a meter without error, in SI. */
  static final double FINEST_SI = 1e-13;

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

  /**
   * Standard deviation of a figure about the true value: a third of the limit of error, and what
   * the last digit cuts off, {@code 1/√12} of a step.
   *
   * @param si what is shown, in SI; above the largest range it counts as in it
   * @return in SI; above zero
   */
  public double deviationSi(MeterFunction function, double si) {
    List<Scale> all = scales(function);
    Scale scale =
        all.stream()
            .filter(s -> Math.abs(si) <= s.largest().si())
            .findFirst()
            .orElse(all.get(all.size() - 1));
    double error = scale.limitSi(si) / Scale.DEVIATIONS_TO_LIMIT;
    double cut = scale.resolution().si();
    return Math.sqrt(error * error + cut * cut / 12);
  }

  /**
   * The same meter without error, with very fine last digits and settled at once: what is left is
   * its physics.
   */
  public MeterModel faultless() {
    Map<MeterFunction, List<Scale>> exact = new EnumMap<>(MeterFunction.class);
    for (MeterFunction function : MeterFunction.values()) {
      Dimension dimension = function.dimension();
      exact.put(
          function,
          List.of(
              new Scale(new Quantity(1e12, dimension), new Quantity(FINEST_SI, dimension), 0, 0)));
    }
    return new MeterModel(
        name,
        voltage,
        lowImpedance,
        microamps,
        milliamps,
        ohmmeter,
        method,
        0,
        refreshMillis,
        clampVolts,
        fuseAmps,
        leadOhms,
        exact);
  }

  /** The ranges of a function, smallest first. */
  List<Scale> scales(MeterFunction function) {
    return scales.getOrDefault(function, List.of());
  }
}
