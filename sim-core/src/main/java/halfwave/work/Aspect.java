package halfwave.work;

import static halfwave.bench.Parameter.BURNER_ATTACHMENT;
import static halfwave.bench.Parameter.LEAKAGE;
import static halfwave.bench.Parameter.ROD_UP;

import halfwave.bench.ApplianceCondition;
import halfwave.bench.Change;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.bench.Intermittent;
import halfwave.bench.Parameter;
import halfwave.bench.RodPosition;
import halfwave.bench.Trigger;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * One thing about a condition that can be wrong and put right by itself. Together they make up the
 * whole condition but for the rod's temperature.
 *
 * <p>Known simplification: the condition has one leakage for lead and insulator. Below 70 kΩ it
 * counts as the lead's, bare wire on metal; from there on as the insulator's.
 */
public enum Aspect {
  /** What has settled on the rod. */
  ROD_COAT(
      Onset.GRADUAL,
      c -> c.withRodCoat(Coat.CLEAN),
      turns(Parameter.ROD_FILM, Parameter.ROD_CRACKS)),
  /** The rod's shape: it is bent away. */
  ROD_SHAPE(
      Onset.SINCE_WORK,
      c -> broken(c) ? c : c.withRodPosition(unbent(c.rodPosition())),
      i -> (turns(ROD_UP).test(i) && !breaks(i)) || turnedOrBent(i)),
  /** The rod's bracket: it stands too far off, or is pulled back. */
  ROD_DISTANCE(
      Onset.SINCE_WORK,
      c -> broken(c) ? c : c.withRodPosition(inPlace(c.rodPosition())),
      turns(Parameter.ROD_ACROSS, Parameter.ROD_ALONG)),
  /** The rod has come off. */
  ROD_BROKEN(
      Onset.SUDDEN,
      c -> broken(c) ? c.withRodPosition(RodPosition.FITTED) : c,
      i -> turns(ROD_UP).test(i) && breaks(i)),
  /** Something joins rod and chassis. */
  ROD_CONTACT(Onset.SUDDEN, c -> c.withJumper(Double.POSITIVE_INFINITY), turns(Parameter.JUMPER)),
  /** Leakage of the insulator. */
  INSULATOR_LEAK(
      Onset.SUDDEN,
      c -> chafed(c.leakageOhms()) ? c : c.withLeakage(Double.POSITIVE_INFINITY),
      i -> leaks(i) && !chafed(i) && i.trigger() != Trigger.DAMP),
  /** Leakage that comes with damp. */
  DAMP_LEAK(Onset.GRADUAL, c -> c, i -> leaks(i) && !chafed(i) && i.trigger() == Trigger.DAMP),
  /** A deposit that conducts one way. */
  DEPOSIT(Onset.GRADUAL, c -> c.withDeposit(Double.POSITIVE_INFINITY), turns(Parameter.DEPOSIT)),
  /** The lead is bare against metal. */
  LEAD_CHAFE(
      Onset.SUDDEN,
      c -> chafed(c.leakageOhms()) ? c.withLeakage(Double.POSITIVE_INFINITY) : c,
      i -> leaks(i) && chafed(i)),
  /** Resistance along the lead. */
  LEAD_RESISTANCE(Onset.SUDDEN, c -> c.withLeadExtra(0), turns(Parameter.LEAD)),
  /** Resistance at the connector. */
  CONNECTOR(Onset.SUDDEN, c -> c.withConnector(0), turns(Parameter.CONNECTOR)),
  /** Resistance in the ground path. */
  GROUND(Onset.SUDDEN, c -> c.withGroundExtra(0), turns(Parameter.GROUND)),
  /** Scale on the burner face. */
  BURNER_SCALE(Onset.GRADUAL, c -> c.withBurnerScale(0, 0), turns(Parameter.BURNER_SCALE)),
  /** Ports of the burner. */
  PORTS(
      Onset.GRADUAL,
      c -> c.withAttachment(1),
      i -> turns(BURNER_ATTACHMENT).test(i) && i.trigger() != Trigger.BLOWER),
  /** Air of the circulating blower on the flame: the heat exchanger leaks. */
  BLOWER_AIR(
      Onset.SUDDEN, c -> c, i -> turns(BURNER_ATTACHMENT).test(i) && i.trigger() == Trigger.BLOWER),
  /** The way of the flame from burner to burner. */
  CROSSOVER(
      Onset.GRADUAL,
      appliance(a -> a.withCarryOver(ApplianceCondition.HEALTHY.carryOverSeconds())),
      i -> i.change() instanceof Change.CarriedOver || i.change() instanceof Change.HeldUp),
  /** Gas pressure. */
  GAS_PRESSURE(
      Onset.SINCE_WORK,
      c -> c.withManifold(Condition.HEALTHY.manifoldRatio()),
      turns(Parameter.GAS_PRESSURE)),
  /** Primary air. */
  AIR(Onset.GRADUAL, c -> c.withAir(Condition.HEALTHY.airRatio()), turns(Parameter.PRIMARY_AIR)),
  /** Voltage of the sense source. */
  SENSE_SUPPLY(Onset.SUDDEN, appliance(a -> a.withSenseSupply(1)), turns(Parameter.SENSE_SUPPLY)),
  /** The board's amplifier. */
  INPUT_OFFSET(Onset.SUDDEN, appliance(a -> a.withInputOffset(0)), turns(Parameter.INPUT_OFFSET)),
  /** The gas cock. */
  GAS_COCK(Onset.SINCE_WORK, Disorder.GAS_SHUT),
  /** The board's output to the gas valve. */
  VALVE_DRIVER(Onset.SUDDEN, Disorder.VALVE_DRIVER_DEAD),
  /** A gas valve that stays shut. */
  VALVE_SHUT(Onset.SUDDEN, Disorder.VALVE_STUCK_SHUT),
  /** A gas valve that stays open. */
  VALVE_OPEN(Onset.SUDDEN, Disorder.VALVE_STUCK_OPEN),
  /** Igniter or spark circuit. */
  IGNITER(Onset.SUDDEN, Disorder.IGNITER_BROKEN),
  /** The inducer. */
  INDUCER(Onset.SUDDEN, Disorder.INDUCER_DEAD),
  /** The circulating blower. */
  BLOWER(Onset.SUDDEN, Disorder.BLOWER_DEAD),
  /** A pressure switch that stays open. */
  PRESSURE_OPEN(Onset.SUDDEN, Disorder.PRESSURE_SWITCH_OPEN),
  /** A pressure switch that stays closed. */
  PRESSURE_CLOSED(Onset.SUDDEN, Disorder.PRESSURE_SWITCH_CLOSED),
  /** The limit. */
  LIMIT(Onset.SUDDEN, Disorder.LIMIT_OPEN),
  /** The door and its switch. */
  DOOR(Onset.SINCE_WORK, Disorder.DOOR_OPEN),
  /** Line and neutral. */
  POLARITY(Onset.SINCE_WORK, Disorder.LINE_REVERSED),
  /** The board's own test. */
  BOARD(Onset.SUDDEN, Disorder.BOARD_FAULT);

