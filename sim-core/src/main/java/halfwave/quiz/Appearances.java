package halfwave.quiz;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.diagnosis.Appearance;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.evidence.HeatingCall;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What benches look like, remembered: a heating call takes long to play, and many learners meet the
 * same furnace. Safe for many threads; forgets all at once when it holds too many.
 */
public final class Appearances {

  private static final int MOST = 4096;

  private record Key(Bench bench, BoardSettings settings, long seed) {}

  private record Seen(Key key, Check check) {}

  private final Map<Key, Appearance> calls = new ConcurrentHashMap<>();
  private final Map<Seen, Outcome> seen = new ConcurrentHashMap<>();

  /** What a check finds on a bench, without any error of who looks. */
  Outcome outcome(Bench bench, BoardSettings settings, long seed, Check check) {
    Key key = new Key(bench, settings, seed);
    Seen asked = new Seen(key, check);
    Outcome known = seen.get(asked);
    if (known == null) {
      Appearance appearance = appearance(key);
      synchronized (appearance) {
        known = appearance.outcome(check);
      }
      seen.put(asked, known);
    }
    return known;
  }

  /** The heating call of a bench. */
  HeatingCall call(Bench bench, BoardSettings settings, long seed) {
    return appearance(new Key(bench, settings, seed)).call();
  }

  private Appearance appearance(Key key) {
    if (calls.size() > MOST) {
      calls.clear();
      seen.clear();
    }
    return calls.computeIfAbsent(
        key, k -> new Appearance(k.bench(), HeatingCall.of(k.bench(), k.settings(), k.seed())));
  }
}
