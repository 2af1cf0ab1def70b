package halfwave.work;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Change.Joined;
import halfwave.bench.Change.Turned;
import halfwave.bench.Change.Upset;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.bench.Intermittent;
import halfwave.bench.Parameter;
import halfwave.bench.Trigger;
import halfwave.board.Ignition;
import halfwave.quantity.RejectedValueException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Handling that goes wrong: what it does to the bench, how likely, the caution against it, and the
 * minutes of the right way. Whoever plays it draws the chance; the change itself is certain.
 */
public enum Handling implements Work {
  /** A toothed tool on the ceramic: it cracks and leaks. */
  TOOTHED_TOOL_ON_CERAMIC(
      FurnacePart.ROD, 1, 3, 0.7, Joined.by(Parameter.LEAKAGE, 1e6), Caution.CERAMIC),
  /** Fingers on the rod: skin oil, on which dust and carbon settle. */
  FINGERS_ON_ROD(FurnacePart.ROD, 1, 2, 1, Joined.by(Parameter.ROD_FILM, 1e-7), Caution.ROD_SKIN),
  /** Fingers on the igniter: a hot spot, where it opens once it is hot. */
  FINGERS_ON_IGNITER(
      FurnacePart.IGNITER,
      1,
      2,
      0.3,
      new Upset(Disorder.IGNITER_BROKEN, true),
      Trigger.HEAT,
      Caution.IGNITER_ELEMENT),
  /** The igniter cleaned instead of the rod. */
  CLEANING_IGNITER(
      FurnacePart.IGNITER,
      4,
      6,
      0.8,
      new Upset(Disorder.IGNITER_BROKEN, true),
      Caution.IGNITER_ELEMENT),
  /** The igniter bumped while the rod is taken out. */
  BUMPING_IGNITER(
      FurnacePart.ROD,
      1,
      3,
      0.6,
      new Upset(Disorder.IGNITER_BROKEN, true),
      Caution.IGNITER_ELEMENT),
  /** A meter's tip pushed into the connector: it no longer grips. */
  SPREADING_CONNECTOR(
      FurnacePart.BOARD_CONNECTOR,
      1,
      3,
      0.5,
      Joined.by(Parameter.CONNECTOR, Double.POSITIVE_INFINITY),
      Trigger.VIBRATION,
      Caution.CONNECTOR_SPRING),
  /** A rod that is bent snaps. */
  ROD_SNAPS(FurnacePart.ROD, 1, 8, 0.2, Turned.to(Parameter.ROD_UP, 0.09), Caution.MAKESHIFT),
  /** A rod put back carelessly stands out of the flame. */
  ROD_PUSHED_ASIDE(FurnacePart.ROD, 1, 3, 0.5, Joined.by(Parameter.ROD_UP, 0.016), Caution.CERAMIC),
  /** A tip or a clip slips onto metal and is left there: a short. */
  PROBE_SLIPS(
      FurnacePart.BOARD_CONNECTOR, 1, 3, 0.3, Joined.by(Parameter.JUMPER, 0), Caution.PROBE_TIPS),
  /** The lead hangs in the flame: its insulation burns off. */
  LEAD_IN_FLAME(
      FurnacePart.SENSE_LEAD, 1, 3, 0.9, Joined.by(Parameter.LEAKAGE, 1e3), Caution.LEAD_ROUTE),
  /** A burner is put back off its orifice: the jet misses the throat. */
  BURNER_OFF_ORIFICE(
      FurnacePart.BURNERS, 1, 4, 1, Joined.by(Parameter.PRIMARY_AIR, 0.5), Caution.BURNER_SEAT),
  /** Work at the board with the power on: a tool slips. */
  POWER_LEFT_ON(
      FurnacePart.BOARD,
      1,
      2,
      0.1,
      new Upset(Disorder.BOARD_FAULT, true),
      Caution.OFF_BEFORE_OPENING),
  /** A gas joint opened with the gas on, and left leaking. */
  GAS_LEFT_ON(
      FurnacePart.MANIFOLD_TAP,
      1,
      10,
      0.5,
      Joined.by(Parameter.GAS_PRESSURE, 0.9),
      Caution.OFF_BEFORE_OPENING);

  private final FurnacePart part;
  private final int ownMinutes;
  private final int rightMinutes;
  private final double chance;
  private final Change change;
  private final @Nullable Trigger trigger;
  private final Caution caution;

  Handling(
      FurnacePart part,
      int ownMinutes,
      int rightMinutes,
      double chance,
      Change change,
      Caution caution) {
    this(part, ownMinutes, rightMinutes, chance, change, null, caution);
  }

  Handling(
      FurnacePart part,
      int ownMinutes,
      int rightMinutes,
      double chance,
      Change change,
      @Nullable Trigger trigger,
      Caution caution) {
    this.part = part;
    this.ownMinutes = ownMinutes;
    this.rightMinutes = rightMinutes;
    this.chance = chance;
    this.change = change;
    this.trigger = trigger;
    this.caution = caution;
  }

  /** What it does to the bench. */
  public Change change() {
    return change;
  }

  /** What brings the change out, if it is not there all the time. */
  public Optional<Trigger> trigger() {
    return Optional.ofNullable(trigger);
  }

  /** How often it goes wrong (1): carbide is brittle, nitride less, a spark electrode is steel. */
  public double probabilityRatio(Ignition ignition) {
    if (caution != Caution.IGNITER_ELEMENT) {
      return chance;
    }
    return switch (ignition) {
      case HOT_SURFACE -> chance;
      case HOT_SURFACE_NITRIDE -> chance / 4;
      case DIRECT_SPARK, SPARK_AND_SENSE, INTERMITTENT_PILOT -> 0;
    };
  }

  /** A spark electrode is no element that breaks. */
  @Override
  public boolean possibleAt(Ignition ignition) {
    return probabilityRatio(ignition) > 0;
  }

  /** The bench once it has gone wrong; where nothing is left to go wrong it stays as it is. */
  public Bench on(Bench bench) {
    Condition c = bench.condition();
    if ((this == ROD_SNAPS || this == ROD_PUSHED_ASIDE) && Aspect.broken(c)) {
      return bench;
    }
    if (trigger != null) {
      Intermittent lurking = new Intermittent(trigger, change);
      // the same mishap twice makes nothing worse
      return c.appliance().intermittents().contains(lurking)
          ? bench
          : bench.with(c.withAppliance(c.appliance().with(lurking)));
    }
    try {
      return change.on(bench);
    } catch (RejectedValueException e) {
      // as bad as the model can say already
      return bench;
    }
  }

  /** Minutes at the part when it is done right. */
  public int rightMinutes() {
    return rightMinutes;
  }

  /** What to be told. */
  public Caution caution() {
    return caution;
  }

  @Override
  public FurnacePart part() {
    return part;
  }

  @Override
  public int ownMinutes() {
    return ownMinutes;
  }

  @Override
  public Tool tool() {
    return Tool.HANDS;
  }

  @Override
  public List<Caution> ownCautions() {
    return List.of(caution);
  }

  @Override
  public boolean powerOff() {
    return this != POWER_LEFT_ON && part.access().powerOff();
  }

  @Override
  public boolean gasOff() {
    return this != GAS_LEFT_ON && part.access().gasOff();
  }
}
