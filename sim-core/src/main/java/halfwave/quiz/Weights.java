package halfwave.quiz;

import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;

/**
 * What each mark of a service call counts (points). The proportions follow from judgement; an
 * instructor edits them.
 *
 * @param safety working safely
 * @param testChoice choosing tests by what they tell for the time they take
 * @param interpretation saying what is still possible
 * @param cause naming the cause and its place
 * @param repair repairing it and proving the repair
 * @param waste neither time nor good parts wasted
 */
public record Weights(
    double safety,
    double testChoice,
    double interpretation,
    double cause,
    double repair,
    double waste) {

  /** Unless somebody says otherwise. */
  public static final Weights STANDARD = new Weights(20, 25, 15, 20, 10, 10);

  /** Checks the domain. */
  public Weights {
    Guard.notNegative("safety", safety);
    Guard.notNegative("testChoice", testChoice);
    Guard.notNegative("interpretation", interpretation);
    Guard.notNegative("cause", cause);
    Guard.notNegative("repair", repair);
    Guard.notNegative("waste", waste);
    double sum = safety + testChoice + interpretation + cause + repair + waste;
    if (!(sum > 0)) {
      throw new RejectedValueException(
          "weights", Double.toString(sum), Allowed.POSITIVE, Double.NaN, Double.NaN);
    }
  }

  /** All of them together. */
  public double sum() {
    return safety + testChoice + interpretation + cause + repair + waste;
  }
}
