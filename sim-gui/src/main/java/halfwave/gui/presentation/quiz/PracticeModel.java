package halfwave.gui.presentation.quiz;

import halfwave.fault.FaultGroup;
import halfwave.grading.CallMarks;
import halfwave.grading.Expectation;
import halfwave.grading.Outlooks;
import halfwave.gui.presentation.Listeners;
import halfwave.gui.presentation.OneByOne;
import halfwave.gui.presentation.Saying;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.RoutineModel;
import halfwave.gui.presentation.quiz.CoachedMoves.Expected;
import halfwave.picture.scene.DrawnBench;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Help;
import halfwave.quiz.Level;
import halfwave.quiz.Move;
import halfwave.quiz.Objective;
import halfwave.quiz.Phase;
import halfwave.quiz.Progress;
import halfwave.quiz.Quiz;
import halfwave.quiz.Refusal;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Visit;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Practice of one service call with a coach. Belongs to the screen's thread. */
public final class PracticeModel implements Visiting {

  private final Supplier<Quiz> shipped;
  private final Outlooks outlooks;
  private final ProgressKeeper keeper;
  private final Listeners listeners = new Listeners();
  private final OneByOne work;
  private final RoutineModel routine;

  private boolean writing;
  private @Nullable Quiz bank;
  private @Nullable Objective objective;
  private @Nullable Level level;
  private @Nullable Help chosenHelp;
  private @Nullable PracticeSession session;
  private final Deque<PracticePoint> points = new ArrayDeque<>();
  private Move.@Nullable Checked asked;
  private VisitDraft draft = VisitDraft.EMPTY;
  private @Nullable CallMarks marks;

  /**
   * Nothing is practised yet.
   *
   * @param background plays moves; it may keep nobody else waiting
   * @param screen runs what touches panels
   * @param shipped where the calls come from
   * @param outlooks where the coach's judgement comes from
   * @param keeper keeps how far the learner has come
   * @param failed is told of an error in the program itself
   */
  public PracticeModel(
      Executor background,
      Executor screen,
      Supplier<Quiz> shipped,
      Outlooks outlooks,
      ProgressKeeper keeper,
      Consumer<Throwable> failed) {
    this.shipped = shipped;
    this.outlooks = outlooks;
    this.keeper = keeper;
    work = new OneByOne(background, screen, failed, listeners);
    routine = new RoutineModel(background, screen, outlooks, listeners, failed);
  }

  /** Is told whenever something changed. */
  public Runnable subscribe(Runnable watcher) {
    return listeners.add(watcher);
  }

  // ------------------------------------------------------------ the choice

  /** Reads the calls and what was practised before, once. */
  public void open() {
    if (bank == null) {
      work.begin(
          watch -> {
            Quiz read = shipped.get();
            Saying trouble = keeper.read();
            return () -> {
              bank = read;
              work.told(trouble);
            };
          });
    }
  }

  /** How far the learner has come. */
  public Progress progress() {
    return keeper.progress();
  }

  /**
   * Writes how far the learner has come to a file of his own.
   *
   * @throws halfwave.io.BadInputException if it cannot be written
   */
  public void export(Path file) {
    keeper.export(file);
  }

  /** What is to be practised, or null: anything. */
  public @Nullable Objective objective() {
    return objective;
  }

  /** How hard it is to be, or null: any. */
  public @Nullable Level level() {
    return level;
  }

  /**
   * Only calls that ask for that, and for so much of it; null: any.
   *
   * @param help how much the coach is to do; null: as the learner's progress has it
   */
  public void narrow(@Nullable Objective wanted, @Nullable Level much, @Nullable Help help) {
    objective = wanted;
    level = much;
    chosenHelp = help;
    listeners.tell();
  }

  /** The calls to choose from. */
  public List<ServiceCall> calls() {
    Quiz all = bank;
    return all == null
        ? List.of()
        : all.calls().stream()
            .filter(c -> objective == null || c.objective() == objective)
            .filter(c -> level == null || c.level() == level)
            .toList();
  }

  /** How much the coach is to do, or null: as the learner's progress has it. */
  public @Nullable Help chosenHelp() {
    return chosenHelp;
  }

  /** How much the coach would do at that call. */
  public Help help(ServiceCall call) {
    Help chosen = chosenHelp;
    return chosen == null ? progress().next(call.objective()) : chosen;
  }

  /** Whether an order of work is written, in place of the choice of a call. */
  public boolean writing() {
    return writing;
  }

  /** Writes an order of work, or goes back to the choice of a call. */
  public void write(boolean begin) {
    writing = begin;
    listeners.tell();
  }

  /** The instructor's own order of work. */
  public RoutineModel routine() {
    return routine;
  }

  /** Compares that with what an expert does, on the calls there are to choose from. */
  public void compare() {
    Quiz all = bank;
    if (all != null) {
      routine.compare(all, calls());
    }
  }

  /** Begins a call. */
  public void begin(ServiceCall call) {
    Quiz all = bank;
    if (all == null) {
      return;
    }
    Help help = help(call);
    int time = progress().calls();
    work.begin(
        watch -> {
          PracticeSession begun = PracticeSession.begin(all, call, help, outlooks, time);
          return () -> {
            session = begun;
            points.clear();
            points.push(begun.first());
            asked = null;
            marks = null;
            draft = VisitDraft.EMPTY;
          };
        });
  }

