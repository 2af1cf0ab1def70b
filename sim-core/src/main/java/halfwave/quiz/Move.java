package halfwave.quiz;

import halfwave.diagnosis.Check;
import halfwave.fault.FaultGroup;
import halfwave.work.Repair;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a learner does on a service call.
 *
 * <pre>
 * Move = Checked | Repaired | Power | Gas | Signal | Tempted | Suspects | Hint | Note
 * </pre>
 */
public sealed interface Move {

  /**
   * Looks or measures.
   *
   * @param check what
   */
  record Checked(Check check) implements Move {}

  /**
   * Repairs.
   *
   * @param repair what
   */
  record Repaired(Repair repair) implements Move {}

  /**
   * Throws the furnace switch.
   *
   * @param on whether there is power then
   */
  record Power(boolean on) implements Move {}

  /**
   * Turns the gas cock.
   *
   * @param on whether it is open then
   */
  record Gas(boolean on) implements Move {}

  /**
   * Puts a test signal that imitates flame in the place of rod and lead, or takes it away.
   *
   * @param on whether it is there then
   */
  record Signal(boolean on) implements Move {}

  /**
   * Does what nobody may do.
   *
   * @param temptation what
   */
  record Tempted(Temptation temptation) implements Move {}

  /**
   * Says what is still possible.
   *
   * @param groups where the fault may be; none: nothing is wrong
   */
  record Suspects(Set<FaultGroup> groups) implements Move {

    /** Takes a copy in order. */
    public Suspects {
      EnumSet<FaultGroup> ordered = EnumSet.noneOf(FaultGroup.class);
      ordered.addAll(groups);
      groups = Collections.unmodifiableSet(ordered);
    }
  }

  /**
   * Asks for a hint.
   *
   * @param grade one: a direction; two: where; three: what to do
   */
  record Hint(int grade) implements Move {

    /** How explicit a hint can be. */
    public static final int GRADES = 3;

    /** Checks the grade. */
    public Hint {
      if (!(grade >= 1 && grade <= GRADES)) {
        throw new IllegalArgumentException("grade = " + grade + ": 1 to " + GRADES);
      }
    }
  }

  /**
   * Writes something down.
   *
   * @param text what
   */
  record Note(String text) implements Move {}
}
