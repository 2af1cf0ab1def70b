package halfwave.quiz;

import halfwave.quantity.Guard;

/**
 * How much of a quiz is about what.
 *
 * @param objective what
 * @param level how much it asks for
 * @param weightRatio of the calls of this row together, against the other rows (1); above zero
 */
public record BlueprintRow(Objective objective, Level level, double weightRatio) {

  /** Checks the domain. */
  public BlueprintRow {
    Guard.positive("weight", weightRatio);
  }
}