  /**
   * Bare wire on metal has at most a few ohms, tracking ceramic 100 kΩ and more (Ω) [common
   * practice, no source].
   */
  static final double CHAFED_BELOW_OHMS = 70e3;

  /** Corrosion leaves some way for the current, up to 100 MΩ (Ω) [judgement]. */
  private static final double OPEN_FROM_OHMS = 3e8;

  /** No bracket lets a rod stray so far; what did has come off (m). */
  static final double BROKEN_ABOVE_METERS = 60e-3;

  private final Onset onset;
  private final UnaryOperator<Condition> righted;
  private final Predicate<Intermittent> own;

  Aspect(Onset onset, UnaryOperator<Condition> righted, Predicate<Intermittent> own) {
    this.onset = onset;
    this.righted = righted;
    this.own = own;
  }

  Aspect(Onset onset, Disorder disorder) {
    this(
        onset,
        appliance(a -> a.with(disorder, false)),
        i -> i.change() instanceof Change.Upset u && u.disorder() == disorder);
  }

  /**
   * How it came about that it is wrong: what corrodes gets worse, what comes off does so at once.
   */
  Onset onset(Condition c) {
    boolean corrodes =
        switch (this) {
          case CONNECTOR -> c.connectorOhms() < OPEN_FROM_OHMS;
          case GROUND -> c.groundExtraOhms() < OPEN_FROM_OHMS;
          default -> false;
        };
    return corrodes ? Onset.GRADUAL : onset;
  }

