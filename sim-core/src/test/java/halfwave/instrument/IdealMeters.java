package halfwave.instrument;

/** The shipped meters without error and with very fine last digits: what is left is its physics. */
public final class IdealMeters {

  /** One step of the last digit, in SI. */
  public static final double STEP = MeterModel.FINEST_SI;

  private IdealMeters() {}

  /** A fresh one, settled at once. */
  public static Meter of(AlternatingMethod method) {
    MeterModel model =
        method == AlternatingMethod.TRUE_RMS ? ShippedMeters.service() : ShippedMeters.plain();
    return Meter.fresh(model.faultless());
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
