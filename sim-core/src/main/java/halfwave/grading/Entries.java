package halfwave.grading;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Entry;
import halfwave.quiz.Done;
import halfwave.quiz.Move;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What was done on a visit as a log that a belief can weigh. */
final class Entries {

  private Entries() {}

  /**
   * The log. A call with the gas shut, or with a test signal, is none that the tables have; it is
   * left out.
   */
  static List<Entry> of(List<Done> log) {
    List<Entry> entries = new ArrayList<>();
    boolean gas = true;
    boolean signal = false;
    for (Done done : log) {
      if (done.danger() != null) {
        continue;
      } else if (done.move() instanceof Move.Gas cock) {
        gas = cock.on();
      } else if (done.move() instanceof Move.Signal put) {
        signal = put.on();
      } else if (done.move() instanceof Move.Repaired repaired) {
        entries.add(new Entry.Repaired(repaired.repair(), Entry.Result.UNSEEN));
      } else if (done.move() instanceof Move.Checked checked
          && !(watched(checked.check()) && (signal || !gas))) {
        entries.add(new Entry.Observed(checked.check(), Objects.requireNonNull(done.outcome())));
      }
    }
    return entries;
  }

  /** Whether it shows the furnace as the gas lets it be. */
  static boolean watched(Check check) {
    return check instanceof Check.Call || check instanceof Check.Light;
  }
}
