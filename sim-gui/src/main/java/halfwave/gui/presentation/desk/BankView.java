package halfwave.gui.presentation.desk;

import halfwave.diagnosis.Reasons;
import halfwave.gui.presentation.HelpPage;
import halfwave.gui.presentation.Wording;
import halfwave.quiz.Hidden;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The calls of a bank that have what an instructor looks for.
 *
 * @param calls these, in the order of the bank
 */
public record BankView(List<ServiceCall> calls) {

  /** Takes a copy. */
  public BankView {
    calls = List.copyOf(calls);
  }

  /** Those with all words that were typed, be it in what is seen of them or in what is wrong. */
  public static BankView of(Quiz bank, String typed, Wording words) {
    return new BankView(
        bank.calls().stream().filter(c -> HelpPage.holds(all(c, words), typed)).toList());
  }

  private static String all(ServiceCall call, Wording words) {
    return String.join(
        " ",
        call.title().in(words.locale()),
        told(call, words),
        words.heading(call.objective()),
        words.heading(call.level()));
  }

  /** What the customer says, and what may be wrong. */
  public static String told(ServiceCall call, Wording words) {
    Stream<String> causes =
        call.hidden().stream()
            .map(Hidden::cause)
            .distinct()
            .map(cause -> words.sentences().text(Reasons.name(cause)));
    return words.text(
        "desk.bank-told",
        call.complaint().in(words.locale()),
        causes.collect(Collectors.joining("; ")));
  }
}
