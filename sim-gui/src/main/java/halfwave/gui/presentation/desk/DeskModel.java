package halfwave.gui.presentation.desk;

import halfwave.grading.CallCheck;
import halfwave.grading.CallMarks;
import halfwave.grading.ClassReport;
import halfwave.grading.Grader;
import halfwave.grading.Outlooks;
import halfwave.grading.SheetMarks;
import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.Listeners;
import halfwave.gui.presentation.OneByOne;
import halfwave.gui.presentation.PlainName;
import halfwave.gui.presentation.Wording;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.quiz.Engine;
import halfwave.io.quiz.MarksJson;
import halfwave.io.quiz.QuizFile;
import halfwave.io.quiz.QuizRecoveryFile;
import halfwave.io.quiz.QuizText;
import halfwave.io.quiz.SheetFolder;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.paper.PaperSize;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Appearances;
import halfwave.quiz.Assembly;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The desk of an instructor: makes quizzes, marks answer sheets, writes what follows from them. All
 * that reads, plays or writes is done away from the screen's thread. Belongs to the screen's
 * thread.
 */
public final class DeskModel {

  private final Supplier<Quiz> shipped;
  private final Outlooks outlooks;
  private final Supplier<Instant> clock;
  private final Listeners listeners = new Listeners();
  private final OneByOne work;
  private final Inquiry<DeskReplay.Question, DeskReplay> replays;

  private DeskState state = DeskState.EMPTY;
  private DeskHistory history = DeskHistory.NONE;

  /**
   * Nothing is read yet.
   *
   * @param background reads, plays and writes; it may keep nobody else waiting
   * @param screen runs what touches panels
   * @param shipped the bank that comes with the program, read when it is asked for
   * @param outlooks where the judgement comes from
   * @param clock tells when statements are written
   * @param failed is told of an error in the program itself
   */
  public DeskModel(
      Executor background,
      Executor screen,
      Supplier<Quiz> shipped,
      Outlooks outlooks,
      Supplier<Instant> clock,
      Consumer<Throwable> failed) {
    this.shipped = shipped;
    this.outlooks = outlooks;
    this.clock = clock;
    work = new OneByOne(background, screen, failed, listeners);
    replays = new Inquiry<>(background, screen, DeskReplay::answer, listeners::tell, failed);
  }

  /** Is told whenever something changed. */
  public Runnable subscribe(Runnable watcher) {
    return listeners.add(watcher);
  }

  /** What there is to see. */
  public DeskState state() {
    return state;
  }

  private void state(DeskState next) {
    state = next;
    listeners.tell();
  }

  // --------------------------------------------------------------- the quiz

  /** Reads the bank when the desk is shown first. */
  public void begin() {
    if (state.bank() == null) {
      fresh();
    }
  }

  /** A new quiz from the bank. */
  public void fresh() {
    work.begin(
        watch -> {
          Quiz bank = shipped.get();
          return () -> another(state.opened(bank, DeskDraft.fresh(bank)));
        });
  }

  /** Puts a quiz on the desk that was never saved. */
  void bringBack(QuizRecoveryFile left) {
    work.begin(
        watch -> {
          Quiz bank = shipped.get();
          DeskDraft draft = DeskDraft.of(left);
          return () -> another(state.broughtBack(bank, draft));
        });
  }

  /** Opens the file of an instructor; one that was handed out is refused. */
  public void open(Path file) {
    work.begin(
        watch -> {
          QuizFile.Opened opened = QuizFile.read(file);
          if (opened.sealed()) {
            throw BadInputException.ofFile(
                file.toString(), Message.of(MessageKey.ALLOWED_UNSEALED));
          }
          Quiz bank = shipped.get();
          return () -> another(state.opened(bank, DeskDraft.of(opened.quiz())));
        });
  }

  private void another(DeskState opened) {
    state = opened;
    history = DeskHistory.NONE;
  }

  /** Writes the file of the instructor. */
  public void save(Path file) {
    DeskDraft saved = state.draft();
    made(
        quiz ->
            watch -> {
              AtomicFile.write(file, QuizText.of(quiz));
              return () -> {
                state = state.saved(saved);
                written(file);
              };
            });
  }

  /** Writes what learners get: nobody reads there what is wrong. */
  public void handOut(Path file) {
    made(
        quiz ->
            watch -> {
              AtomicFile.write(file, QuizText.sealed(quiz));
              return () -> written(file);
            });
  }

