package halfwave.instrument;

import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The meters that come with the program. All are invented; the burden of 1.5 kΩ is seen in a
 * meter's manual, all else is common practice, no source.
 */
public final class ShippedMeters {

  private static final double MICRO = 1e-6;
  private static final double MILLI = 1e-3;

  private ShippedMeters() {}

  /** A good true-rms meter for service work, 6000 steps. */
  public static MeterModel service() {
    Map<MeterFunction, List<Scale>> scales = new EnumMap<>(MeterFunction.class);
    scales.put(MeterFunction.AC_VOLTS, volts(6000, 0.01, 3));
    scales.put(MeterFunction.DC_VOLTS, volts(6000, 0.005, 2));
    scales.put(MeterFunction.LOW_IMPEDANCE_AC_VOLTS, volts(6000, 0.02, 3));
    List<Scale> alternating = amps(MICRO, new double[] {60, 600}, 0.01, 0.015, 3);
    List<Scale> direct = amps(MICRO, new double[] {60, 600}, 0.01, 0.01, 2);
    scales.put(MeterFunction.AC_MICROAMPS, alternating);
    scales.put(MeterFunction.DC_MICROAMPS, direct);
    scales.put(MeterFunction.AC_AND_DC_MICROAMPS, alternating);
    scales.put(MeterFunction.AC_MILLIAMPS, amps(MILLI, new double[] {60, 400}, 0.01, 0.015, 3));
    scales.put(MeterFunction.DC_MILLIAMPS, amps(MILLI, new double[] {60, 400}, 0.01, 0.01, 2));
    scales.put(MeterFunction.OHMS, ohms(600, 6, 0.01, 2));
    scales.put(MeterFunction.CONTINUITY, ohms(600, 1, 0.01, 2));
    return new MeterModel(
        "service-true-rms",
        Voltmeter.HIGH_IMPEDANCE,
        Voltmeter.LOW_IMPEDANCE,
        Microammeter.SERVICE,
        new Microammeter(10),
        new Ohmmeter(1, 10e3, 40),
        AlternatingMethod.TRUE_RMS,
        0.3,
        250,
        2,
        0.4,
        0.2,
        scales);
  }

  /** A plain mean-responding meter, 2000 steps, that shows tenths of a microamp. */
  public static MeterModel plain() {
    Map<MeterFunction, List<Scale>> scales = new EnumMap<>(MeterFunction.class);
    scales.put(MeterFunction.AC_VOLTS, volts(2000, 0.02, 5));
    scales.put(MeterFunction.DC_VOLTS, volts(2000, 0.01, 3));
    scales.put(MeterFunction.LOW_IMPEDANCE_AC_VOLTS, volts(2000, 0.03, 5));
    List<Scale> alternating = amps(MICRO, new double[] {200}, 0.1, 0.03, 5);
    List<Scale> direct = amps(MICRO, new double[] {200}, 0.1, 0.02, 3);
    scales.put(MeterFunction.AC_MICROAMPS, alternating);
    scales.put(MeterFunction.DC_MICROAMPS, direct);
    scales.put(MeterFunction.AC_AND_DC_MICROAMPS, alternating);
    scales.put(MeterFunction.AC_MILLIAMPS, amps(MILLI, new double[] {200}, 0.1, 0.03, 5));
    scales.put(MeterFunction.DC_MILLIAMPS, amps(MILLI, new double[] {200}, 0.1, 0.02, 3));
    scales.put(MeterFunction.OHMS, ohms(200, 6, 0.02, 5));
    scales.put(MeterFunction.CONTINUITY, ohms(200, 1, 0.02, 5));
    return new MeterModel(
        "plain-mean-responding",
        Voltmeter.HIGH_IMPEDANCE,
        Voltmeter.LOW_IMPEDANCE,
        Microammeter.SERVICE,
        new Microammeter(10),
        new Ohmmeter(1, 10e3, 40),
        AlternatingMethod.MEAN_RESPONDING,
        0.6,
        400,
        2,
        0.4,
        0.3,
        scales);
  }

  /** All of them, the one for service first. */
  public static List<MeterModel> all() {
    return List.of(service(), plain());
  }

  /** Ranges of so many steps from millivolts a step on, up to 600 V, the usual category limit. */
  private static List<Scale> volts(int steps, double accuracyRatio, double accuracyCount) {
    List<Scale> scales = new ArrayList<>();
    for (double resolution : new double[] {0.001, 0.01, 0.1, 1}) {
      if (scales.isEmpty() || scales.get(scales.size() - 1).largest().si() < 600) {
        double largest = Math.min(600, steps * resolution);
        scales.add(scale(largest, resolution, Dimension.VOLTAGE, accuracyRatio, accuracyCount));
      }
    }
    return scales;
  }

  private static List<Scale> amps(
      double unit, double[] largest, double finest, double accuracyRatio, double accuracyCount) {
    List<Scale> scales = new ArrayList<>();
    double resolution = finest;
    for (double most : largest) {
      scales.add(
          scale(most * unit, resolution * unit, Dimension.CURRENT, accuracyRatio, accuracyCount));
      resolution *= 10;
    }
    return scales;
  }

  private static List<Scale> ohms(
      double first, int count, double accuracyRatio, double accuracyCount) {
    List<Scale> scales = new ArrayList<>();
    double largest = first;
    double resolution = 0.1;
    for (int k = 0; k < count; k++) {
      scales.add(scale(largest, resolution, Dimension.RESISTANCE, accuracyRatio, accuracyCount));
      largest *= 10;
      resolution *= 10;
    }
    return scales;
  }

  private static Scale scale(
      double largest,
      double resolution,
      Dimension dimension,
      double accuracyRatio,
      double accuracyCount) {
    return new Scale(
        new Quantity(largest, dimension),
        new Quantity(resolution, dimension),
        accuracyRatio,
        accuracyCount);
  }
}
