package halfwave.grading;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Entry;
import halfwave.quiz.Done;
import halfwave.quiz.Move;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What was done on a visit as a log that a belief can weigh. A call with the gas shut, or with a
 * test signal, is none that the tables have; it is left out.
 */
final class Entries {

  private final List<Entry> lines = new ArrayList<>();
  private boolean gas = true;
  private boolean signal;

  /** The log of a whole visit. */
  static List<Entry> of(List<Done> log) {
    Entries entries = new Entries();
    log.forEach(entries::add);
    return entries.lines();
  }

  /** Takes the next thing that was done. */
  void add(Done done) {
    if (done.move() instanceof Move.Gas cock) {
      gas = cock.on();
    } else if (done.move() instanceof Move.Signal put) {
      signal = put.on();
    } else if (counts(done)) {
      lines.add(line(done));
    }
  }

  /** Whether a thing that is done next is a line of the log. */
  boolean counts(Done done) {
    if (done.danger() != null) {
      return false;
    }
    return done.move() instanceof Move.Repaired
        || (done.move() instanceof Move.Checked checked
            && !(watched(checked.check()) && (signal || !gas)));
  }

  private static Entry line(Done done) {
    return done.move() instanceof Move.Repaired repaired
        ? new Entry.Repaired(repaired.repair(), Entry.Result.UNSEEN)
        : new Entry.Observed(
            ((Move.Checked) done.move()).check(), Objects.requireNonNull(done.outcome()));
  }

  /** Whether it shows the furnace as the gas lets it be. */
  static boolean watched(Check check) {
    return check instanceof Check.Call || check instanceof Check.Light;
  }

  /** Whether a test signal is there. */
  boolean signal() {
    return signal;
  }

  /** The log so far. */
  List<Entry> lines() {
    return List.copyOf(lines);
  }
}
