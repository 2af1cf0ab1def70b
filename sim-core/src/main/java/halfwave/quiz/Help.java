package halfwave.quiz;

/**
 * How much a coach does: less and less (worked examples that fade: van Gog, Paas and van
 * Merriënboer, Learning and Instruction 16 (2006) 154).
 */
public enum Help {
  /** The coach shows each step and says why. */
  WORKED,
  /** The coach begins, the learner ends. */
  COMPLETING,
  /** The learner does all, and is asked before each act. */
  ASKING,
  /** The learner is alone. */
  NONE;

  /** One step less of it. */
  public Help faded() {
    return values()[Math.min(ordinal() + 1, values().length - 1)];
  }
}