  /** Whether it is not as it should be all the time. */
  public boolean wrong(Condition condition) {
    return !righted.apply(condition).equals(condition);
  }

  /** Whether it is wrong all the time, or lurks. */
  public boolean wrongOrLurks(Condition condition) {
    return wrong(condition) || condition.appliance().intermittents().stream().anyMatch(own);
  }

  /** All that is wrong with a condition, or lurks, in the order of this family. */
  public static Set<Aspect> amiss(Condition condition) {
    Set<Aspect> wrong = EnumSet.noneOf(Aspect.class);
    for (Aspect aspect : values()) {
      if (aspect.wrongOrLurks(condition)) {
        wrong.add(aspect);
      }
    }
    return wrong;
  }

  /** The condition with this put right, and without what came and went of it. */
  public Condition righted(Condition condition) {
    ApplianceCondition a = condition.appliance();
    if (a.intermittents().stream().noneMatch(own)) {
      return righted.apply(condition);
    }
    ApplianceCondition quiet =
        new ApplianceCondition(
            a.carryOverSeconds(),
            a.senseSupplyRatio(),
            a.inputOffsetAmps(),
            a.disorders(),
            a.intermittents().stream().filter(own.negate()).toList());
    return righted.apply(condition.withAppliance(quiet));
  }

  private static UnaryOperator<Condition> appliance(UnaryOperator<ApplianceCondition> righted) {
    return c -> c.withAppliance(righted.apply(c.appliance()));
  }

  private static Predicate<Intermittent> turns(Parameter... parameters) {
    Set<Parameter> set = Set.of(parameters);
    return i -> {
      Parameter turned = turned(i.change());
      return turned != null && set.contains(turned);
    };
  }

  private static @Nullable Parameter turned(Change change) {
    if (change instanceof Change.Turned t) {
      return t.parameter();
    }
    return change instanceof Change.Joined j ? j.parameter() : null;
  }

  private static double to(Change change) {
    if (change instanceof Change.Turned t) {
      return t.value().si();
    }
    return change instanceof Change.Joined j ? j.value().si() : Double.NaN;
  }

  private static boolean turnedOrBent(Intermittent i) {
    return turns(Parameter.ROD_TURN, Parameter.ROD_TILT, Parameter.ROD_BEND).test(i);
  }

  private static boolean leaks(Intermittent i) {
    return turned(i.change()) == LEAKAGE;
  }

  private static boolean chafed(Intermittent i) {
    return chafed(to(i.change()));
  }

  static boolean chafed(double leakageOhms) {
    return leakageOhms < CHAFED_BELOW_OHMS;
  }

  private static boolean breaks(Intermittent i) {
    return to(i.change()) > BROKEN_ABOVE_METERS;
  }

  static boolean broken(Condition c) {
    return c.rodPosition().upMeters() > BROKEN_ABOVE_METERS;
  }

  private static RodPosition unbent(RodPosition p) {
    return RodPosition.shifted(p.acrossMeters(), 0, p.alongMeters());
  }

  private static RodPosition inPlace(RodPosition p) {
    return new RodPosition(0, p.upMeters(), 0, p.turnRadians(), p.tiltRadians(), p.bendRadians());
  }
}
