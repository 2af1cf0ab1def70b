package halfwave.bench;

import halfwave.message.Quantity;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;

/**
 * One change of a bench.
 *
 * <pre>
 * Change = Turned | Joined | Upset | CarriedOver | HeldUp
 * </pre>
 */
public sealed interface Change {

  /** The bench after it. */
  Bench on(Bench bench);

  /**
   * A number takes another value.
   *
   * @param parameter which
   * @param value the value, of the parameter's dimension
   */
  record Turned(Parameter parameter, Quantity value) implements Change {

    /** Checks the dimension. */
    public Turned {
      if (value.dimension() != parameter.dimension()) {
        throw new RejectedValueException(
            "value", value.toString(), Allowed.CONSISTENT, Double.NaN, Double.NaN);
      }
      if (!parameter.accepts(value.si())) {
        throw new RejectedValueException(
            "value", Double.toString(value.si()), Allowed.RANGE, parameter.low(), parameter.high());
      }
    }

    /** To a number in SI. */
    public static Turned to(Parameter parameter, double si) {
      return new Turned(parameter, new Quantity(si, parameter.dimension()));
    }

    @Override
    public Bench on(Bench bench) {
      return parameter.with(bench, value.si());
    }
  }

  /**
   * One more of a kind joins what is there: a resistance in the row, a leak beside the others.
   *
   * @param parameter where
   * @param value what joins, of the parameter's dimension
   */
  record Joined(Parameter parameter, Quantity value) implements Change {

    /** What joins, in SI. */
    public static Joined by(Parameter parameter, double si) {
      return new Joined(parameter, new Quantity(si, parameter.dimension()));
    }

    @Override
    public Bench on(Bench bench) {
      return parameter.with(bench, parameter.joined(parameter.of(bench), value.si()));
    }
  }

  /**
   * The flame takes another time from burner to burner.
   *
   * @param seconds that time (s); infinity: it never gets there
   */
  record CarriedOver(double seconds) implements Change {

    /** Checks the domain. */
    public CarriedOver {
      ApplianceCondition.HEALTHY.withCarryOver(seconds);
    }

    @Override
    public Bench on(Bench bench) {
      Condition c = bench.condition();
      return bench.with(c.withAppliance(c.appliance().withCarryOver(seconds)));
    }
  }

  /**
   * The flame takes at least this time from burner to burner.
   *
   * @param seconds that time (s); infinity: it never gets there
   */
  record HeldUp(double seconds) implements Change {

    /** Checks the domain. */
    public HeldUp {
      ApplianceCondition.HEALTHY.withCarryOver(seconds);
    }

    @Override
    public Bench on(Bench bench) {
      double there = bench.condition().appliance().carryOverSeconds();
      return new CarriedOver(Math.max(there, seconds)).on(bench);
    }
  }

  /**
   * A part goes wrong, or right again.
   *
   * @param disorder what is wrong with it
   * @param present whether it is so now
   */
  record Upset(Disorder disorder, boolean present) implements Change {
    @Override
    public Bench on(Bench bench) {
      Condition c = bench.condition();
      return bench.with(c.withAppliance(c.appliance().with(disorder, present)));
    }
  }
}
