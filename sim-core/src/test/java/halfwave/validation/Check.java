package halfwave.validation;

import java.util.Locale;

/** A computed number on its way to its verdict. */
public final class Check {

  private final Reference reference;
  private final String subject;
  private final String at;
  private final Unit unit;
  private final double computed;

  Check(Reference reference, String subject, String at, Unit unit, double computed) {
    this.reference = reference;
    this.subject = subject;
    this.at = at;
    this.unit = unit;
    this.computed = computed;
  }

  /** Which of several: points of one subject become one row of the report. */
  public Check at(Object point) {
    return new Check(reference, subject, words(point), unit, computed);
  }

  /** Constants as a person writes them, whole numbers without a zero behind the point. */
  static String words(Object point) {
    String words =
        point instanceof Enum<?> constant
            ? constant.name().toLowerCase(Locale.ROOT).replace('_', ' ')
            : point.toString();
    return words.replaceAll("(\\d)\\.0(?!\\d)", "$1");
  }

  /** Within an absolute difference, for that reason. */
  public void isCloseTo(double expected, double allowed, String reason) {
    judge(Kind.CLOSE, expected, expected - allowed, expected + allowed, allowed, reason);
  }

  /** Within a share of what is expected: 0.01 is one per cent. */
  public void isWithin(double share, double expected, String reason) {
    double allowed = share * Math.abs(expected);
    judge(Kind.CLOSE_BY_SHARE, expected, expected - allowed, expected + allowed, allowed, reason);
  }

  /** Between two ends, which may be reached. */
  public void isBetween(double low, double high, String reason) {
    judge(Kind.BAND, 0.5 * (low + high), low, high, 0.5 * (high - low), reason);
  }

  public void isAtLeast(double limit, String reason) {
    judge(Kind.AT_LEAST, limit, limit, Double.POSITIVE_INFINITY, limit, reason);
  }

  /** Below that limit, and not on it. */
  public void isBelow(double limit, String reason) {
    double most = Math.nextDown(limit);
    judge(Kind.BELOW, limit, Double.NEGATIVE_INFINITY, most, limit, reason);
  }

  /** Above that limit, and not on it. */
  public void isAbove(double limit, String reason) {
    double least = Math.nextUp(limit);
    judge(Kind.ABOVE, limit, least, Double.POSITIVE_INFINITY, limit, reason);
  }

  /**
   * The model is known to differ from practice. Fails when it no longer does, or when it differs
   * otherwise than written down.
   *
   * @param low lower end of what practice says
   * @param high its upper end
   * @param model what the model is known to give
   * @param allowed how far that may move before somebody should look
   * @param why why the two differ
   */
  public void isKnownToDiffer(double low, double high, double model, double allowed, String why) {
    Recorded.judged();
    if (computed >= low && computed <= high) {
      throw new AssertionError(
          subject + ": the known disagreement with practice is gone: computed " + computed);
    }
    Checked checked =
        new Checked(
            reference, subject, at, Kind.DISAGREEMENT, unit, low, high, computed, allowed, why);
    checked.known(model).settle();
  }

  private void judge(
      Kind kind, double expected, double low, double high, double allowed, String reason) {
    Recorded.judged();
    new Checked(reference, subject, at, kind, unit, low, high, computed, allowed, reason)
        .known(expected)
        .settle();
  }
}
