package halfwave.gui.presentation.desk;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.grading.Routine;
import halfwave.grading.RoutineTrial;
import halfwave.gui.presentation.Wording;
import halfwave.quiz.Found;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tables of an order of work in words. */
public final class RoutineTables {

  private final Wording words;

  /** In one language. */
  public RoutineTables(Wording words) {
    this.words = words;
  }

  private List<String> heads(String... keys) {
    return Stream.of(keys).map(k -> words.text("routine.head-" + k)).toList();
  }

  /** The steps in their order. */
  public TableView steps(RoutineDraft draft) {
    List<List<String>> rows = new ArrayList<>();
    for (Routine.Step step : draft.steps()) {
      rows.add(
          List.of(
              Integer.toString(rows.size() + 1),
              step.check() == null ? "" : name(step.check()),
              when(step),
              step.repair() == null ? "" : words.heading(step.repair())));
    }
    return new TableView(heads("number", "check", "when", "repair"), rows);
  }

  /** A check as a list has it. */
  public String name(Check check) {
    return Wording.capital(words.sentences().text(Reasons.name(check)));
  }

  /** A finding as files have it. */
  public static String id(Enum<?> finding) {
    return Found.text(new Outcome.Found(finding));
  }

  private String when(Routine.Step step) {
    if (step.repair() == null || step.check() == null) {
      return "";
    }
    double below = RoutineDraft.below(step);
    if (below > 0) {
      String number = new DeskNumber(0, Double.MAX_VALUE, false).text(below);
      return words.text(
          RoutineDraft.readsCurrent(step) ? "routine.below-amps-text" : "routine.below-volts-text",
          number);
    }
    String found =
        step.check().outcomes().stream()
            .filter(o -> step.found().contains(id(o)))
            .map(o -> words.sentences().name(o))
            .collect(Collectors.joining("; "));
    return step.found().isEmpty() ? words.text("routine.always") : found;
  }

  /** How it fared beside an expert. */
  public TableView trials(List<RoutineTrial> trials) {
    return new TableView(
        heads("call", "whole", "minutes", "parts", "expert-minutes", "expert-parts"),
        trials.stream()
            .map(
                t ->
                    List.of(
                        t.call().title().in(words.locale()),
                        words.sentences().truth(t.whole()),
                        Integer.toString(t.minutes()),
                        Integer.toString(t.partsUnits()),
                        Integer.toString(t.expertMinutes()),
                        Integer.toString(t.expertUnits())))
            .toList());
  }
}