  private void written(Path file) {
    work.told(words -> words.text("desk.written", file.getFileName()));
  }

  /** Work on the quiz, if there is one. */
  private void made(Function<Quiz, OneByOne.Work> what) {
    Optional<Quiz> quiz = state.draftQuiz();
    if (quiz.isEmpty()) {
      work.say(words -> words.text("desk.no-calls"));
    } else {
      work.begin(what.apply(quiz.get()));
    }
  }

  /** Keeps what stands in the forms. */
  public void keep(DeskDraft draft) {
    DeskDraft before = state.draft();
    if (before != null && !draft.equals(before)) {
      history = history.then(before, draft);
      state(state.with(draft));
    }
  }

  /** Whether a change of the quiz can be undone. */
  public boolean mayUndo() {
    return !work.busy() && !history.past().isEmpty();
  }

  /** Whether a change of the quiz can be done again. */
  public boolean mayRedo() {
    return !work.busy() && !history.future().isEmpty();
  }

  /** Takes the last change of the quiz back. */
  public void undo() {
    DeskDraft now = state.draft();
    if (now != null && mayUndo()) {
      DeskDraft before = history.before();
      history = history.undone(now);
      state(state.with(before));
    }
  }

  /** Does again what was undone last. */
  public void redo() {
    DeskDraft now = state.draft();
    if (now != null && mayRedo()) {
      DeskDraft after = history.after();
      history = history.redone(now);
      state(state.with(after));
    }
  }

  private void change(Function<DeskDraft, DeskDraft> how) {
    DeskDraft draft = state.draft();
    if (draft != null) {
      keep(how.apply(draft));
    }
  }

  /** Puts a call of the bank into the quiz. */
  public void add(ServiceCall call) {
    change(d -> d.with(call));
  }

  /** Takes a call out of the quiz. */
  public void remove(ServiceCall call) {
    change(d -> d.without(call));
  }

  /** Puts a call to begin with into the quiz; its name. */
  public void create(Wording words) {
    change(
        d -> {
          String name = d.freeName(PlainName.of(words.text("desk.new-title")));
          return d.with(CallDraft.fresh(name, words));
        });
  }

  /** Takes over what stands in the form of a call, or says what is wrong in it. */
  public void change(ServiceCall old, CallDraft typed, Wording words) {
    if (!typed.trouble(words).isEmpty()) {
      work.say(typed::trouble);
      return;
    }
    work.told(w -> w.text("desk.call-kept"));
    ServiceCall made = typed.made(old, name(old, typed, words), words);
    change(d -> d.replaced(old, made));
    listeners.tell();
  }

  /** What files call a call: a new one gets its name with its first title, and keeps it. */
  public String name(ServiceCall old, CallDraft typed, Wording words) {
    DeskDraft draft = state.draft();
    String fresh = words.text("desk.new-title");
    String title = typed.english().title().strip();
    boolean first = old.title().texts().containsValue(fresh) && !title.equals(fresh);
    return first && draft != null ? draft.freeName(PlainName.of(title)) : old.name();
  }

  /** Draws the calls by seed as the rows ask for. */
  public void draw() {
    DeskDraft draft = state.draft();
    Quiz bank = state.bank();
    if (draft == null || bank == null || work.busy()) {
      return;
    }
    Optional<Assembly> lacking = Assembly.lacking(bank, draft.rows());
    if (draft.rows().isEmpty()) {
      work.say(words -> words.text("desk.no-rows"));
    } else if (lacking.isPresent()) {
      Assembly row = lacking.get();
      int there = Assembly.fitting(bank, row.row()).size();
      work.say(
          words ->
              words.text(
                  "desk.lacking",
                  words.sentences().name(row.row().objective()),
                  words.sentences().name(row.row().level()),
                  there));
    } else {
      Quiz drawn = Assembly.drawn(bank, draft.name(), draft.title(), draft.rows(), draft.seed());
      work.told(words -> words.text("desk.drawn", drawn.calls().size()));
      keep(draft.withCalls(drawn.calls()));
      listeners.tell();
    }
  }

