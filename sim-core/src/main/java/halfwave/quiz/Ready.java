package halfwave.quiz;

import halfwave.work.Work;
import org.jspecify.annotations.Nullable;

/** Throws switch and cock as a careful person does before a piece of work. */
public final class Ready {

  private Ready() {}

  /** The visit, with power and gas as the move needs them. */
  public static Visit forMove(Visit visit, Move move) {
    Work work = work(move);
    Visit off = power(visit, work == null || !work.powerOff());
    return gas(off, work == null || !work.gasOff());
  }

  private static @Nullable Work work(Move move) {
    if (move instanceof Move.Checked checked) {
      return checked.check().work().orElse(null);
    }
    return move instanceof Move.Repaired repaired ? repaired.repair() : null;
  }

  private static Visit power(Visit visit, boolean on) {
    return visit.power() == on ? visit : visit.after(new Move.Power(on));
  }

  private static Visit gas(Visit visit, boolean on) {
    return visit.gas() == on ? visit : visit.after(new Move.Gas(on));
  }
}
