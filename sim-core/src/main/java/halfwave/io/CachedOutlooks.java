package halfwave.io;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.diagnosis.Outlook;
import halfwave.diagnosis.Priors;
import halfwave.evidence.SymptomTable;
import halfwave.grading.Outlooks;
import halfwave.quiz.ServiceCall;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;

/** Outlooks from the tables that come with the program, or made and kept; each once. */
public final class CachedOutlooks implements Outlooks {

  private record Key(Bench bench, BoardSettings settings) {}

  private final CaseCache cache;
  private final Priors priors;
  private final SymptomTable.Watch watch;
  private final Map<Key, Outlook> outlooks = new HashMap<>();

  /**
   * Prepares it.
   *
   * @param cache where tables are kept
   * @param priors judgement
   * @param watch asked while a table is made
   */
  public CachedOutlooks(CaseCache cache, Priors priors, SymptomTable.Watch watch) {
    this.cache = cache;
    this.priors = priors;
    this.watch = watch;
  }

  /**
   * The outlook.
   *
   * @throws CancellationException where the watch ended it
   */
  @Override
  public synchronized Outlook of(ServiceCall call) {
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