  /** Tries every call: whether it can be solved, and how hard it is. */
  public void tryCalls() {
    DeskDraft tried = state.draft();
    made(
        quiz ->
            watch -> {
              Grader grader = grader(quiz);
              Appearances appearances = new Appearances();
              List<CallCheck> checks = new ArrayList<>();
              OneByOne.goOn(watch, 0, quiz.calls().size());
              for (ServiceCall call : quiz.calls()) {
                checks.add(CallCheck.of(grader, call, appearances));
                OneByOne.goOn(watch, checks.size(), quiz.calls().size());
              }
              return () -> {
                state = state.tried(tried, checks);
                long odd = checks.stream().filter(c -> !c.sound()).count();
                work.told(words -> words.text("desk.tried", checks.size(), odd));
              };
            });
  }

  private Grader grader(Quiz quiz) {
    return new Grader(quiz, QuizText.hash(quiz), Engine.text(), outlooks);
  }

  /** Writes a file about the quiz. */
  public void write(DeskOutput output, Path file, PaperSize size, int number, Wording words) {
    DeskPages pages = new DeskPages(size, words, number, "", clock.get());
    made(quiz -> writing(file, () -> pages.quiz(output, grader(quiz))));
  }

  private OneByOne.Work writing(Path file, Supplier<byte[]> bytes) {
    return watch -> {
      AtomicFile.check(file);
      byte[] made = bytes.get();
      OneByOne.goOn(watch, 0, 1);
      AtomicFile.write(file, made);
      return () -> written(file);
    };
  }

  // -------------------------------------------------------------- the class

  /** Reads and marks an answer sheet, or those of a folder. */
  public void collect(Path place) {
    made(
        quiz ->
            watch -> {
              SheetFolder read = SheetFolder.read(List.of(place), quiz);
              Grader grader = grader(quiz);
              List<SheetMarks> marks = new ArrayList<>();
              OneByOne.goOn(watch, 0, read.sheets().size());
              for (AnswerSheet sheet : read.sheets()) {
                marks.add(grader.grade(sheet));
                OneByOne.goOn(watch, marks.size(), read.sheets().size());
              }
              ClassReport report = ClassReport.of(quiz, marks);
              return () -> {
                state = state.marked(new DeskClass(grader, report, read.refused(), null));
                work.told(words -> words.text("desk.marked", marks.size(), read.refused().size()));
              };
            });
  }

  /** Says what is other than in marks that were kept. */
  public void compare(Path file) {
    DeskClass marked = state.marked();
    if (marked != null) {
      work.begin(
          watch -> {
            Map<String, Map<String, Double>> before = MarksJson.totals(file);
            DeskClass compared = marked.compared(before);
            return () -> state = state.marked(compared);
          });
    }
  }

  /** Writes a file about the class. */
  public void write(DeskOutput output, Path file, PaperSize size, String home, Wording words) {
    DeskClass marked = state.marked();
    if (marked == null) {
      return;
    }
    if (output == DeskOutput.XAPI && DeskPages.address(home).isEmpty()) {
      work.say(w -> w.text("desk.bad-home", home));
      return;
    }
    DeskPages pages = new DeskPages(size, words, 0, home, clock.get());
    work.begin(writing(file, () -> pages.ofClass(output, marked.grader(), marked.report())));
  }

  /** Writes all marks of one learner. */
  public void record(SheetMarks marks, Path file, PaperSize size, Wording words) {
    DeskClass marked = state.marked();
    if (marked != null) {
      DeskPages pages = new DeskPages(size, words, 0, "", clock.get());
      work.begin(writing(file, () -> pages.record(marked.report(), marks)));
    }
  }

  /** Plays a call of a learner again, to be looked at move by move. */
  public void playAgain(SheetMarks sheet, CallMarks call) {
    DeskClass marked = state.marked();
    if (marked != null) {
      replays.ask(new DeskReplay.Question(marked.grader(), sheet, call));
    }
  }

  /** Whether a call is being played again. */
  public boolean playing() {
    return replays.busy();
  }

  /** A call as it was played again; empty before that is done. */
  public Optional<DeskReplay> replay(CallMarks call) {
    return Optional.ofNullable(replays.answer()).filter(r -> r.of().equals(call));
  }

  // --------------------------------------------------------------- the work

  /** Gives up what is being done. */
  public void giveUp() {
    work.giveUp();
  }

  /** Whether something is being done. */
  public boolean busy() {
    return work.busy();
  }

  /** How far it is, in words. */
  public String progress(Wording words) {
    return work.progress(words);
  }

  /** What there is to say of the last work or wish; empty where nothing is. */
  public String said(Wording words) {
    return work.said(words);
  }
}
