package halfwave.quiz;

import halfwave.quantity.Guard;

/**
 * How much of a quiz is about what.
 *
 * @param objective what
 * @param level how much it asks for
 * @param weight of the calls of this row together, against the other rows (1); above zero
 */
public record BlueprintRow(Objective objective, Level level, double weight) {

  /** Checks the domain. */
  public BlueprintRow {
    Guard.positive("weight", weight);
  }
}
