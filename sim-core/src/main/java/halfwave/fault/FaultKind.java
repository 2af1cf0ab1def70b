package halfwave.fault;

import halfwave.bench.Change;
import halfwave.bench.Change.HeldUp;
import halfwave.bench.Change.Joined;
import halfwave.bench.Change.Upset;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.bench.Trigger;
import halfwave.quantity.Dimension;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The kinds of faults. Ranges of severity and what is typical: common practice, no source. A kind
 * without a severity is there or it is not. A new kind goes to the end: severities are drawn by the
 * place in this list, and a quiz that is out already must not find other furnaces.
 */
public enum FaultKind {
  /** A glassy film on the rod (m of dense silica, porous). */
  ROD_SILICA(FaultGroup.ROD, Dimension.LENGTH, 2e-7, 5e-6, 5e-4, joined(Parameter.ROD_FILM)),
  /** A thick film with cracks on the rod (Ω of the cracks). */
  ROD_FOULED(FaultGroup.ROD, Dimension.RESISTANCE, 5e5, 8e6, 1e8, fouled()),
  /** The rod is bent up out of the flame (m). */
  ROD_ABOVE_FLAME(FaultGroup.ROD, Dimension.LENGTH, 5e-3, 16e-3, 40e-3, joined(Parameter.ROD_UP)),
  /** The rod is pulled back, so that little of it is in the flame (m). */
  ROD_PULLED_BACK(FaultGroup.ROD, Dimension.LENGTH, 27e-3, 28.5e-3, 35e-3, pulledBack()),
  /** The rod touches the burner's metal (Ω). */
  ROD_TOUCHES_BURNER(FaultGroup.ROD, Dimension.RESISTANCE, 0, 1, 1e3, joined(Parameter.JUMPER)),
  /** The insulator is cracked and leaks to the chassis (Ω). */
  CERAMIC_CRACKED(
      FaultGroup.INSULATOR, Dimension.RESISTANCE, 1e5, 1e6, 2e7, joined(Parameter.LEAKAGE)),
  /** The insulator leaks once it is hot (Ω). */
  CERAMIC_LEAKS_HOT(
      FaultGroup.INSULATOR,
      Dimension.RESISTANCE,
      1e5,
      7e5,
      2e7,
      joined(Parameter.LEAKAGE),
      Trigger.HEAT),
  /** Lead or insulator leak as long as they are damp (Ω). */
  INSULATION_DAMP(
      FaultGroup.INSULATOR,
      Dimension.RESISTANCE,
      1e5,
      7e5,
      2e7,
      joined(Parameter.LEAKAGE),
      Trigger.DAMP),
  /** A deposit across the insulator conducts one way, like a flame (Ω). */
  RECTIFYING_DEPOSIT(
      FaultGroup.INSULATOR, Dimension.RESISTANCE, 1e6, 1e7, 4e7, joined(Parameter.DEPOSIT)),
  /** The sense lead is broken inside (Ω). */
  LEAD_BROKEN(
      FaultGroup.LEAD,
      Dimension.RESISTANCE,
      1e8,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      joined(Parameter.LEAD)),
  /** The sense lead has chafed through to metal (Ω). */
  LEAD_CHAFED(FaultGroup.LEAD, Dimension.RESISTANCE, 0, 10, 5e4, joined(Parameter.LEAKAGE)),
  /** The connector at the board is corroded (Ω). */
  CONNECTOR_CORRODED(
      FaultGroup.LEAD, Dimension.RESISTANCE, 1e6, 1e7, 1e8, joined(Parameter.CONNECTOR)),
  /** The sense lead is off the board (Ω). */
  CONNECTOR_OFF(
      FaultGroup.LEAD,
      Dimension.RESISTANCE,
      1e10,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      joined(Parameter.CONNECTOR)),
  /** The connector opens when it is shaken (Ω). */
  CONNECTOR_LOOSE(
      FaultGroup.LEAD,
      Dimension.RESISTANCE,
      1e8,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      joined(Parameter.CONNECTOR),
      Trigger.VIBRATION),
  /** The burner has no way back to the board (Ω). */
  GROUND_LOST(
      FaultGroup.GROUND,
      Dimension.RESISTANCE,
      1e9,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      joined(Parameter.GROUND)),
  /** The way back is corroded (Ω). */
  GROUND_CORRODED(FaultGroup.GROUND, Dimension.RESISTANCE, 1e6, 1e7, 1e8, joined(Parameter.GROUND)),
  /** The way back opens when it is shaken (Ω). */
  GROUND_LOOSE(
      FaultGroup.GROUND,
      Dimension.RESISTANCE,
      1e8,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      joined(Parameter.GROUND),
      Trigger.VIBRATION),
  /** Rust and scale on the burner face (Ω). */
  BURNER_SCALED(
      FaultGroup.BURNER, Dimension.RESISTANCE, 1e6, 1e7, 1e9, joined(Parameter.BURNER_SCALE)),
  /** Part of the burner's ports is blocked (share left open). */
  PORTS_BLOCKED(
      FaultGroup.BURNER, Dimension.RATIO, 0.02, 0.3, 0.8, joined(Parameter.BURNER_ATTACHMENT)),
  /** The flame passes slowly from burner to burner (s). */
  CROSSOVER_DIRTY(FaultGroup.BURNER, Dimension.TIME, 0.8, 1.6, 3, heldUp()),
  /** The flame does not pass to the next burner. */
  CROSSOVER_BLOCKED(FaultGroup.BURNER, heldUpForEver()),
  /** The gas cock is shut. */
  GAS_SHUT(FaultGroup.GAS, upset(Disorder.GAS_SHUT)),
  /** The gas pressure is too low (over that set up). */
  GAS_PRESSURE_LOW(FaultGroup.GAS, Dimension.RATIO, 0.15, 0.3, 0.6, joined(Parameter.GAS_PRESSURE)),
  /** The gas pressure is too high (over that set up). */
  GAS_PRESSURE_HIGH(FaultGroup.GAS, Dimension.RATIO, 1.5, 2, 3, joined(Parameter.GAS_PRESSURE)),
  /** The gas valve does not open. */
  VALVE_STUCK_SHUT(FaultGroup.GAS, upset(Disorder.VALVE_STUCK_SHUT)),
  /** The gas valve does not shut. */
  VALVE_LEAKS(FaultGroup.GAS, upset(Disorder.VALVE_STUCK_OPEN)),
  /** Too little primary air: lint in the intake (over healthy). */
  AIR_BLOCKED(FaultGroup.AIR, Dimension.RATIO, 0.2, 0.4, 0.8, joined(Parameter.PRIMARY_AIR)),
  /** Too much primary air (over healthy). */
  AIR_EXCESSIVE(FaultGroup.AIR, Dimension.RATIO, 1.2, 1.4, 1.7, joined(Parameter.PRIMARY_AIR)),
  /**
   * Air of the circulating blower blows on the flame: a leaking heat exchanger (share of ports that
   * keep their flame).
   */
  AIR_FROM_BLOWER(
      FaultGroup.AIR,
      Dimension.RATIO,
      0.02,
      0.1,
      0.3,
      joined(Parameter.BURNER_ATTACHMENT),
      Trigger.BLOWER),
  /** The igniter is cracked, or the spark circuit broken. */
  IGNITER_BROKEN(FaultGroup.IGNITER, upset(Disorder.IGNITER_BROKEN)),
  /** Line and neutral are swapped. */
  LINE_REVERSED(FaultGroup.SUPPLY, upset(Disorder.LINE_REVERSED)),
  /** The board gives no sense voltage. */
  SENSE_SUPPLY_DEAD(FaultGroup.BOARD, senseSupplyDead()),
  /** The board's sense voltage is low (over that as built). */
  SENSE_SUPPLY_WEAK(
      FaultGroup.BOARD, Dimension.RATIO, 0.1, 0.3, 0.8, joined(Parameter.SENSE_SUPPLY)),
  /** The pressure switch stays open. */
  PRESSURE_SWITCH_OPEN(FaultGroup.SAFETY_SWITCH, upset(Disorder.PRESSURE_SWITCH_OPEN)),
  /** The pressure switch stays closed. */
  PRESSURE_SWITCH_CLOSED(FaultGroup.SAFETY_SWITCH, upset(Disorder.PRESSURE_SWITCH_CLOSED)),
  /** The limit is open. */
  LIMIT_OPEN(FaultGroup.SAFETY_SWITCH, upset(Disorder.LIMIT_OPEN)),
  /** The door is off, or its switch is broken. */
  DOOR_OPEN(FaultGroup.SAFETY_SWITCH, upset(Disorder.DOOR_OPEN)),
  /** The inducer does not turn. */
  INDUCER_DEAD(FaultGroup.AIR, upset(Disorder.INDUCER_DEAD)),
  /** The circulating blower does not turn. */
  BLOWER_DEAD(FaultGroup.AIR, upset(Disorder.BLOWER_DEAD)),
  /** The board gives the gas valve no power. */
  VALVE_DRIVER_DEAD(FaultGroup.BOARD, upset(Disorder.VALVE_DRIVER_DEAD)),
  /** The board sees flame where none is (A). */
  BOARD_SEES_FLAME(
      FaultGroup.BOARD, Dimension.CURRENT, 1e-6, 2e-6, 8e-6, joined(Parameter.INPUT_OFFSET)),
  /** The board takes a good signal for a weak one (A). */
  BOARD_DEAF(
      FaultGroup.BOARD, Dimension.CURRENT, -8e-6, -3e-6, -0.5e-6, joined(Parameter.INPUT_OFFSET)),
  /** The board fails its own test. */
  BOARD_FAULT(FaultGroup.BOARD, upset(Disorder.BOARD_FAULT));

