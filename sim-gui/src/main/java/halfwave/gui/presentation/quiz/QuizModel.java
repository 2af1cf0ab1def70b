package halfwave.gui.presentation.quiz;

import halfwave.grading.Assessor;
import halfwave.grading.Coach;
import halfwave.grading.Outlooks;
import halfwave.gui.presentation.Listeners;
import halfwave.gui.presentation.OneByOne;
import halfwave.gui.presentation.Saying;
import halfwave.gui.presentation.Wording;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.quiz.QuizFile;
import halfwave.io.quiz.SheetFile;
import halfwave.io.quiz.SheetLock;
import halfwave.message.Message;
import halfwave.picture.scene.DrawnBench;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Move;
import halfwave.quiz.Quiz;
import halfwave.quiz.Refusal;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Visit;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A quiz being taken. What is done is played and written to the answer sheet away from the screen's
 * thread, one after the other, and is shown when it stands on the disk. Belongs to the screen's
 * thread.
 */
public final class QuizModel implements Visiting {

  private final WallClock clock;
  private final Supplier<Instant> today;
  private final Outlooks outlooks;
  private final Listeners listeners = new Listeners();
  private final OneByOne work;
  private final Map<String, Coach> coaches = new ConcurrentHashMap<>();

  private QuizStart start = QuizStart.EMPTY;
  private @Nullable Quiz quiz;
  private @Nullable Attempt attempt;
  private @Nullable SheetLock lock;
  private @Nullable ServiceCall open;
  private @Nullable DrawnBench furnace;
  private final Map<String, VisitDraft> drafts = new HashMap<>();
  private Map<Integer, Message> hints = Map.of();
  private boolean unsaved;
  private boolean left;
  private long toldSeconds = -1;

  /**
   * Nothing is open yet.
   *
   * @param background plays moves and writes sheets; it may keep nobody else waiting
   * @param screen runs what touches panels
   * @param nanos the clock on the wall (ns), from any zero
   * @param today the computer's clock: says how long the program was closed
   * @param outlooks where the judgement for hints comes from
   * @param failed is told of an error in the program itself
   */
  public QuizModel(
      Executor background,
      Executor screen,
      LongSupplier nanos,
      Supplier<Instant> today,
      Outlooks outlooks,
      Consumer<Throwable> failed) {
    clock = new WallClock(nanos);
    this.today = today;
    this.outlooks = outlooks;
    work = new OneByOne(background, screen, failed, listeners);
  }

  /** Is told whenever something changed. */
  public Runnable subscribe(Runnable watcher) {
    return listeners.add(watcher);
  }

  // ------------------------------------------------------------- the start

  /** What stands in the form at the start. */
  public QuizStart start() {
    return start;
  }

  /** Keeps what stands in the form at the start. */
  public void keep(QuizStart filled) {
    start = filled;
  }

  /** The quiz that is open, or null. */
  public @Nullable Quiz quiz() {
    return quiz;
  }

  /** Opens the file of a quiz; what is none is told by {@link #said}. */
  public void open(Path file) {
    work.begin(
        watch -> {
          Quiz read = QuizFile.read(file).quiz();
          return () -> {
            quiz = read;
            start = start.withQuiz(file);
          };
        });
  }

  /** Begins, or goes on where the sheet that is there had come to. */
  public void begin() {
    Quiz taken = quiz;
    Path sheet = start.sheet();
    String learner = start.learner().strip();
    if (taken == null || sheet == null || learner.isEmpty()) {
      work.say(words -> words.text("quiz.incomplete"));
      return;
    }
    double extra = start.extraTimeRatio();
    work.begin(
        watch -> {
          Begun begun = Begun.of(taken, sheet, learner, extra, today.get().getEpochSecond());
          return () -> began(begun);
        });
  }

  private void began(Begun begun) {
    work.told(begun.why());
    attempt = begun.attempt();
    lock = begun.lock();
    if (begun.attempt() != null) {
      clock.begin(begun.attempt().wallSeconds());
      open = null;
      left = false;
      drafts.clear();
      next(begun.attempt());
    }
  }

  /** One that was begun, else the first that was not. */
  private void next(Attempt begun) {
    for (Attempt.Standing wanted : List.of(Attempt.Standing.BEGUN, Attempt.Standing.NEW)) {
      for (ServiceCall call : begun.quiz().calls()) {
        if (begun.standing(call) == wanted) {
          choose(call);
          return;
        }
      }
    }
  }

  /** Back to the start, for another quiz or learner. */
  public void leave() {
    if (!work.busy()) {
      release();
      attempt = null;
      open = null;
      start = start.withoutLearner();
      work.say(Saying.NOTHING);
    }
  }

  /** Another window may have the sheet. */
  public void release() {
    if (lock != null) {
      lock.close();
      lock = null;
    }
  }

  // --------------------------------------------------------------- a call

  /** The quiz as it is being taken, or null before it was begun. */
  public @Nullable Attempt attempt() {
    return attempt;
  }

  /** The call that is open, or null. */
  public @Nullable ServiceCall call() {
    return open;
  }

  /** Goes to a call. */
  public void choose(ServiceCall call) {
    Attempt now = attempt;
    boolean seen = now != null && now.visits().containsKey(call.name());
    if (now == null || call.equals(open) || (over() && !seen)) {
      return;
    }
    work.begin(
        watch -> {
          DrawnBench healthy = HealthyFurnace.of(call);
          Map<Integer, Message> found = hints(now, call);
          Runnable kept = seen ? () -> {} : written(now.opened(call));
          return () -> {
            open = call;
            furnace = healthy;
            hints = found;
            kept.run();
          };
        });
  }

