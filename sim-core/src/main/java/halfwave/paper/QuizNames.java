package halfwave.paper;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.fault.FaultKind;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Temptation;
import halfwave.work.Repair;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the files' words for moves, causes and marks are called on paper. */
final class QuizNames {

  private static final String NONE = "–";

  private final PaperWords words;
  private final Sentences sentences;

  QuizNames(PaperWords words) {
    this.words = words;
    sentences = words.sentences();
  }

  /** A move by its word in files. */
  String move(ServiceCall call, String id) {
    return Check.named(id, call.ignition())
        .map(c -> sentences.text(Reasons.name(c)))
        .or(() -> named(Repair.values(), Repair::id, id))
        .or(() -> named(Temptation.values(), Temptation::id, id))
        .orElse(id);
  }

  private <E extends Enum<E>> Optional<String> named(
      E[] all, java.util.function.Function<E, String> word, String id) {
    return Arrays.stream(all)
        .filter(e -> word.apply(e).equals(id))
        .map(sentences::name)
        .findFirst();
  }

  /** A cause by its word in files. */
  String cause(String id) {
    List<FaultKind> kinds =
        Arrays.stream(id.split("\\+", -1)).flatMap(w -> FaultKind.named(w).stream()).toList();
    return cause(new Cause(kinds));
  }

  String cause(Cause cause) {
    return sentences.text(Reasons.name(cause));
  }

  /** What came of a check, as the meter's last figure has it. */
  String outcome(Outcome outcome) {
    if (outcome instanceof Outcome.Amps amps) {
      boolean both = !Double.isNaN(amps.meanAmps()) && !Double.isNaN(amps.alternatingRmsAmps());
      return both
          ? sentences.text(
              Message.of(
                  MessageKey.OUTCOME_BOTH,
                  fixed(amps.meanAmps(), DisplayUnit.MICROAMP, 2),
                  fixed(amps.alternatingRmsAmps(), DisplayUnit.MICROAMP, 2)))
          : sentences.sentence(Reasons.said(outcome));
    } else if (outcome instanceof Outcome.Volts volts
        && !Double.isNaN(volts.alternatingRmsVolts())) {
      return sentences.text(
          Message.of(
              MessageKey.OUTCOME_ALTERNATING,
              fixed(volts.alternatingRmsVolts(), DisplayUnit.VOLT, 1)));
    }
    return sentences.sentence(Reasons.said(outcome));
  }

  private Argument fixed(double si, DisplayUnit unit, int decimals) {
    return Argument.text(sentences.quantities().fixed(si, unit, decimals));
  }

  /** Names in a row; a dash where there are none. */
  String list(List<? extends Enum<?>> constants) {
    return constants.isEmpty()
        ? NONE
        : constants.stream().map(sentences::name).collect(Collectors.joining("; "));
  }

  /** A share as a whole percentage; a dash where it is no number. */
  String percent(double ratio) {
    return Double.isNaN(ratio)
        ? NONE
        : words.text("quiz.percent", sentences.quantities().fixed(100 * ratio, 0));
  }

  /** A number; a dash where it is none. */
  String number(double number, int decimals) {
    return Double.isNaN(number) ? NONE : sentences.quantities().fixed(number, decimals);
  }

  /** A name that somebody typed, on one line. */
  static String oneLine(String typed) {
    return typed.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
  }
}
