package halfwave.quantity;

/**
 * A value that the model does not accept. It carries what a person needs to mend it: the field, the
 * value, and what is allowed there; the sentence is made by {@code halfwave.display}.
 */
public final class RejectedValueException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /** What the field accepts. */
  public enum Allowed {
    /** A finite number. */
    FINITE,
    /** A finite number above zero. */
    POSITIVE,
    /** A finite number, zero or above. */
    NOT_NEGATIVE,
    /** A number of ohms, zero or above; infinity means open. */
    RESISTANCE,
    /** A number between {@link #low()} and {@link #high()}, both included. */
    RANGE,
    /** At least {@link #low()} entries. */
    ENTRIES,
    /** A rod whose metal does not run through the burner's own metal. */
    CLEAR_OF_BURNER,
    /** A name that is not taken and not empty. */
    NAME,
    /** A value that fits the other fields it belongs with. */
    CONSISTENT
  }

  private final String field;
  private final String value;
  private final Allowed allowed;
  private final double low;
  private final double high;

  /**
   * Makes the rejection.
   *
   * @param field name of the field, as in the record or file
   * @param value the value as text
   * @param allowed what is accepted there
   * @param low lower bound where the kind has one, else NaN
   * @param high upper bound where the kind has one, else NaN
   */
  public RejectedValueException(
      String field, String value, Allowed allowed, double low, double high) {
    super(field + " = " + value + " is not accepted: " + allowed + " " + low + " .. " + high);
    this.field = field;
    this.value = value;
    this.allowed = allowed;
    this.low = low;
    this.high = high;
  }

  /** Name of the field, as in the record or file. */
  public String field() {
    return field;
  }

  /** The rejected value as text. */
  public String value() {
    return value;
  }

  /** What is accepted there. */
  public Allowed allowed() {
    return allowed;
  }

  /** Lower bound, or NaN where the kind has none. */
  public double low() {
    return low;
  }

  /** Upper bound, or NaN where the kind has none. */
  public double high() {
    return high;
  }

  /**
   * The same rejection, seen from the value that holds this field.
   *
   * @param holder name of the holding field; the new name is {@code holder.field}
   * @return the rejection with the longer name
   */
  public RejectedValueException within(String holder) {
    return new RejectedValueException(holder + "." + field, value, allowed, low, high);
  }
}