  /** What a fouled rod carries besides its cracks (m) [common practice, no source]. */
  private static final double FOULED_METERS = 100e-6;

  private final FaultGroup group;
  private final @Nullable Dimension dimension;
  private final double least;
  private final double typical;
  private final double most;
  private final DoubleFunction<List<Change>> changes;
  private final @Nullable Trigger trigger;

  FaultKind(FaultGroup group, DoubleFunction<List<Change>> changes) {
    this(group, null, 0, 0, 0, changes, null);
  }

  FaultKind(
      FaultGroup group,
      Dimension dimension,
      double least,
      double typical,
      double most,
      DoubleFunction<List<Change>> changes) {
    this(group, dimension, least, typical, most, changes, null);
  }

  FaultKind(
      FaultGroup group,
      @Nullable Dimension dimension,
      double least,
      double typical,
      double most,
      DoubleFunction<List<Change>> changes,
      @Nullable Trigger trigger) {
    this.group = group;
    this.dimension = dimension;
    this.least = least;
    this.typical = typical;
    this.most = most;
    this.changes = changes;
    this.trigger = trigger;
  }

  private static DoubleFunction<List<Change>> joined(Parameter parameter) {
    return severity -> List.of(Joined.by(parameter, severity));
  }

  private static DoubleFunction<List<Change>> pulledBack() {
    return severity -> List.of(Joined.by(Parameter.ROD_ACROSS, -severity));
  }

