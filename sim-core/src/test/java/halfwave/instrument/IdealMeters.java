package halfwave.instrument;

import halfwave.message.Quantity;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The service meter without error and with very fine last digits: what is left is its physics. */
public final class IdealMeters {

  /** One step of the last digit, in SI. */
  public static final double STEP = 1e-13;

  private IdealMeters() {}

  /** A fresh one, settled at once. */
  public static Meter of(AlternatingMethod method) {
    Map<MeterFunction, List<Scale>> scales = new EnumMap<>(MeterFunction.class);
    for (MeterFunction f : MeterFunction.values()) {
      scales.put(
          f,
          Collections.singletonList(
              new Scale(
                  new Quantity(1e12, f.dimension()), new Quantity(STEP, f.dimension()), 0, 0)));
    }
    MeterModel m = ShippedMeters.service();
    return Meter.fresh(
        new MeterModel(
            "ideal",
            m.voltage(),
            m.lowImpedance(),
            m.microamps(),
            m.milliamps(),
            m.ohmmeter(),
            method,
            0,
            m.refreshMillis(),
            m.clampVolts(),
            m.fuseAmps(),
            m.leadOhms(),
            scales));
  }

  /** What a true-rms one measures. */
  public static Measurement measure(MeterFunction function, HookUp hookUp, Subject subject) {
    return Measuring.of(of(AlternatingMethod.TRUE_RMS), function, hookUp, subject, Look.settled(1));
  }

  /** What a true-rms one shows, in SI. */
  public static double si(MeterFunction function, HookUp hookUp, Subject subject) {
    return si(measure(function, hookUp, subject).shown());
  }

  /** The only figure of a display, in SI; infinity over range. */
  public static double si(Shown shown) {
    if (shown instanceof Shown.Alternating alternating) {
      return si(alternating.figure());
    } else if (shown instanceof Shown.Direct direct) {
      return si(direct.figure());
    } else if (shown instanceof Shown.Ohms ohms) {
      return si(ohms.figure());
    }
    throw new AssertionError(shown);
  }

  /** A figure in SI; infinity over range. */
  public static double si(Figure figure) {
    return figure instanceof Figure.Value value ? value.quantity().si() : Double.POSITIVE_INFINITY;
  }
}
