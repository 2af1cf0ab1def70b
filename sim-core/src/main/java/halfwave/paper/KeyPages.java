package halfwave.paper;

import halfwave.grading.Criterion;
import halfwave.grading.ExpertPath;
import halfwave.grading.MarkedMove;
import halfwave.grading.Places;
import halfwave.message.Message;
import halfwave.quiz.Moves;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import java.util.List;
import java.util.stream.Collectors;

/** What whoever marks on paper has to know. */
final class KeyPages {

  private final PageFlow flow;
  private final PaperWords words;
  private final QuizNames names;

  KeyPages(PageFlow flow, PaperWords words) {
    this.flow = flow;
    this.words = words;
    names = new QuizNames(words);
  }

  /** Cause, place, repair, and how an expert gets there. */
  void call(Variant variant, ExpertPath path, String number) {
    flow.together(() -> facts(variant, path, number));
    path(path, variant.call());
  }

  private void facts(Variant variant, ExpertPath path, String number) {
    ServiceCall call = variant.call();
    flow.heading(words.text("handout.step", number, call.title().in(words.reader())));
    Table facts = new Table(flow, 0.2, 0.8);
    facts.strong(words.text("key.cause"), PaperWords.capital(names.cause(variant.cause())));
    facts.row(
        words.text("key.place"),
        PaperWords.capital(names.list(List.copyOf(Places.of(variant.cause())))));
    facts.row(words.text("key.repair"), PaperWords.capital(names.list(path.cures())));
    facts.row(
        words.text("key.asks"),
        PaperWords.capital(
            words.text(
                "key.objective",
                words.sentences().name(call.objective()),
                words.sentences().name(call.level()))));
    flow.text(words.text("key.path"), PageFlow.STRONG, Pen.INK, 8, flow.left(), flow.width());
    flow.keepWithNext();
  }

  private void path(ExpertPath path, ServiceCall call) {
    Table table = new Table(flow, 0.05, 0.29, 0.24, 0.34, -0.08);
    table.head(
        words.text("quiz.number"),
        words.text("key.done"),
        words.text("quiz.found"),
        words.text("key.told"),
        words.text("quiz.minutes"));
    int number = 0;
    int minute = 0;
    for (MarkedMove move : path.moves()) {
      number++;
      row(table, number, move, move.done().minute() - minute);
      minute = move.done().minute();
    }
    table.strong(
        "",
        words.text("key.sum", call.minutes()),
        words.text(path.end().whole() ? "key.whole" : "key.not-whole"),
        "",
        Integer.toString(path.end().minutes()));
  }

  private void row(Table table, int number, MarkedMove move, int minutes) {
    var outcome = move.done().outcome();
    table.row(
        Integer.toString(number),
        words.sentences().sentence(Moves.said(move.done().move())),
        outcome == null ? "" : names.outcome(outcome),
        told(move.ruledOut()),
        Integer.toString(minutes));
  }

  /** A change of a probability stays on one line. */
  private String told(List<Message> told) {
    return told.stream()
        .map(words.sentences()::text)
        .map(t -> t.replace(" → ", "\u00a0→\u00a0").replaceAll("([<>]) ", "$1\u00a0"))
        .collect(Collectors.joining("; "));
  }

  /** What each mark counts, and what earns it. */
  void scheme(Quiz quiz) {
    flow.together(
        () -> {
          flow.heading(words.text("key.scheme"));
          Table table = new Table(flow, 0.22, -0.1, 0.68);
          table.head(
              words.text("marks.criterion"), words.text("marks.points"), words.text("key.earned"));
          for (Criterion criterion : Criterion.values()) {
            table.row(
                PaperWords.capital(words.sentences().name(criterion)),
                names.number(criterion.weight(quiz.weights()), 0),
                earned(criterion));
          }
          String gate = names.percent(Criterion.GATE_RATIO);
          flow.paragraph(words.text("key.gate", gate, names.percent(quiz.passRatio())), 6);
        });
  }

  private String earned(Criterion criterion) {
    return switch (criterion) {
      case SAFETY -> words.text("key.safety");
      case TEST_CHOICE -> words.text("key.test-choice");
      case INTERPRETATION -> words.text("key.interpretation");
      case CAUSE -> words.text("key.cause-mark");
      case REPAIR -> words.text("key.repair-mark");
      case WASTE -> words.text("key.waste");
    };
  }
}
