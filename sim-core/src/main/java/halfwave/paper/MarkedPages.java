package halfwave.paper;

import halfwave.diagnosis.Check;
import halfwave.grading.CallMarks;
import halfwave.grading.Mark;
import halfwave.grading.MarkedMove;
import halfwave.grading.SheetMarks;
import halfwave.message.Message;
import halfwave.quiz.Moves;
import java.util.List;
import java.util.stream.Collectors;

/** What became of one answer sheet. */
final class MarkedPages {

  /** As good as the best: nothing better is named [judgement]. */
  private static final double BEST_RATIO = 0.95;

  private final PageFlow flow;
  private final PaperWords words;
  private final QuizNames names;

  MarkedPages(PageFlow flow, PaperWords words) {
    this.flow = flow;
    this.words = words;
    names = new QuizNames(words);
  }

  /** The result in a table: what there was to get of each call, and what was got. */
  void result(SheetMarks marks) {
    flow.gap(4);
    Table table = new Table(flow, 0.52, -0.12, -0.12, -0.12, -0.12);
    table.head(
        words.text("marks.call"),
        words.text("marks.total"),
        words.text("marks.process"),
        words.text("marks.result"),
        words.text("quiz.minutes"));
    for (CallMarks call : marks.calls()) {
      table.row(
          call.call().title().in(words.reader()),
          names.percent(call.totalRatio()),
          names.percent(call.ratio(true)),
          names.percent(call.ratio(false)),
          Integer.toString(call.facts().minutes()));
    }
    String result = words.text(marks.passed() ? "marks.passed" : "marks.not-passed");
    table.strong(words.text("marks.whole", result), names.percent(marks.totalRatio()), "", "", "");
    remarks(marks.remarks());
  }

  private void remarks(List<Message> remarks) {
    for (Message remark : remarks) {
      String typed = QuizNames.oneLine(words.sentences().sentence(remark));
      flow.bullet("!", typed, PageFlow.BODY, 3, 11);
    }
  }

  /** All of a call: what was wrong and what was said, each mark and each move. */
  void call(CallMarks call, String number) {
    flow.heading(words.text("handout.step", number, call.call().title().in(words.reader())));
    CallMarks.Facts facts = call.facts();
    if (!facts.done()) {
      remarks(call.remarks());
      return;
    }
    Table table = new Table(flow, 0.2, 0.8);
    var said = call.said();
    table.row(
        words.text("marks.said"),
        said == null ? words.text("marks.nothing") : PaperWords.capital(names.cause(said)));
    table.row(words.text("marks.truth"), PaperWords.capital(names.cause(call.truth())));
    table.row(
        words.text("marks.used"),
        words.text(
            "marks.spent",
            facts.minutes(),
            facts.partsUnits(),
            facts.needlessParts(),
            facts.needlessUnits()));
    remarks(call.remarks());
    marks(call);
    moves(call.moves());
  }

  private void marks(CallMarks call) {
    flow.text(words.text("marks.title"), PageFlow.STRONG, Pen.INK, 8, flow.left(), flow.width());
    flow.keepWithNext();
    Table table = new Table(flow, 0.2, -0.16, 0.64);
    table.head(
        words.text("marks.criterion"), words.text("marks.points"), words.text("marks.reasons"));
    double got = 0;
    double all = 0;
    for (Mark mark : call.marks()) {
      got += mark.ratio() * mark.points();
      all += mark.points();
      String reasons =
          mark.reasons().stream().map(words.sentences()::sentence).collect(Collectors.joining(" "));
      table.row(
          PaperWords.capital(words.sentences().name(mark.criterion())),
          points(mark.ratio() * mark.points(), mark.points()),
          reasons);
    }
    double counted = call.totalRatio() * all;
    // the gate takes off what no criterion does
    String why = counted < got - 1e-9 ? words.text("marks.gated", points(got, all)) : "";
    table.strong(words.text("marks.sum"), points(counted, all), why);
  }

  private String points(double got, double all) {
    return words.text("marks.of", names.number(got, 1), names.number(all, 0));
  }

  private void moves(List<MarkedMove> moves) {
    if (moves.isEmpty()) {
      return;
    }
    flow.text(words.text("marks.moves"), PageFlow.STRONG, Pen.INK, 8, flow.left(), flow.width());
    flow.keepWithNext();
    Table table = new Table(flow, -0.07, 0.33, 0.22, 0.17, 0.21);
    table.head(
        words.text("quiz.minutes"),
        words.text("marks.move"),
        words.text("quiz.found"),
        words.text("marks.class"),
        words.text("marks.better"));
    for (MarkedMove move : moves) {
      var outcome = move.done().outcome();
      table.row(
          Integer.toString(move.done().minute()),
          QuizNames.oneLine(words.sentences().sentence(Moves.said(move.done().move()))),
          outcome == null ? "" : names.outcome(outcome),
          PaperWords.capital(words.sentences().name(move.kind())),
          better(move));
    }
  }

  private String better(MarkedMove move) {
    Check best = move.best();
    boolean marked = !Double.isNaN(move.ratio());
    return marked && move.ratio() < BEST_RATIO && best != null ? CallRows.name(best, words) : "";
  }
}
