package halfwave.paper;

import halfwave.grading.CallMarks;
import halfwave.grading.ClassReport;
import halfwave.grading.ItemReport;
import halfwave.grading.ObjectiveReport;
import halfwave.grading.SheetMarks;
import halfwave.quiz.ServiceCall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How a class fared. */
final class ReportPages {

  /** So many columns of percentages stand beside a name. */
  private static final int MOST_CALLS = 8;

  private static final double NAME = 0.24;
  private static final double TOTAL = 0.1;
  private static final double OUTCOME = 0.16;
  private static final double GAP = 0.001;

  private final PageFlow flow;
  private final PaperWords words;
  private final QuizNames names;

  ReportPages(PageFlow flow, PaperWords words) {
    this.flow = flow;
    this.words = words;
    names = new QuizNames(words);
  }

  /** All of it. */
  void put(ClassReport report) {
    long passed = report.sheets().stream().filter(SheetMarks::passed).count();
    double mean =
        report.sheets().stream().mapToDouble(SheetMarks::totalRatio).average().orElse(Double.NaN);
    Table facts = new Table(flow, 0.35, 0.65);
    facts.row(words.text("class.sheets"), Integer.toString(report.sheets().size()));
    facts.row(
        words.text("class.passed"),
        words.text("class.line", passed, names.percent(report.quiz().passRatio())));
    facts.row(words.text("class.mean"), names.percent(mean));
    facts.row(words.text("class.alpha"), names.number(report.alphaRatio(), 2));
    objectives(report);
    items(report.items());
    turns(report.items());
    learners(report);
  }

  private void objectives(ClassReport report) {
    flow.heading(words.text("class.objectives"));
    Table table = new Table(flow, 0.5, -0.15, -0.15, 0.2);
    table.head(
        words.text("class.objective"),
        words.text("class.calls"),
        words.text("class.mark"),
        words.text("class.reached"));
    for (ObjectiveReport objective : report.objectives()) {
      table.row(
          PaperWords.capital(words.sentences().name(objective.objective())),
          Integer.toString(objective.calls()),
          names.percent(objective.ratio()),
          words.text(objective.mastered() ? "class.yes" : "class.no"));
    }
  }

  private String title(int index, ServiceCall call) {
    return words.text("handout.step", index + 1, call.title().in(words.reader()));
  }

  private void items(List<ItemReport> items) {
    flow.heading(words.text("class.items"));
    Table table = new Table(flow, 0.44, -0.12, -0.14, -0.16, -0.14);
    table.head(
        words.text("marks.call"),
        words.text("class.handed"),
        words.text("class.difficulty"),
        words.text("class.discrimination"),
        words.text("class.median"));
    for (int k = 0; k < items.size(); k++) {
      ItemReport item = items.get(k);
      table.row(
          title(k, item.call()),
          Integer.toString(item.count()),
          names.number(item.difficultyRatio(), 2),
          names.number(item.discriminationRatio(), 2),
          names.number(item.medianMinutes(), 0));
    }
    flow.text(
        words.text("class.items-about"), PageFlow.NOTE, Pen.SOFT_INK, 4, flow.left(), flow.width());
  }

  private void turns(List<ItemReport> items) {
    flow.heading(words.text("class.turns"));
    Table table = new Table(flow, 0.28, 0.44, 0.28);
    table.head(
        words.text("marks.call"), words.text("class.wrong-moves"), words.text("class.wrong-cause"));
    for (int k = 0; k < items.size(); k++) {
      ItemReport item = items.get(k);
      table.row(
          title(k, item.call()),
          told(item.wrongTurns(), id -> names.move(item.call(), id)),
          told(item.wrongCauses(), names::cause));
    }
  }

  private String told(List<ItemReport.Turn> turns, Function<String, String> name) {
    return turns.isEmpty()
        ? "–"
        : turns.stream()
            .map(t -> words.text("class.times", name.apply(t.what()), t.count()))
            .collect(Collectors.joining("; "));
  }

  /** Names once more with each block of calls: so many columns have no room side by side. */
  private void learners(ClassReport report) {
    flow.heading(words.text("class.learners"));
    int calls = report.items().size();
    for (int from = 0; from < calls; from += MOST_CALLS) {
      learners(report.sheets(), from, Math.min(calls, from + MOST_CALLS));
    }
  }

  private void learners(List<SheetMarks> sheets, int from, int to) {
    double room = (1 - NAME - TOTAL - OUTCOME) / MOST_CALLS;
    double[] shares = new double[to - from + 4];
    Arrays.fill(shares, -room);
    shares[0] = NAME;
    shares[1] = -TOTAL;
    shares[2] = OUTCOME;
    // the last column has no gap beside it: an empty one keeps the others as wide as each other
    shares[shares.length - 1] = GAP;
    List<String> head = new ArrayList<>();
    head.add(words.text("class.learner"));
    head.add(words.text("marks.total"));
    head.add(words.text("class.outcome"));
    for (int k = from; k < to; k++) {
      head.add(Integer.toString(k + 1));
    }
    head.add("");
    flow.gap(4);
    Table table = new Table(flow, shares);
    table.head(head.toArray(new String[0]));
    for (SheetMarks sheet : sheets) {
      List<String> row = new ArrayList<>();
      row.add(QuizNames.oneLine(sheet.sheet().learner()));
      row.add(names.percent(sheet.totalRatio()));
      row.add(words.text(sheet.passed() ? "marks.passed" : "marks.not-passed"));
      for (CallMarks call : sheet.calls().subList(from, to)) {
        row.add(call.facts().done() ? names.number(100 * call.totalRatio(), 0) : "–");
      }
      row.add("");
      table.row(row.toArray(new String[0]));
    }
  }
}
