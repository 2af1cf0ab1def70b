package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.gui.presentation.Wording;
import halfwave.work.Aspect;
import java.util.ArrayList;
import java.util.List;

/**
 * Every number of the bench as a control, in groups, and what is wrong with it now.
 *
 * @param groups the controls
 * @param wrong what is not as it should be, in words; empty where all is well
 * @param summary the same in one line
 */
public record ConditionView(List<Group> groups, List<String> wrong, String summary) {

  /**
   * Controls that belong together.
   *
   * @param name what they are of
   * @param knobs the controls
   */
  public record Group(String name, List<Knob> knobs) {}

  /** The rod's temperature follows from the flame while time runs: it is no control. */
  private static final List<Kind> GROUPS =
      List.of(
          new Kind(
              "condition.flame",
              Parameter.GAS_PRESSURE,
              Parameter.PRIMARY_AIR,
              Parameter.BURNER_ATTACHMENT,
              Parameter.BURNER_SCALE,
              Parameter.SILICON),
          new Kind(
              "condition.rod",
              Parameter.ROD_ACROSS,
              Parameter.ROD_UP,
              Parameter.ROD_ALONG,
              Parameter.ROD_TURN,
              Parameter.ROD_TILT,
              Parameter.ROD_BEND,
              Parameter.ROD_FILM,
              Parameter.ROD_CRACKS),
          new Kind(
              "condition.wiring",
              Parameter.CONNECTOR,
              Parameter.LEAD,
              Parameter.LEAKAGE,
              Parameter.JUMPER,
              Parameter.DEPOSIT,
              Parameter.GROUND),
          new Kind(
              "condition.board",
              Parameter.SENSE_SUPPLY,
              Parameter.INPUT_OFFSET,
              Parameter.SOURCE_VOLTS,
              Parameter.SOURCE_OHMS),
          new Kind(
              "condition.design",
              Parameter.ION_STRENGTH,
              Parameter.ROD_RADIUS,
              Parameter.ORIFICE,
              Parameter.CABLE));

  private record Kind(String key, List<Parameter> parameters) {
    Kind(String key, Parameter... parameters) {
      this(key, List.of(parameters));
    }
  }

  /** The view of a state. */
  public static ConditionView of(State state, Wording words) {
    Bench bench = state.moment().bench();
    Bench as = state.paper().bench();
    List<Group> groups = new ArrayList<>();
    for (Kind kind : GROUPS) {
      groups.add(
          new Group(
              words.text(kind.key()),
              kind.parameters().stream().map(p -> Knob.of(p, bench, as, words)).toList()));
    }
    List<String> wrong =
        Aspect.amiss(bench.condition()).stream().map(aspect -> words.heading(aspect)).toList();
    String summary =
        wrong.isEmpty()
            ? words.text("condition.healthy")
            : words.text("condition.wrong", String.join(words.text("condition.and"), wrong));
    return new ConditionView(groups, wrong, summary);
  }

  /** The control of a parameter, if it has one. */
  public Knob knob(Parameter parameter) {
    return groups.stream()
        .flatMap(g -> g.knobs().stream())
        .filter(k -> k.parameter() == parameter)
        .findFirst()
        .orElseThrow();
  }
}
