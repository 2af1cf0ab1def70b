package halfwave.gui.presentation.desk;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.display.OutcomeText;
import halfwave.grading.CallCheck;
import halfwave.grading.CallMarks;
import halfwave.grading.ClassReport;
import halfwave.grading.ItemReport;
import halfwave.grading.MarkedMove;
import halfwave.grading.ObjectiveReport;
import halfwave.grading.SheetMarks;
import halfwave.gui.presentation.Wording;
import halfwave.quiz.Assembly;
import halfwave.quiz.Moves;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Temptation;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tables of the instructor's desk in words. */
public final class DeskTables {

  private static final String NONE = "–";

  /** As good as the best: nothing better is named [judgement]. */
  private static final double BEST_RATIO = 0.95;

  /** So many wrong turns are named. */
  private static final int TOLD_TURNS = 2;

  private final Wording words;

  /** In one language. */
  public DeskTables(Wording words) {
    this.words = words;
  }

  private List<String> heads(String... keys) {
    return Stream.of(keys).map(k -> words.text("desk.head-" + k)).toList();
  }

  private String percent(double ratio) {
    return Double.isNaN(ratio) ? NONE : words.text("desk.percent", fixed(100 * ratio, 0));
  }

  private String fixed(double number, int decimals) {
    return Double.isNaN(number) ? NONE : words.sentences().quantities().fixed(number, decimals);
  }

  private String yes(boolean truth) {
    return words.sentences().truth(truth);
  }

  private String title(ServiceCall call) {
    return call.title().in(words.locale());
  }

  /** Calls of the bank. */
  public TableView bank(BankView bank) {
    return new TableView(
        heads("call", "objective", "level", "minutes"),
        bank.calls().stream().map(this::about).toList());
  }

  private List<String> about(ServiceCall call) {
    return List.of(
        title(call),
        words.heading(call.objective()),
        words.heading(call.level()),
        Integer.toString(call.minutes()));
  }

  /** Calls of the quiz, with what they count and what came of trying them. */
  public TableView calls(DeskState state) {
    DeskDraft draft = state.draft();
    return new TableView(
        heads(
            "call",
            "objective",
            "level",
            "minutes",
            "share",
            "solvable",
            "tellable",
            "expert",
            "mean"),
        draft == null ? List.of() : rows(state, draft));
  }

  private List<List<String>> rows(DeskState state, DeskDraft draft) {
    return draft.calls().stream().map(c -> row(state, draft, c)).toList();
  }

  private List<String> row(DeskState state, DeskDraft draft, ServiceCall call) {
    List<String> row = new ArrayList<>(about(call));
    row.add(percent(draft.share(call)));
    Optional<CallCheck> check = state.check(call);
    row.add(check.map(c -> yes(c.solved())).orElse(""));
    row.add(check.map(c -> yes(c.tellable())).orElse(""));
    row.add(check.map(c -> fixed(c.expertMinutes(), 0)).orElse(""));
    row.add(check.map(c -> percent(c.difficultyRatio())).orElse(""));
    return row;
  }

  /** What a quiz is to be made of. */
  public TableView blueprint(DeskState state) {
    DeskDraft draft = state.draft();
    Quiz bank = state.bank();
    List<Assembly> rows = draft == null ? List.of() : draft.rows();
    return new TableView(
        heads("objective", "level", "count", "weight", "there"),
        rows.stream()
            .map(
                a ->
                    List.of(
                        words.heading(a.row().objective()),
                        words.heading(a.row().level()),
                        Integer.toString(a.count()),
                        fixed(a.row().weightRatio(), 1),
                        bank == null
                            ? NONE
                            : Integer.toString(Assembly.fitting(bank, a.row()).size())))
            .toList());
  }

  /** Learners, best first, with a column for each call. */
  public TableView learners(ClassReport report) {
    List<String> columns = new ArrayList<>(heads("learner", "total", "passed"));
    report.quiz().calls().forEach(c -> columns.add(title(c)));
    return new TableView(columns, report.sheets().stream().map(this::learner).toList());
  }

  private List<String> learner(SheetMarks sheet) {
    List<String> row =
        new ArrayList<>(
            List.of(sheet.sheet().learner(), percent(sheet.totalRatio()), yes(sheet.passed())));
    for (CallMarks call : sheet.calls()) {
      row.add(call.facts().done() ? percent(call.totalRatio()) : NONE);
    }
    return row;
  }

  /** How the class fared at each call. */
  public TableView items(ClassReport report) {
    return new TableView(
        heads("call", "handed-in", "mean", "discrimination", "median", "turns"),
        report.items().stream()
            .map(
                i ->
                    List.of(
                        title(i.call()),
                        Integer.toString(i.count()),
                        i.count() == 0 ? NONE : percent(i.difficultyRatio()),
                        fixed(i.discriminationRatio(), 2),
                        fixed(i.medianMinutes(), 0),
                        turns(i)))
            .toList());
  }

  private String turns(ItemReport item) {
    return item.wrongTurns().stream()
        .limit(TOLD_TURNS)
        .map(t -> words.text("desk.turn", move(item.call(), t.what()), t.count()))
        .collect(Collectors.joining("; "));
  }