  @Override
  public @Nullable DrawnBench furnace() {
    return furnace;
  }

  @Override
  public @Nullable Visit visit() {
    Attempt now = attempt;
    ServiceCall at = open;
    return now == null || at == null ? null : now.visits().get(at.name());
  }

  @Override
  public void want(Move move) {
    Attempt now = attempt;
    ServiceCall at = open;
    Visit visit = visit();
    if (work.busy() || now == null || at == null || visit == null) {
      return;
    }
    Refusal refusal = closed() ? Refusal.OVER : visit.refusal(move).orElse(null);
    if (refusal != null) {
      work.say(words -> words.text("visit.refused", words.sentences().name(refusal)));
      return;
    }
    long seconds = clock.seconds();
    work.begin(
        watch -> {
          Attempt next = now.after(at, move, seconds);
          // on the disk before anything else may fail
          Runnable kept = written(next);
          Map<Integer, Message> found = hints(next, at);
          return () -> {
            hints = found;
            kept.run();
          };
        });
  }

  @Override
  public void conclude(Conclusion conclusion) {
    Attempt now = attempt;
    ServiceCall at = open;
    if (!work.busy() && now != null && at != null && !closed()) {
      work.begin(
          watch -> {
            Runnable kept = written(now.concluded(at, conclusion));
            return () -> {
              kept.run();
              drafts.remove(at.name());
            };
          });
    }
  }

  @Override
  public boolean closed() {
    Attempt now = attempt;
    ServiceCall at = open;
    return now == null || at == null || over() || now.standing(at) != Attempt.Standing.BEGUN;
  }

  @Override
  public boolean hints() {
    Quiz taken = quiz;
    return taken != null && taken.rules().hints();
  }

  @Override
  public List<String> remarks(int line, Wording words) {
    Message hint = hints.get(line);
    return hint == null ? List.of() : List.of(words.sentences().text(hint));
  }

  private Map<Integer, Message> hints(Attempt of, ServiceCall call) {
    Visit visit = of.visits().get(call.name());
    return visit == null || !of.quiz().rules().hints()
        ? Map.of()
        : Hints.of(visit, of.appearances(), () -> coach(of.quiz(), call));
  }

  private Coach coach(Quiz taken, ServiceCall call) {
    return coaches.computeIfAbsent(
        taken.name() + '/' + call.name(), n -> new Coach(new Assessor(call, outlooks.of(call))));
  }

  @Override
  public VisitDraft draft() {
    ServiceCall at = open;
    Conclusion conclusion = handed();
    return conclusion != null
        ? VisitDraft.of(conclusion)
        : at == null ? VisitDraft.EMPTY : drafts.getOrDefault(at.name(), VisitDraft.EMPTY);
  }

  @Override
  public boolean handedIn() {
    return handed() != null;
  }

  private @Nullable Conclusion handed() {
    Attempt now = attempt;
    ServiceCall at = open;
    return now == null || at == null
        ? null
        : now.sheet().call(at.name()).map(CallSheet::conclusion).orElse(null);
  }

  @Override
  public void keep(VisitDraft written) {
    ServiceCall at = open;
    if (at != null) {
      drafts.put(at.name(), written);
    }
  }

  // ------------------------------------------------------------- the clock

  /** Seconds that are left by the clock on the wall; nothing where there is no limit. */
  public OptionalLong secondsLeft() {
    Attempt now = attempt;
    if (now == null || !(now.quiz().rules().wallMinutes() > 0)) {
      return OptionalLong.empty();
    }
    double limit = 60 * now.quiz().rules().wallMinutes() * now.sheet().extraTimeRatio();
    return OptionalLong.of(Math.max(0, Math.round(limit) - clock.seconds()));
  }

  /** Whether the time by the clock on the wall is used up. */
  public boolean timeUp() {
    return secondsLeft().orElse(1) == 0;
  }

  /** Whether nothing more can be done in the whole quiz. */
  public boolean over() {
    Attempt now = attempt;
    return now != null && (left || now.over() || timeUp());
  }

  /** Whether somebody is being examined: the quiz was begun, and something can still be done. */
  public boolean taken() {
    return attempt != null && !over();
  }

  /** Hands in what there is; nobody goes on with the sheet after that. */
  public void handIn() {
    Attempt now = attempt;
    if (!work.busy() && now != null) {
      left = true;
      work.begin(watch -> written(now.ended()));
    }
  }

  /** A moment later. */
  public void tick() {
    long now = secondsLeft().orElse(-1);
    if (now != toldSeconds) {
      toldSeconds = now;
      listeners.tell();
    }
  }

  // -------------------------------------------------------------- the work

  /** Whether what was done last does not stand on the disk. */
  public boolean unsaved() {
    return unsaved;
  }

  /** Writes the sheet once more. */
  public void save() {
    Attempt now = attempt;
    if (now != null) {
      work.begin(watch -> written(now));
    }
  }

  private Runnable written(Attempt next) {
    Path sheet = start.sheet();
    BadInputException trouble = null;
    try {
      if (sheet != null) {
        AtomicFile.write(sheet, SheetFile.text(next.sheet()));
      }
    } catch (BadInputException e) {
      // what was done stays done: it is written with the next move
      trouble = e;
    }
    BadInputException why = trouble;
    return () -> {
      attempt = next;
      unsaved = why != null;
      work.told(words -> why == null ? "" : why.line(words.sentences()));
    };
  }

  @Override
  public boolean busy() {
    return work.busy();
  }

  @Override
  public String said(Wording words) {
    return work.said(words);
  }
}
