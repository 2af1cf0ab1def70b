package halfwave.quiz;

import halfwave.work.Work;
import org.jspecify.annotations.Nullable;

/** Throws switch and cock as a careful person does before a piece of work. */
public final class Ready {

  private Ready() {}

  /** The move itself, or what has to be switched before it. */
  public static Move before(Visit visit, Move move) {
    if (!(move instanceof Move.Checked || move instanceof Move.Repaired)) {
      return move;
    }
    Work work = work(move);
    boolean off = work != null && work.powerOff();
    boolean shut = work != null && work.gasOff();
    if (off == visit.power()) {
      return new Move.Power(!off);
    }
    return shut == visit.gas() ? new Move.Gas(!shut) : move;
  }

  /** The visit, with power and gas as the move needs them. */
  public static Visit forMove(Visit visit, Move move) {
    Visit ready = visit;
    Move before = before(ready, move);
    while (!before.equals(move)) {
      ready = ready.after(before);
      before = before(ready, move);
    }
    return ready;
  }

  private static @Nullable Work work(Move move) {
    if (move instanceof Move.Checked checked) {
      return checked.check().work().orElse(null);
    }
    return move instanceof Move.Repaired repaired ? repaired.repair() : null;
  }
}
