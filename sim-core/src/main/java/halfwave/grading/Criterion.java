package halfwave.grading;

import halfwave.quiz.Weights;

/** What is marked on a service call. */
public enum Criterion {
  /** Working safely: a gate. */
  SAFETY(true),
  /** Tests chosen by what they tell for the time they take. */
  TEST_CHOICE(true),
  /** What is said to be possible still. */
  INTERPRETATION(true),
  /** The cause and its place. */
  CAUSE(false),
  /** The repair, and its proof. */
  REPAIR(false),
  /** Neither time nor good parts wasted. */
  WASTE(true);

  /** Whoever hurts somebody gets no more than this of a call (1) [judgement]. */
  public static final double GATE_RATIO = 0.4;

  private final boolean process;

  Criterion(boolean process) {
    this.process = process;
  }

  /** Whether it is about the way, and not about the result. */
  public boolean process() {
    return process;
  }

  /** What it counts (points). */
  public double weight(Weights weights) {
    return switch (this) {
      case SAFETY -> weights.safetyPoints();
      case TEST_CHOICE -> weights.testChoicePoints();
      case INTERPRETATION -> weights.interpretationPoints();
      case CAUSE -> weights.causePoints();
      case REPAIR -> weights.repairPoints();
      case WASTE -> weights.wastePoints();
    };
  }
}
