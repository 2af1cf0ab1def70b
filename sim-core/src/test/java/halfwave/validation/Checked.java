package halfwave.validation;

/**
 * One comparison with its verdict.
 *
 * @param reference what it was compared with
 * @param subject what was computed
 * @param at which of several points, or empty
 * @param kind how it is judged
 * @param unit unit of its numbers in the report
 * @param low lower end of what is allowed (of a disagreement: of what practice says)
 * @param high upper end
 * @param computed the simulator's number
 * @param allowed the tolerance
 * @param reason why that tolerance
 * @param expected the number from outside (of a disagreement: what the model is known to give)
 * @param expectedText what is expected, where it is no number
 * @param computedText what was found, where it is no number
 */
record Checked(
    Reference reference,
    String subject,
    String at,
    Kind kind,
    Unit unit,
    double low,
    double high,
    double computed,
    double allowed,
    String reason,
    double expected,
    String expectedText,
    String computedText) {

  Checked(
      Reference reference,
      String subject,
      String at,
      Kind kind,
      Unit unit,
      double low,
      double high,
      double computed,
      double allowed,
      String reason) {
    this(reference, subject, at, kind, unit, low, high, computed, allowed, reason, 0, "", "");
  }

  Checked known(double number) {
    return new Checked(
        reference, subject, at, kind, unit, low, high, computed, allowed, reason, number, "", "");
  }

  Checked named(String expectedName, String computedName) {
    return new Checked(
        reference,
        subject,
        at,
        kind,
        unit,
        low,
        high,
        computed,
        allowed,
        reason,
        expected,
        expectedName,
        computedName);
  }

  /** Records it, and fails where it is not as it should be. */
  void settle() {
    if (!passed()) {
      throw new AssertionError(this);
    }
    Recorded.add(this);
  }

  boolean passed() {
    return kind == Kind.DISAGREEMENT
        ? Math.abs(computed - expected) <= allowed
        : computed >= low && computed <= high;
  }

  /** Share of the tolerance that is used up: 1 is just passed. */
  double usedRatio() {
    return switch (kind) {
      case CLOSE, CLOSE_BY_SHARE, BAND, DISAGREEMENT ->
          computed == expected ? 0 : Math.abs(computed - expected) / allowed;
      case BELOW -> Math.max(0, computed / allowed);
      case AT_LEAST, ABOVE -> allowed / computed;
      case SAME -> computed;
    };
  }

  /** The finest step that is worth showing. */
  double step() {
    return Math.abs(allowed) / 100;
  }

  String expectedWords() {
    return switch (kind) {
      case CLOSE, CLOSE_BY_SHARE -> unit.text(expected, 0);
      case BAND, DISAGREEMENT -> band();
      case AT_LEAST -> "at least " + unit.text(expected, 0);
      case BELOW -> "below " + unit.text(expected, 0);
      case ABOVE -> "above " + unit.text(expected, 0);
      case SAME -> expectedText;
    };
  }

  private String band() {
    if (low == Double.NEGATIVE_INFINITY) {
      return "at most " + unit.text(high, 0);
    }
    return high == Double.POSITIVE_INFINITY
        ? "at least " + unit.text(low, 0)
        : unit.number(low, 0) + " to " + unit.text(high, 0);
  }

  String computedWords() {
    return kind == Kind.SAME ? computedText : unit.text(computed, step());
  }

  String allowedWords() {
    return switch (kind) {
      case CLOSE -> unit.text(allowed, allowed / 100);
      case CLOSE_BY_SHARE ->
          Unit.PERCENT.text(allowed / Math.abs(expected), allowed / Math.abs(expected) / 100);
      case DISAGREEMENT -> unit.text(expected, 0) + " ± " + unit.text(allowed, 0);
      case BAND, AT_LEAST, BELOW, ABOVE, SAME -> "";
    };
  }

  /** What a failing test says. */
  @Override
  public String toString() {
    String where = at.isEmpty() ? subject : subject + " (" + at + ")";
    String wanted =
        switch (kind) {
          case CLOSE, CLOSE_BY_SHARE -> "expected " + expectedWords() + " ± " + allowedWords();
          case DISAGREEMENT -> "practice " + expectedWords() + ", model so far " + allowedWords();
          case BAND, AT_LEAST, BELOW, ABOVE, SAME -> "expected " + expectedWords();
        };
    String found = kind == Kind.SAME ? computedText : unit.text(computed, 0);
    return "%s: %s, computed %s%n  source: %s (%s)%n  tolerance: %s"
        .formatted(where, wanted, found, reference.source(), reference.label().word(), reason);
  }
}