  private static DoubleFunction<List<Change>> upset(Disorder disorder) {
    return severity -> List.of(new Upset(disorder, true));
  }

  private static DoubleFunction<List<Change>> heldUp() {
    return severity -> List.of(new HeldUp(severity));
  }

  private static DoubleFunction<List<Change>> heldUpForEver() {
    return severity -> List.of(new HeldUp(Double.POSITIVE_INFINITY));
  }

  private static DoubleFunction<List<Change>> fouled() {
    return severity ->
        List.of(
            Joined.by(Parameter.ROD_FILM, FOULED_METERS),
            Joined.by(Parameter.ROD_CRACKS, severity));
  }

  private static DoubleFunction<List<Change>> senseSupplyDead() {
    return severity -> List.of(Joined.by(Parameter.SENSE_SUPPLY, 0));
  }

  /** Name in commands and files. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The one of that name. */
  public static Optional<FaultKind> named(String id) {
    return Stream.of(values()).filter(k -> k.id().equals(id)).findFirst();
  }

  /** What it is a fault of. */
  public FaultGroup group() {
    return group;
  }

  /** What its severity measures, if it has one. */
  public Optional<Dimension> dimension() {
    return Optional.ofNullable(dimension);
  }

  /** Smallest number of its severity; zero where it has none. Not always the mildest. */
  public double least() {
    return least;
  }

  /** Usual severity; zero where it has none. */
  public double typical() {
    return typical;
  }

  /** Largest number of its severity; zero where it has none. */
  public double most() {
    return most;
  }

  /** What by its nature brings it out, if anything: then it is never there all the time. */
  public Optional<Trigger> trigger() {
    return Optional.ofNullable(trigger);
  }

  /**
   * What it changes.
   *
   * @param severity in SI, from {@link #least} to {@link #most}
   */
  List<Change> changes(double severity) {
    if (!(severity >= least && severity <= most)) {
      throw new RejectedValueException(
          "severity", Double.toString(severity), Allowed.RANGE, least, most);
    }
    return changes.apply(severity);
  }
}
