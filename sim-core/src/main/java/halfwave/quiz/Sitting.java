package halfwave.quiz;

import java.util.ArrayList;
import java.util.List;

/**
 * When a quiz was taken by the computer's clock, and how often it was gone on with after the
 * program had been closed: what the clock on the wall would have shown meanwhile.
 *
 * @param begunSeconds when it was begun (s since 1970 UTC); zero: not known
 * @param restarts each time it was gone on with, in order
 * @param handedIn whether the learner ended it: nobody goes on with it after that
 */
public record Sitting(long begunSeconds, List<Restart> restarts, boolean handedIn) {

  /** Nothing is known. */
  public static final Sitting UNKNOWN = new Sitting(0, List.of(), false);

  /** Whoever stays away longer is not reckoned with (s). */
  private static final long MOST_AWAY_SECONDS = 1_000_000;

  /**
   * It was gone on with.
   *
   * @param fromSeconds at the last that was done before, by the clock on the wall since the quiz
   *     began (s)
   * @param toSeconds as it was gone on with (s); no less, and equal where nobody knows
   */
  public record Restart(long fromSeconds, long toSeconds) {

    /** Checks the order. */
    public Restart {
      if (!(fromSeconds >= 0 && toSeconds >= fromSeconds)) {
        throw new IllegalArgumentException(
            "toSeconds = " + toSeconds + ": at least " + fromSeconds);
      }
    }

    /** Whether it is known how long it took. */
    public boolean known() {
      return toSeconds > fromSeconds;
    }
  }

  /** Takes a copy. */
  public Sitting {
    restarts = List.copyOf(restarts);
  }

  /**
   * Gone on with. The time between counts where the beginning is known; a computer's clock that was
   * put back counts for nothing.
   *
   * @param lastSeconds at the last that was done, by the clock on the wall since the quiz began (s)
   * @param nowSeconds the computer's clock (s since 1970 UTC)
   */
  public Sitting goneOn(long lastSeconds, long nowSeconds) {
    long away = begunSeconds > 0 ? nowSeconds - begunSeconds - lastSeconds : 0;
    long again = lastSeconds + Math.max(0, Math.min(MOST_AWAY_SECONDS, away));
    List<Restart> all = new ArrayList<>(restarts);
    all.add(new Restart(lastSeconds, again));
    return new Sitting(begunSeconds, all, handedIn);
  }

  /** The same, ended by the learner. */
  public Sitting ended() {
    return new Sitting(begunSeconds, restarts, true);
  }

  /** What the clock on the wall showed as it was last gone on with (s); zero where it never was. */
  public long lastSeconds() {
    return restarts.isEmpty() ? 0 : restarts.get(restarts.size() - 1).toSeconds();
  }
}
