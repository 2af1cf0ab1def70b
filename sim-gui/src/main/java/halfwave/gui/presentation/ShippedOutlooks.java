package halfwave.gui.presentation;

import halfwave.diagnosis.Outlook;
import halfwave.grading.Outlooks;
import halfwave.io.CachedOutlooks;
import halfwave.io.CaseCache;
import halfwave.io.PriorsFile;
import halfwave.quiz.ServiceCall;
import org.jspecify.annotations.Nullable;

/** Judgement as the program has it, read when it is asked for: a window opens without it. */
public final class ShippedOutlooks implements Outlooks {

  private final CaseCache cache;
  private @Nullable CachedOutlooks outlooks;

  /**
   * Nothing is read yet.
   *
   * @param cache where tables are kept
   */
  public ShippedOutlooks(CaseCache cache) {
    this.cache = cache;
  }

  @Override
  public Outlook of(ServiceCall call) {
    return outlooks().of(call);
  }

  private synchronized CachedOutlooks outlooks() {
    CachedOutlooks made = outlooks;
    if (made == null) {
      made = new CachedOutlooks(cache, PriorsFile.shipped(), (done, all) -> true);
      outlooks = made;
    }
    return made;
  }
}
