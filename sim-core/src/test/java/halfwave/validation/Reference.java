package halfwave.validation;

/**
 * Something outside that numbers are compared with.
 *
 * @param label where its numbers come from
 * @param source what it is called
 * @param live whether another program is run anew each time, so that digits depend on its version
 */
public record Reference(Label label, String source, boolean live) {

  private static final String SAME = "equal or wrong";

  public static Reference seen(String source) {
    return new Reference(Label.SEEN, source, false);
  }

  public static Reference calc(String source) {
    return new Reference(Label.CALC, source, false);
  }

  public static Reference memory(String source) {
    return new Reference(Label.MEMORY, source, false);
  }

  public static Reference practice(String source) {
    return new Reference(Label.PRACTICE, source, false);
  }

  /** A program that is run by the test. */
  public static Reference program(String source) {
    return new Reference(Label.CALC, source, true);
  }

  /** Compares a number that the simulator computed; a verdict of the answer makes it a check. */
  public Check check(String subject, Unit unit, double computed) {
    Recorded.begun();
    return new Check(this, subject, "", unit, computed);
  }

  /** Compares something that is equal or not: a name, an order, a text. */
  public void same(String subject, Object at, Object expected, Object computed) {
    boolean equal = expected.equals(computed);
    Checked checked =
        new Checked(
            this, subject, Check.words(at), Kind.SAME, Unit.RATIO, 0, 0, equal ? 0 : 1, 0, SAME);
    checked.named(expected.toString(), computed.toString()).settle();
  }
}
