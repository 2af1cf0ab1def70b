package halfwave.gui.presentation.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.quiz.Help;
import halfwave.quiz.Progress;
import halfwave.quiz.ServiceCall;
import java.util.List;

/**
 * The calls to practise, and what was practised, as the window shows them.
 *
 * @param calls the calls to choose from
 * @param progress what was practised, objective by objective
 * @param free whether one may be begun now
 */
public record ProgressView(List<Row> calls, List<String> progress, boolean free) {

  /**
   * A call to choose.
   *
   * @param call which
   * @param title its title
   * @param about what it asks for, and the help there would be
   */
  public record Row(ServiceCall call, String title, String about) {}

  /** Takes copies. */
  public ProgressView {
    calls = List.copyOf(calls);
    progress = List.copyOf(progress);
  }

  /** The view. */
  public static ProgressView of(PracticeModel model, Wording words) {
    Progress progress = model.progress();
    List<String> lines =
        progress.practised().entrySet().stream()
            .map(e -> practised(words.heading(e.getKey()), e.getValue(), words))
            .toList();
    return new ProgressView(
        model.calls().stream().map(c -> row(model, c, words)).toList(),
        lines.isEmpty() ? List.of(words.text("practice.no-progress")) : lines,
        !model.busy());
  }

  private static String practised(String objective, Progress.Practised done, Wording words) {
    if (done.help() == Help.WORKED) {
      // what the coach did says nothing about the learner
      return words.text("practice.shown-before", objective, done.calls());
    }
    double last = done.marks().get(done.marks().size() - 1);
    return words.text(
        "practice.done-before",
        objective,
        done.calls(),
        Math.round(100 * last),
        words.sentences().name(done.help()));
  }

  private static Row row(PracticeModel model, ServiceCall call, Wording words) {
    return new Row(
        call,
        call.title().in(words.locale()),
        words.text(
            "practice.call-help",
            words.heading(call.objective()),
            words.sentences().name(call.level()),
            words.sentences().name(model.help(call))));
  }
}
