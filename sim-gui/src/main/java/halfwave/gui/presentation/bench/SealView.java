package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.board.Stage;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Wording;
import halfwave.work.Aspect;
import halfwave.work.Look;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A bench that a class has to diagnose, as the class sees it.
 *
 * @param heading what it is about now
 * @param text what there is to do, or what it was
 * @param spent minutes, looks and measurements so far; empty where nothing is hidden
 * @param verdict what to say of the class's answer; empty where there was none
 * @param outcome whether the bench was put right; empty while it is hidden
 * @param path what was done, in order; empty while it is hidden
 * @param at which line of the path is looked at; its size: the end
 */
public record SealView(
    String heading,
    String text,
    String spent,
    String verdict,
    String outcome,
    List<String> path,
    int at) {

  /** The view of a state. */
  public static SealView of(State state, Wording words) {
    Seal seal = state.seal();
    if (seal == null) {
      return plain(words.text("seal.title"), words.text("seal.offer"));
    }
    Seal.Opening opening = seal.opening();
    if (opening == null) {
      return new SealView(
          words.text("seal.closed"),
          words.text(seal.drawn() == null ? "seal.as-it-stands" : "seal.drawn"),
          spent(state, words),
          "",
          "",
          List.of(),
          0);
    }
    return new SealView(
        words.text("seal.open"),
        wrong(seal, opening.hidden(), words),
        "",
        verdict(seal, opening, words),
        outcome(opening, words),
        path(opening, words),
        opening.at());
  }

  private static SealView plain(String heading, String text) {
    return new SealView(heading, text, "", "", "", List.of(), 0);
  }

  private static String spent(State state, Wording words) {
    long looks = state.standing().work().stream().filter(w -> w.work() instanceof Look).count();
    int acts = state.history().done().size();
    return words.text("seal.spent", WorkCard.minutesSpent(state), looks, acts);
  }

  private static String wrong(Seal seal, Bench hidden, Wording words) {
    Fault drawn = seal.drawn();
    if (drawn != null) {
      FaultCard card = FaultCard.of(drawn.kind(), words);
      String severity = card.scale() == null ? "" : card.severity(drawn.severity(), words);
      String name = severity.isEmpty() ? card.name() : card.name() + " (" + severity + ')';
      return words.text("seal.it-was", name, card.repairs());
    }
    Set<Aspect> wrong = Aspect.amiss(hidden.condition());
    return wrong.isEmpty()
        ? words.text("seal.nothing-wrong")
        : words.text("seal.wrong", names(wrong, words));
  }

  private static String names(Set<Aspect> aspects, Wording words) {
    return String.join(
        words.text("condition.and"), aspects.stream().map(a -> words.heading(a)).toList());
  }

  /** Who names another kind that is wrong in the same place has found the part, not the fault. */
  private static String verdict(Seal seal, Seal.Opening opening, Wording words) {
    FaultKind answer = opening.answer();
    if (answer == null) {
      return "";
    }
    String name = words.heading(answer);
    Fault drawn = seal.drawn();
    if (drawn != null && drawn.kind() == answer) {
      return words.text("seal.right", name);
    }
    Set<Aspect> same = Aspect.amiss(Fault.typical(answer).on(seal.known()).condition());
    same.retainAll(Aspect.amiss(opening.hidden().condition()));
    String key = same.isEmpty() ? "seal.not-right" : drawn == null ? "seal.right" : "seal.near";
    return words.text(key, name);
  }

  private static String outcome(Seal.Opening opening, Wording words) {
    List<PathStep> path = opening.path();
    Bench end =
        path.isEmpty() ? opening.hidden() : path.get(path.size() - 1).outcome().moment().bench();
    Set<Aspect> left = Aspect.amiss(end.condition());
    return left.isEmpty()
        ? words.text("seal.put-right")
        : words.text("seal.still-wrong", names(left, words));
  }

  private static List<String> path(Seal.Opening opening, Wording words) {
    QuantityText numbers = words.sentences().quantities();
    List<String> lines = new ArrayList<>();
    for (PathStep step : opening.path()) {
      double amps = step.outcome().moment().filter().meanAmps();
      Stage stage = step.outcome().moment().board().stage();
      lines.add(
          words.text(
              "seal.step",
              numbers.time(step.timeMillis() / 100 * 100),
              ended(done(step, words)),
              numbers.fixed(amps, DisplayUnit.MICROAMP, 1),
              words.sentences().name(stage)));
    }
    return lines;
  }

  private static String ended(String text) {
    return text.isEmpty() || text.endsWith(".") ? text : text + ".";
  }

  private static String done(PathStep step, Wording words) {
    WorkDone work = step.work();
    if (work == null) {
      return step.said() == null ? "" : words.sentences().sentence(step.said());
    }
    return work.said(words);
  }
}
