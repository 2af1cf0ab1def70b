package halfwave.diagnosis;

import halfwave.work.Repair;

/**
 * One line of what was done and found.
 *
 * <pre>
 * Entry = Observed | Repaired
 * </pre>
 */
public sealed interface Entry {

  /**
   * Something was found out.
   *
   * @param check what was looked at
   * @param outcome what came of it
   */
  record Observed(Check check, Outcome outcome) implements Entry {}

  /**
   * Something was repaired.
   *
   * @param repair what was done
   * @param result what the furnace does since
   */
  record Repaired(Repair repair, Result result) implements Entry {}

  /** What a repair brought. */
  enum Result {
    /** It runs as it should. */
    CURED,
    /** It does what it did. */
    UNCHANGED,
    /** It does something else that it should not. */
    WORSE,
    /** Nobody has watched a call for heat since. */
    UNSEEN
  }
}
