package halfwave.quiz;

import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;

/**
 * What each mark of a service call counts. The proportions follow from judgement; an instructor
 * edits them.
 *
 * @param safetyPoints working safely
 * @param testChoicePoints choosing tests by what they tell for the time they take
 * @param interpretationPoints saying what is still possible
 * @param causePoints naming the cause and its place
 * @param repairPoints repairing it and proving the repair
 * @param wastePoints neither time nor good parts wasted
 */
public record Weights(
    double safetyPoints,
    double testChoicePoints,
    double interpretationPoints,
    double causePoints,
    double repairPoints,
    double wastePoints) {

  /** Unless somebody says otherwise. */
  public static final Weights STANDARD = new Weights(20, 25, 15, 20, 10, 10);

  /** Checks the domain. */
  public Weights {
    Guard.notNegative("safety", safetyPoints);
    Guard.notNegative("testChoice", testChoicePoints);
    Guard.notNegative("interpretation", interpretationPoints);
    Guard.notNegative("cause", causePoints);
    Guard.notNegative("repair", repairPoints);
    Guard.notNegative("waste", wastePoints);
    double sum =
        safetyPoints
            + testChoicePoints
            + interpretationPoints
            + causePoints
            + repairPoints
            + wastePoints;
    if (!(sum > 0)) {
      throw new RejectedValueException(
          "weights", Double.toString(sum), Allowed.POSITIVE, Double.NaN, Double.NaN);
    }
  }

  /** All of them together. */
  public double sum() {
    return safetyPoints
        + testChoicePoints
        + interpretationPoints
        + causePoints
        + repairPoints
        + wastePoints;
  }
}
