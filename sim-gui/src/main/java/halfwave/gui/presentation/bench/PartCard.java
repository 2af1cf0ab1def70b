package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.bench.RodPosition;
import halfwave.gui.presentation.Wording;
import halfwave.picture.scene.DrawnPart;
import halfwave.sequence.Deed;
import halfwave.work.FurnacePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A part of the drawing as a card: its condition, its history, what can be done.
 *
 * @param part which
 * @param name its name
 * @param knobs its numbers
 * @param reach how it is reached, or empty
 * @param history what was done there, the latest first
 * @param actions what a hand can do at once
 * @param works what work can be done there
 */
public record PartCard(
    DrawnPart part,
    String name,
    List<Knob> knobs,
    String reach,
    List<String> history,
    List<Action> actions,
    List<WorkCard> works) {

  /**
   * Something that a hand can do at once.
   *
   * @param words what
   * @param intent the same for the workbench
   */
  public record Action(String words, Intent intent) {}

  /** The card of a part. */
  public static PartCard of(DrawnPart part, State state, Wording words) {
    Bench bench = state.moment().bench();
    Bench as = state.paper().bench();
    List<FurnacePart> at = places(part);
    List<String> history = new ArrayList<>();
    List<String> all = WorkCard.done(state, words);
    List<WorkDone> done = state.standing().work();
    for (int k = 0; k < all.size(); k++) {
      if (at.contains(done.get(done.size() - 1 - k).work().part())) {
        history.add(all.get(k));
      }
    }
    String reach =
        at.isEmpty()
            ? ""
            : words.text(
                "part.reach", at.get(0).access().minutes(), at.get(0).access().fasteners());
    return new PartCard(
        part,
        Wording.capital(words.text(key(part))),
        parameters(part).stream().map(p -> Knob.of(p, bench, as, words)).toList(),
        reach,
        history,
        actions(part, state, words),
        at.stream().flatMap(p -> WorkCard.at(p, state, words).stream()).toList());
  }

  /** Where the bundle keeps the name of a part. */
  public static String key(DrawnPart part) {
    return "part." + part.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static List<FurnacePart> places(DrawnPart part) {
    return switch (part) {
      case BOARD, VALVE_TERMINALS -> List.of(FurnacePart.BOARD, FurnacePart.VALVE_TERMINALS);
      case STATUS_LIGHT -> List.of(FurnacePart.STATUS_LIGHT);
      case SENSE_TERMINAL, CONNECTOR -> List.of(FurnacePart.BOARD_CONNECTOR);
      case COMMON_TERMINAL, GROUND_STRAP, CHASSIS -> List.of(FurnacePart.GROUND_STRAP);
      case SENSE_LEAD -> List.of(FurnacePart.SENSE_LEAD);
      case ROD, JUMPER -> List.of(FurnacePart.ROD);
      case INSULATOR, LEAK, DEPOSIT -> List.of(FurnacePart.INSULATOR, FurnacePart.ROD);
      case BURNER -> List.of(FurnacePart.BURNERS, FurnacePart.AIR_INTAKE);
      case FLAME -> List.of(FurnacePart.SIGHT_GLASS, FurnacePart.FLUE);
      case IGNITER -> List.of(FurnacePart.IGNITER);
      case GAS_VALVE ->
          List.of(FurnacePart.GAS_VALVE, FurnacePart.MANIFOLD_TAP, FurnacePart.GAS_COCK);
      case METER -> List.of();
      case SUPPLY -> List.of(FurnacePart.SUPPLY, FurnacePart.DOOR_SWITCH);
      case FRONT -> List.of(FurnacePart.CROSSOVER, FurnacePart.BURNERS);
    };
  }

  private static List<Parameter> parameters(DrawnPart part) {
    return switch (part) {
      case BOARD, SENSE_TERMINAL ->
          List.of(
              Parameter.SENSE_SUPPLY,
              Parameter.INPUT_OFFSET,
              Parameter.SOURCE_VOLTS,
              Parameter.SOURCE_OHMS);
      case CONNECTOR -> List.of(Parameter.CONNECTOR);
      case SENSE_LEAD -> List.of(Parameter.LEAD, Parameter.LEAKAGE, Parameter.CABLE);
      case ROD ->
          List.of(
              Parameter.ROD_ACROSS,
              Parameter.ROD_UP,
              Parameter.ROD_ALONG,
              Parameter.ROD_TURN,
              Parameter.ROD_TILT,
              Parameter.ROD_BEND,
              Parameter.ROD_FILM,
              Parameter.ROD_CRACKS);
      case INSULATOR, LEAK -> List.of(Parameter.LEAKAGE);
      case DEPOSIT -> List.of(Parameter.DEPOSIT);
      case JUMPER -> List.of(Parameter.JUMPER);
      case BURNER -> List.of(Parameter.BURNER_SCALE, Parameter.BURNER_ATTACHMENT);
      case FLAME -> List.of(Parameter.GAS_PRESSURE, Parameter.PRIMARY_AIR, Parameter.ION_STRENGTH);
      case GROUND_STRAP, COMMON_TERMINAL, CHASSIS -> List.of(Parameter.GROUND);
      case GAS_VALVE -> List.of(Parameter.GAS_PRESSURE);
      case STATUS_LIGHT, VALVE_TERMINALS, IGNITER, METER, SUPPLY, FRONT -> List.of();
    };
  }

  private static List<Action> actions(DrawnPart part, State state, Wording words) {
    Bench bench = state.moment().bench();
    return switch (part) {
      case CONNECTOR, SENSE_TERMINAL -> {
        List<Action> actions = new ArrayList<>();
        actions.add(
            opens(
                Parameter.CONNECTOR, bench, "action.connector-off", "action.connector-on", words));
        Spot series = Spot.SERIES_AT_BOARD;
        actions.add(
            new Action(
                words.text(series.key()), new Intent.Lead(series.placing(), series.function())));
        yield actions;
      }
      case GROUND_STRAP, CHASSIS, COMMON_TERMINAL ->
          List.of(opens(Parameter.GROUND, bench, "action.ground-off", "action.ground-on", words));
      case ROD -> List.of(new Action(words.text("action.rod-fitted"), fitted(bench)));
      case SENSE_LEAD ->
          List.of(
              new Action(words.text("action.tug"), act(new Deed.Touch())),
              opens(Parameter.LEAD, bench, "action.lead-cut", "action.lead-whole", words));
      case GAS_VALVE ->
          List.of(turns(Disorder.GAS_SHUT, bench, "action.gas-shut", "action.gas-open", words));
      case SUPPLY ->
          List.of(
              new Action(
                  words.text(state.moment().supply() ? "action.power-off" : "action.power-on"),
                  act(new Deed.Supply(!state.moment().supply()))),
              turns(Disorder.DOOR_OPEN, bench, "action.door-open", "action.door-shut", words));
      case INSULATOR, LEAK ->
          List.of(
              new Action(
                  words.text(state.moment().damp() ? "action.dry" : "action.damp"),
                  act(new Deed.Damp(!state.moment().damp()))));
      case METER -> List.of(new Action(words.text("meter.take-off"), act(new Deed.TakeOff())));
      default -> List.of();
    };
  }

  private static Intent act(Deed... deeds) {
    return new Intent.Act(List.of(deeds), 0);
  }

  /** Disconnects what is joined, or joins what is disconnected. */
  private static Action opens(
      Parameter parameter, Bench bench, String off, String on, Wording words) {
    boolean open = parameter.of(bench) == Double.POSITIVE_INFINITY;
    double to = open ? 0 : Double.POSITIVE_INFINITY;
    return new Action(
        words.text(open ? on : off), act(new Deed.Alter(Change.Turned.to(parameter, to))));
  }

  private static Action turns(
      Disorder disorder, Bench bench, String on, String off, Wording words) {
    boolean there = bench.condition().appliance().has(disorder);
    return new Action(
        words.text(there ? off : on), act(new Deed.Alter(new Change.Upset(disorder, !there))));
  }

  private static Intent fitted(Bench bench) {
    return new RodGesture(bench.condition().rodPosition(), 0).to(RodPosition.FITTED);
  }
}
