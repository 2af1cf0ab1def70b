package halfwave.paper;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Parameter;
import halfwave.message.Argument;
import halfwave.work.Aspect;
import java.util.Arrays;
import java.util.List;

/**
 * What is not as it should be, by name, and every number that differs from that of a sound bench.
 */
final class ConditionRows {

  private final PageFlow flow;
  private final PaperWords words;
  private final Bench bench;
  private final Bench healthy;

  ConditionRows(PageFlow flow, PaperWords words, Bench bench) {
    this.flow = flow;
    this.words = words;
    this.bench = bench;
    healthy = bench.with(Condition.HEALTHY);
  }

  void put() {
    flow.heading(words.text("condition.title"));
    List<String> wrong =
        Aspect.amiss(bench.condition()).stream().map(words.sentences()::name).toList();
    List<Parameter> changed =
        Arrays.stream(Parameter.values())
            // it follows from the flame while time runs
            .filter(p -> p != Parameter.ROD_TEMPERATURE)
            .filter(p -> p.of(bench) != p.of(healthy))
            .toList();
    if (wrong.isEmpty() && changed.isEmpty()) {
      flow.paragraph(words.text("condition.healthy"), 4);
      return;
    }
    if (!wrong.isEmpty()) {
      String names = String.join(words.text("condition.and"), wrong);
      flow.paragraph(words.text("condition.wrong", names), 4);
    }
    if (!changed.isEmpty()) {
      flow.together(() -> numbers(changed));
    }
  }

  private void numbers(List<Parameter> changed) {
    Table table = new Table(flow, 0.6, -0.2, -0.2);
    table.head(
        words.text("condition.number"), words.text("condition.now"), words.text("condition.sound"));
    changed.forEach(
        p ->
            table.row(
                PaperWords.capital(words.sentences().name(p)), text(p, bench), text(p, healthy)));
  }

  private String text(Parameter parameter, Bench of) {
    return words.sentences().text(Argument.quantity(parameter.of(of), parameter.dimension()));
  }
}
