package halfwave.io.bench;

import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonValue;
import halfwave.quantity.Dimension;

/** One change of a bench as files hold it; benches and scripts share the form. */
public final class ChangeFile {

  private final boolean units;

  private ChangeFile(boolean units) {
    this.units = units;
  }

  /** Numbers are SI, as in the file of a bench. */
  public static ChangeFile exact() {
    return new ChangeFile(false);
  }

  /** Numbers may also be texts with a unit, as people type them in a script. */
  public static ChangeFile withUnits() {
    return new ChangeFile(true);
  }

  /**
   * The change.
   *
   * @throws BadInputException if its fields are none, or the model cannot have it
   */
  public Change change(JsonValue value) {
    JsonFields f =
        value.fields("parameter", "value", "joins", "disorder", "present", "carryOverSeconds");
    if (f.has("carryOverSeconds")) {
      return carriedOver(f);
    }
    return f.has("disorder") ? upset(f, f.orElse("present", JsonValue::truth, true)) : turned(f);
  }

  /**
   * A number of the bench, from the fields {@code parameter}, {@code value} and {@code joins}; what
   * is a resistance may also be open.
   *
   * @throws BadInputException if there is no such number, or it cannot be that
   */
  public Change turned(JsonFields f) {
    Parameter parameter = f.get("parameter").oneOf(Parameter.class);
    double si = number(parameter, f.get("value"));
    return f.make(
        () -> joins(f) ? Change.Joined.by(parameter, si) : Change.Turned.to(parameter, si));
  }

  private double number(Parameter parameter, JsonValue value) {
    if (units) {
      return value.typed(parameter.dimension(), ChangeWords.allowed(parameter));
    }
    return parameter.dimension() == Dimension.RESISTANCE ? value.ohms() : value.number();
  }

  /**
   * What is not as it should be, from the field {@code disorder}.
   *
   * @param present whether it is there from now on
   * @throws BadInputException if there is no such disorder
   */
  public static Change upset(JsonFields f, boolean present) {
    return new Change.Upset(f.get("disorder").oneOf(Disorder.class), present);
  }

  /**
   * The time that the flame takes from burner to burner, from the fields {@code carryOverSeconds}
   * and {@code joins}.
   *
   * @throws BadInputException if it cannot be that
   */
  public static Change carriedOver(JsonFields f) {
    double seconds = f.get("carryOverSeconds").orNever();
    return f.make(() -> joins(f) ? new Change.HeldUp(seconds) : new Change.CarriedOver(seconds));
  }

  /** Whether it joins what is there instead of taking its place. */
  private static boolean joins(JsonFields f) {
    return f.orElse("joins", JsonValue::truth, false);
  }
}
