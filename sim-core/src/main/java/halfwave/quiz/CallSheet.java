package halfwave.quiz;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a learner hands in of one call.
 *
 * @param call name of the service call
 * @param moves what was done, in order
 * @param conclusion what was concluded; null where it did not come to that
 */
public record CallSheet(String call, List<Logged> moves, @Nullable Conclusion conclusion) {

  /**
   * A move as it was written down.
   *
   * @param move what was done
   * @param minute simulated minute at which it was done with
   * @param wallSeconds seconds by the clock on the wall since the quiz began
   * @param found what was found, in the words of a call log; empty where nothing was
   */
  public record Logged(Move move, int minute, long wallSeconds, String found) {

    /** A move and what came of it, written down at that second. */
    public static Logged of(Done done, long wallSeconds) {
      return new Logged(done.move(), done.minute(), wallSeconds, Found.text(done));
    }
  }

  /** Takes a copy. */
  public CallSheet {
    moves = List.copyOf(moves);
  }

  /** Whether anything was done at the furnace: a call that was only opened is no work. */
  public boolean worked() {
    return moves.stream().map(Logged::move).anyMatch(CallSheet::work);
  }

  private static boolean work(Move move) {
    return move instanceof Move.Checked
        || move instanceof Move.Repaired
        || move instanceof Move.Signal
        || move instanceof Move.Tempted;
  }
}