  /** Back to the choice. */
  public void leave() {
    if (!work.busy()) {
      session = null;
      points.clear();
      asked = null;
      marks = null;
      work.say(Saying.NOTHING);
    }
  }

  // -------------------------------------------------------------- the call

  /** The call that is practised, or null. */
  public @Nullable ServiceCall call() {
    PracticeSession now = session;
    return now == null ? null : now.call();
  }

  /** How much the coach does at it. */
  public Help help() {
    PracticeSession now = session;
    return now == null ? Help.NONE : now.help();
  }

  @Override
  public @Nullable Visit visit() {
    ServiceCall at = call();
    PracticePoint point = points.peek();
    return at == null || point == null ? null : point.attempt().visits().get(at.name());
  }

  @Override
  public @Nullable DrawnBench furnace() {
    PracticeSession now = session;
    return now == null ? null : now.furnace();
  }

  /** The stage, or null before a call is begun. */
  public @Nullable Phase phase() {
    PracticePoint point = points.peek();
    return point == null ? null : point.phase();
  }

  /** What the coach would do now and why; null where he does not say it. */
  public @Nullable CoachStep step() {
    PracticePoint point = points.peek();
    return point == null || help() != Help.WORKED || closed()
        ? null
        : new CoachStep(point.next().orElse(null), point.why());
  }

  /** Does what the coach would do; where nothing is left, concludes as he would. */
  public void follow() {
    PracticeSession now = session;
    PracticePoint point = points.peek();
    Visit visit = visit();
    if (now == null || point == null || visit == null || closed()) {
      return;
    }
    Optional<Move> next = point.next();
    if (next.isPresent()) {
      play(next.get(), null);
    } else {
      finish(() -> now.coach().expert().conclusion(visit));
    }
  }

  @Override
  public void want(Move move) {
    Visit visit = visit();
    if (work.busy() || visit == null) {
      return;
    }
    Refusal refusal = closed() ? Refusal.OVER : visit.refusal(move).orElse(null);
    if (refusal != null) {
      work.say(words -> words.text("visit.refused", words.sentences().name(refusal)));
    } else if (help() == Help.ASKING && move instanceof Move.Checked checked) {
      asked = checked;
      work.say(Saying.NOTHING);
    } else {
      play(move, null);
    }
  }

  /** The check that is asked about before it is done, or null. */
  public Move.@Nullable Checked asked() {
    return asked;
  }

  /**
   * Answers, and does the check.
   *
   * @param found what it will find, or null: no idea
   * @param groups where the fault may be after it
   */
  public void answer(@Nullable Expectation found, Set<FaultGroup> groups) {
    Move.Checked check = asked;
    if (check != null) {
      play(check, new Expected(found, groups));
    }
  }

  /** Does something else instead. */
  public void dropAsked() {
    asked = null;
    work.say(Saying.NOTHING);
  }

  private void play(Move move, @Nullable Expected expected) {
    PracticeSession now = session;
    PracticePoint point = points.peek();
    if (now != null && point != null) {
      work.begin(
          watch -> {
            PracticePoint next = now.moves().after(point, move, expected);
            return () -> {
              asked = null;
              points.push(next);
            };
          });
    }
  }

  /** Whether something can be taken back. */
  public boolean undoable() {
    return points.size() > 1 && marks == null && !work.busy();
  }

  /** Takes the last move back. */
  public void undo() {
    if (undoable()) {
      points.pop();
      asked = null;
      work.say(Saying.NOTHING);
    }
  }

  // --------------------------------------------------------------- the end

  @Override
  public void conclude(Conclusion conclusion) {
    if (!closed()) {
      finish(() -> conclusion);
    }
  }

  /** Ends it without a conclusion. */
  public void giveUp() {
    finish(() -> null);
  }

  private void finish(Supplier<@Nullable Conclusion> said) {
    PracticeSession now = session;
    PracticePoint point = points.peek();
    if (now == null || point == null || marks != null) {
      return;
    }
    work.begin(
        watch -> {
          CallMarks given = now.marks(point.attempt(), said.get());
          Saying trouble = keeper.add(now.call().objective(), given.totalRatio(), now.help());
          return () -> {
            asked = null;
            marks = given;
            work.told(trouble);
          };
        });
  }

  /** The marks at the end, or null before it. */
  public @Nullable CallMarks marks() {
    return marks;
  }

  // --------------------------------------------------------- for the panels

  @Override
  public boolean busy() {
    return work.busy();
  }

  @Override
  public boolean closed() {
    Visit visit = visit();
    return visit == null || marks != null || visit.ending().isPresent();
  }

  @Override
  public boolean hints() {
    return help() != Help.WORKED;
  }

  @Override
  public List<String> remarks(int line, Wording words) {
    PracticePoint point = points.peek();
    return point == null || line >= point.remarks().size()
        ? List.of()
        : point.remarks().get(line).stream().map(s -> s.in(words)).toList();
  }

  @Override
  public VisitDraft draft() {
    return draft;
  }

  @Override
  public void keep(VisitDraft written) {
    draft = written;
  }

  @Override
  public String said(Wording words) {
    return work.said(words);
  }
}