  /** A move by its word in files. */
  private String move(ServiceCall call, String id) {
    return Check.named(id, call.ignition())
        .map(c -> words.sentences().text(Reasons.name(c)))
        .or(
            () ->
                Arrays.stream(Repair.values())
                    .filter(r -> r.id().equals(id))
                    .map(r -> words.sentences().name(r))
                    .findFirst())
        .or(
            () ->
                Arrays.stream(Temptation.values())
                    .filter(t -> t.id().equals(id))
                    .map(t -> words.sentences().name(t))
                    .findFirst())
        .orElse(id);
  }

  /** What was learnt, weakest first. */
  public TableView objectives(ClassReport report) {
    return new TableView(
        heads("objective", "calls", "mean", "mastered"),
        report.objectives().stream().map(this::objective).toList());
  }

  private List<String> objective(ObjectiveReport o) {
    return List.of(
        words.heading(o.objective()),
        Integer.toString(o.calls()),
        percent(o.ratio()),
        yes(o.mastered()));
  }

  /** A class in a sentence. */
  public String summary(DeskClass marked) {
    ClassReport report = marked.report();
    long passed = report.sheets().stream().filter(SheetMarks::passed).count();
    String all =
        words.text(
            "desk.summary",
            report.quiz().title().in(words.locale()),
            counted("desk.sheet-one", "desk.sheet-many", report.sheets().size()),
            counted("desk.passed-one", "desk.passed-many", passed),
            report.alphaRatio() < 0
                ? words.text("desk.alpha-below")
                : fixed(report.alphaRatio(), 2));
    long odd = report.sheets().stream().filter(DeskTables::odd).count();
    return odd == 0 ? all : words.text(odd == 1 ? "desk.odd-one" : "desk.odd-many", all, odd);
  }

  private static boolean odd(SheetMarks sheet) {
    return !sheet.remarks().isEmpty()
        || sheet.calls().stream().anyMatch(c -> c.facts().done() && !c.remarks().isEmpty());
  }

  private String counted(String one, String many, long count) {
    return words.text(count == 1 ? one : many, count);
  }

  /** Files that were refused and why, then what is other than before. */
  public List<String> told(DeskClass marked) {
    List<String> told = new ArrayList<>();
    marked.refused().forEach(e -> told.add(e.line(words.sentences())));
    List<DeskClass.Change> changes = marked.changes();
    if (changes != null && changes.isEmpty()) {
      told.add(words.text("desk.unchanged"));
    } else if (changes != null) {
      for (DeskClass.Change c : changes) {
        String call = marked.report().quiz().call(c.call()).map(this::title).orElse(c.call());
        told.add(
            words.text(
                "desk.changed",
                c.learner(),
                call,
                percent(c.beforeRatio()),
                percent(c.nowRatio())));
      }
    }
    return told;
  }

  /** What was wrong, and what was concluded. */
  public List<String> truth(CallMarks marks) {
    Cause said = marks.said();
    String truth = words.sentences().text(Reasons.name(marks.truth()));
    String concluded =
        said == null
            ? words.text("desk.said-nothing")
            : words.text("desk.said-cause", words.sentences().text(Reasons.name(said)));
    return List.of(words.text("practice.truth", truth), concluded);
  }

  /** A call move by move. */
  public TableView moves(CallMarks marks) {
    return new TableView(
        heads("minute", "move", "found", "class", "information", "better"),
        marks.moves().stream().map(this::move).toList());
  }

  private List<String> move(MarkedMove move) {
    Outcome outcome = move.done().outcome();
    return List.of(
        Integer.toString(move.done().minute()),
        Wording.capital(words.sentences().text(Moves.said(move.done().move()))),
        outcome == null ? "" : OutcomeText.of(outcome, words.sentences()),
        words.heading(move.kind()),
        percent(move.ratio()),
        better(move));
  }

  private String better(MarkedMove move) {
    Check best = move.best();
    boolean worse = !Double.isNaN(move.ratio()) && move.ratio() < BEST_RATIO;
    return best == null || !worse ? "" : words.sentences().text(Reasons.name(best));
  }

  /** One move with all that it told, in sentences. */
  public String told(MarkedMove move) {
    Outcome outcome = move.done().outcome();
    List<String> told = new ArrayList<>();
    told.add(words.sentences().sentence(Moves.said(move.done().move())));
    if (outcome != null) {
      told.add(words.text("desk.found", OutcomeText.of(outcome, words.sentences())));
    }
    told.addAll(MarksView.better(move, words));
    move.ruledOut().forEach(m -> told.add(words.sentences().sentence(m)));
    return told.stream().map(DeskTables::ended).collect(Collectors.joining(" "));
  }

  /** As a sentence among others. */
  private static String ended(String text) {
    return text.matches(".*[.!?…]") ? text : text + '.';
  }

  /** What is odd about a sheet and about one of its calls. */
  public List<String> remarks(SheetMarks sheet, CallMarks call) {
    return Stream.concat(sheet.remarks().stream(), call.remarks().stream())
        .map(words.sentences()::sentence)
        .toList();
  }
}
