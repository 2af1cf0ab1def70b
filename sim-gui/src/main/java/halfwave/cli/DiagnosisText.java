package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.diagnosis.Advice;
import halfwave.diagnosis.Belief;
import halfwave.diagnosis.CaseTable;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.CheckAdvice;
import halfwave.diagnosis.Reasons;
import halfwave.diagnosis.RepairAdvice;
import halfwave.diagnosis.Step;
import halfwave.display.Sentences;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A diagnosis as text. */
final class DiagnosisText {

  private static final int CAUSES = 8;
  private static final int CHECKS = 6;
  private static final int REPAIRS = 6;
  private static final double LEAST_PROBABILITY = 0.005;

  private final Sentences sentences;
  private final boolean all;
  private final StringBuilder text = new StringBuilder();

  /**
   * Prepares it.
   *
   * @param sentences language and units
   * @param all whether everything is shown, or only the first of each
   */
  DiagnosisText(Sentences sentences, boolean all) {
    this.sentences = sentences;
    this.all = all;
  }

  String of(Bench bench, Belief belief, Advice advice) {
    heading(MessageKey.DIAGNOSIS_TITLE, '=', Argument.text(bench.name()));
    belief.steps().forEach(this::step);
    causes(MessageKey.DIAGNOSIS_NOW, belief.now());
    if (!belief.now().equals(belief.atFirst())) {
      causes(MessageKey.DIAGNOSIS_FIRST, belief.atFirst());
    }
    Reasons.next(advice).forEach(this::wrapped);
    text.append('\n');
    checks(advice);
    repairs(advice);
    heading(MessageKey.DIAGNOSIS_CUSTOMER, '-');
    wrapped(Reasons.customer(belief, advice));
    text.append('\n');
    wrapped(Message.of(MessageKey.DIAGNOSIS_NOTE, Argument.count(CaseTable.DRAWS)));
    wrapped(Message.of(MessageKey.CAUTION_GAS_AND_POWER));
    return text.toString();
  }

  private void heading(MessageKey key, char line, Argument... arguments) {
    String heading = sentences.text(Message.of(key, arguments));
    text.append(heading).append('\n');
    text.append(String.valueOf(line).repeat(heading.length())).append('\n');
  }

  private void wrapped(Message message) {
    Wrapping.lines(sentences.sentence(message), Wrapping.WIDTH)
        .forEach(line -> text.append(line).append('\n'));
  }

  private void step(Step step) {
    wrapped(Reasons.line(step.entry()));
    for (Message reason : Reasons.of(step)) {
      text.append("  - ").append(sentences.text(reason)).append('\n');
    }
    text.append('\n');
  }

  private void causes(MessageKey title, Map<Cause, Double> causes) {
    heading(title, '-');
    causes.entrySet().stream()
        .filter(e -> all || e.getValue() >= LEAST_PROBABILITY)
        .limit(all ? causes.size() : CAUSES)
        .forEach(
            e ->
                text.append(
                        String.format(
                            Locale.ROOT,
                            "%6s  %-20s %s",
                            sentences.text(Reasons.percent(e.getValue())),
                            bar(e.getValue()),
                            sentences.text(Reasons.name(e.getKey()))))
                    .append('\n'));
    text.append('\n');
  }

  private static String bar(double probability) {
    return "#".repeat((int) Math.round(20 * probability));
  }

  private void checks(Advice advice) {
    heading(MessageKey.DIAGNOSIS_CHECKS, '-');
    TextTable table =
        new TextTable(
            words(
                MessageKey.DIAGNOSIS_HEADING_NAME,
                MessageKey.DIAGNOSIS_HEADING_CHECK,
                MessageKey.DIAGNOSIS_HEADING_BITS,
                MessageKey.DIAGNOSIS_HEADING_MINUTES,
                MessageKey.DIAGNOSIS_HEADING_MERIT,
                MessageKey.DIAGNOSIS_HEADING_WORTH),
            2);
    List<CheckAdvice> checks = advice.checks();
    checks.stream()
        .limit(all ? checks.size() : CHECKS)
        .forEach(
            c ->
                table.add(
                    List.of(
                        c.check().id(),
                        sentences.text(Reasons.name(c.check())),
                        number(c.gainBits()),
                        minutes(c.effortSeconds()),
                        number(c.meritBits()),
                        minutes(c.worthSeconds()))));
    text.append(table).append('\n');
  }

  private void repairs(Advice advice) {
    heading(MessageKey.DIAGNOSIS_REPAIRS, '-');
    TextTable table =
        new TextTable(
            words(
                MessageKey.DIAGNOSIS_HEADING_NAME,
                MessageKey.DIAGNOSIS_HEADING_REPAIR,
                MessageKey.DIAGNOSIS_HEADING_CURES,
                MessageKey.DIAGNOSIS_HEADING_MINUTES),
            2);
    List<RepairAdvice> repairs = advice.repairs();
    repairs.stream()
        .limit(all ? repairs.size() : REPAIRS)
        .forEach(
            r ->
                table.add(
                    List.of(
                        r.repair().id(),
                        sentences.name(r.repair()),
                        sentences.text(Reasons.percent(r.curesProbability())),
                        minutes(r.effortSeconds()))));
    text.append(table).append('\n');
  }

  private List<String> words(MessageKey... keys) {
    return java.util.stream.Stream.of(keys).map(k -> sentences.text(Message.of(k))).toList();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private static String minutes(double seconds) {
    return String.format(Locale.ROOT, "%.0f", seconds / 60);
  }
}
