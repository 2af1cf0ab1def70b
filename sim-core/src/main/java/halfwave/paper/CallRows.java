package halfwave.paper;

import halfwave.bench.Bench;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Reasons;
import halfwave.display.Sentences;
import halfwave.picture.Typeface;
import halfwave.quiz.Rules;
import halfwave.quiz.ServiceCall;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;

/** What a learner is told of a service call, and room for what he finds out. */
final class CallRows {

  private static final Font SMALL = Typeface.PLAIN.font(8);
  private static final double GAP = 14;
  private static final double INDENT = 17;
  private static final int TESTS = 9;

  private final PageFlow flow;
  private final PaperWords words;
  private final Blanks blanks;

  CallRows(PageFlow flow, PaperWords words) {
    this.flow = flow;
    this.words = words;
    blanks = new Blanks(flow, words);
  }

  /** Title, name to be written, complaint, furnace and limits, and a list of all checks. */
  void told(ServiceCall call, String kind, Rules rules) {
    flow.text(kind, PageFlow.NOTE, Pen.SOFT_INK, 0, flow.left(), flow.width());
    String title = call.title().in(words.reader());
    flow.text(title, PageFlow.TITLE, Pen.INK, 0, flow.left(), flow.width());
    blanks.who(words.text("quiz.learner"));
    flow.gap(6);
    Sentences s = words.sentences();
    Table table = new Table(flow, 0.2, 0.8);
    table.row(words.text("quiz.customer"), call.complaint().in(words.reader()));
    Bench bench = call.bench();
    table.row(words.text("quiz.furnace"), s.bench(bench.name()).orElse(bench.name()));
    String board = call.settings().name();
    table.row(words.text("report.board"), s.board(board).orElse(board));
    table.row(words.text("quiz.limits"), limits(call, rules));
    flow.heading(words.text("quiz.tests"));
    flow.gap(3);
    checks(call.checks());
  }

  private String limits(ServiceCall call, Rules rules) {
    String own = words.text("quiz.budget", call.minutes(), call.partsUnits());
    return rules.wallMinutes() > 0
        ? own + " " + words.text("quiz.clock", Math.round(rules.wallMinutes()))
        : own;
  }

  /** The name of a check, as something to do. */
  static String name(Check check, PaperWords words) {
    return words.sentences().sentence(Reasons.name(check));
  }

  /** In two columns of about the same height, numbered down the first and then the second. */
  private void checks(List<Check> checks) {
    double column = (flow.width() - GAP) / 2;
    List<List<String>> told = new ArrayList<>();
    for (Check check : checks) {
      String text = words.text("quiz.test", name(check, words), check.minutes());
      told.add(Lines.of(text, SMALL, column - INDENT));
    }
    int half = half(told);
    int most = Math.max(lines(told.subList(0, half)), lines(told.subList(half, told.size())));
    flow.add(
        new Item(
            0,
            most * PageFlow.line(SMALL),
            false,
            (pen, top) -> {
              numbered(pen, told, 0, half, flow.left(), top);
              numbered(pen, told, half, told.size(), flow.left() + column + GAP, top);
            }));
  }

  private static int lines(List<List<String>> told) {
    return told.stream().mapToInt(List::size).sum();
  }

  private static int half(List<List<String>> told) {
    int half = 0;
    while (2 * lines(told.subList(0, half)) < lines(told)) {
      half++;
    }
    return half;
  }

  private static void numbered(
      Pen pen, List<List<String>> told, int from, int to, double x, double top) {
    double base = PageFlow.base(SMALL, top);
    for (int k = from; k < to; k++) {
      pen.textTo(Integer.toString(k + 1), SMALL, Pen.SOFT_INK, x + INDENT - 5, base);
      for (String line : told.get(k)) {
        pen.text(line, SMALL, Pen.INK, x + INDENT, base);
        base += PageFlow.line(SMALL);
      }
    }
  }

  /** Room for the five steps of the work. */
  void steps() {
    blanks.lines(2, words.text("quiz.describe"));
    blanks.lines(3, words.text("quiz.causes"));
    flow.together(this::tests);
    blanks.lines(
        3, words.text("quiz.cause-step"), words.text("quiz.place-step"), words.text("quiz.mend"));
    blanks.lines(2, words.text("quiz.proof"));
  }

  private void tests() {
    flow.text(
        words.text("quiz.testing"), PageFlow.NOTE_STRONG, Pen.INK, 9, flow.left(), flow.width());
    blanks.boxes(
        TESTS,
        new double[] {0.07, 0.4, 0.43, 0.1},
        words.text("quiz.number"),
        words.text("quiz.found"),
        words.text("quiz.meaning"),
        words.text("quiz.minutes"));
  }
}
