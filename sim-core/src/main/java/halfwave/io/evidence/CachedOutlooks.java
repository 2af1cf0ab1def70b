package halfwave.io.evidence;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.diagnosis.Outlook;
import halfwave.diagnosis.Priors;
import halfwave.evidence.SymptomTable;
import halfwave.grading.Outlooks;
import halfwave.quiz.ServiceCall;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/**
 * Outlooks from the tables that come with the program, or made and kept, by the shipped judgement;
 * nothing is read before it is asked for. The last few are kept.
 */
public final class CachedOutlooks implements Outlooks {

  /**
   * Kinds of bench that a visit or two are about; one takes a few megabytes and a third of a
   * second.
   */
  static final int KEPT = 4;

  private record Key(Bench bench, BoardSettings settings) {}

  private final CaseCache cache;
  private final SymptomTable.Watch watch;
  private final Map<Key, Outlook> outlooks =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Outlook> eldest) {
          return size() > KEPT;
        }
      };
  private @Nullable Priors judgement;

  /**
   * Prepares it.
   *
   * @param cache where tables are kept
   * @param watch asked while a table is made
   */
  public CachedOutlooks(CaseCache cache, SymptomTable.Watch watch) {
    this.cache = cache;
    this.watch = watch;
  }

  /**
   * The outlook.
   *
   * @throws CancellationException where the watch ended it
   */
  @Override
  public synchronized Outlook of(ServiceCall call) {
    Priors priors = judgement == null ? PriorsFile.shipped() : judgement;
    judgement = priors;
    return outlooks.computeIfAbsent(
        new Key(call.bench(), call.settings()),
        k ->
            new Outlook(
                cache
                    .get(k.bench(), k.settings(), priors.causes(), watch)
                    .orElseThrow(CancellationException::new),
                priors));
  }
}
