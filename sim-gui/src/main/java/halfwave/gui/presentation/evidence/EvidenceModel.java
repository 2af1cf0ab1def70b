package halfwave.gui.presentation.evidence;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.board.BoardSettings;
import halfwave.diagnosis.Adviser;
import halfwave.diagnosis.CaseTable;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outlook;
import halfwave.diagnosis.Priors;
import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.Listeners;
import halfwave.gui.presentation.bench.State;
import halfwave.io.evidence.CaseCache;
import halfwave.io.evidence.PriorsFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What was found on a call, and what follows from it, reckoned away from the screen's thread. It is
 * about benches of the kind that is open, whatever is wrong with this one, so a sealed bench gives
 * nothing away. Belongs to the screen's thread.
 */
public final class EvidenceModel {

  /** A kind of bench, and what was found on it. */
  record Question(Bench healthy, BoardSettings settings, List<Entry> log) {
    boolean sameKind(@Nullable Question other) {
      return other != null && healthy.equals(other.healthy) && settings.equals(other.settings);
    }
  }

  private final CaseCache cache;
  private final Executor background;
  private final Executor screen;
  private final Inquiry<Question, EvidenceAnswer> inquiry;
  private final Listeners listeners = new Listeners();
  private volatile @Nullable Question asked;
  private @Nullable State state;

  /** These belong to the thread that reckons. */
  private @Nullable Question known;

  private @Nullable Outlook outlook;

  private @Nullable Priors priors;

  /**
   * Nothing was found yet.
   *
   * @param cache where tables are kept
   * @param background runs what takes long; it may keep nobody else waiting
   * @param screen runs what touches panels
   * @param failed is told of an error in the program itself
   */
  public EvidenceModel(
      CaseCache cache, Executor background, Executor screen, Consumer<Throwable> failed) {
    this.cache = cache;
    this.background = background;
    this.screen = screen;
    inquiry = new Inquiry<>(background, screen, this::answer, listeners::tell, failed);
  }

  /** Is told whenever something changed. */
  public Runnable subscribe(Runnable watcher) {
    return listeners.add(watcher);
  }

  /** Somebody looks, and that bench is open. */
  public void want(State shown) {
    state = shown;
    Bench bench = shown.moment().bench();
    Question kind =
        new Question(bench.with(Condition.HEALTHY), shown.moment().settings(), List.of());
    if (!kind.sameKind(asked)) {
      ask(kind);
    }
  }

  private void ask(Question question) {
    asked = question;
    inquiry.ask(question);
    listeners.tell();
  }

  /** What was found so far, in order. */
  public List<Entry> log() {
    Question now = asked;
    return now == null ? List.of() : now.log();
  }

  /** Everything there is to find out on such a bench. */
  public List<Check> checks() {
    Question now = asked;
    return now == null ? List.of() : Check.all(now.healthy().design().ignition());
  }

  /** One more line. */
  public void add(Entry entry) {
    List<Entry> more = new ArrayList<>(log());
    more.add(entry);
    log(more);
  }

  /** Takes a line away. */
  public void remove(int index) {
    List<Entry> fewer = new ArrayList<>(log());
    if (index < fewer.size()) {
      fewer.remove(index);
      log(fewer);
    }
  }

  /** Begins anew. */
  public void clear() {
    log(List.of());
  }

  private void log(List<Entry> entries) {
    Question now = asked;
    if (now != null) {
      ask(new Question(now.healthy(), now.settings(), List.copyOf(entries)));
    }
  }

  /** Looks at the bench as it is now, and adds what is found. */
  public void look(Check check) {
    State now = state;
    if (now != null) {
      background.execute(
          () -> {
            Entry found = new Entry.Observed(check, EvidenceLook.at(check, now));
            screen.execute(() -> add(found));
          });
    }
  }

  /** The last answer, or null before the first. */
  public @Nullable EvidenceAnswer answer() {
    return inquiry.answer();
  }

  /** Whether something is reckoned. */
  public boolean busy() {
    return inquiry.busy();
  }

  /** How much of it is done, 0 to 1. */
  public double share() {
    return inquiry.share();
  }

  /** Gives it up; the tab asks again when it is opened with another bench. */
  public void cancel() {
    inquiry.cancel();
    asked = null;
    listeners.tell();
  }

  private void answer(Question question, Inquiry.Hearing<EvidenceAnswer> hearing) {
    Priors judgement = priors == null ? PriorsFile.shipped() : priors;
    priors = judgement;
    Outlook ready = outlook;
    if (ready == null || !question.sameKind(known)) {
      Optional<CaseTable> table =
          cache.get(
              question.healthy(),
              question.settings(),
              judgement.causes(),
              (done, all) -> {
                hearing.done((double) done / all);
                // another line on the same kind of bench needs the same table
                return question.sameKind(asked);
              });
      if (table.isEmpty()) {
        return;
      }
      ready = new Outlook(table.get(), judgement);
      outlook = ready;
      known = question;
    }
    var belief = ready.start().after(question.log());
    Adviser adviser = new Adviser(ready, question.healthy().design().ignition());
    hearing.tell(new EvidenceAnswer(belief, adviser.advice(belief)));
  }
}
