package halfwave.work;

import halfwave.board.StatusCode;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * A look, a tug, a question or a simple test: what it finds is a pure function of the scene. An
 * outcome is a {@link Finding}, or for the light a {@link StatusCode}.
 */
public enum Look implements Work {
  /** What the customer says happens. */
  ASK_WHAT_HAPPENS(
      FurnacePart.CUSTOMER,
      2,
      Tool.HANDS,
      Needs.NOTHING,
      Seeing::whatHappens,
      EnumSet.range(Finding.SAYS_HEATS, Finding.SAYS_WAITS),
      EnumSet.noneOf(Aspect.class)),
  /** What the customer says about since when. */
  ASK_SINCE_WHEN(
      FurnacePart.CUSTOMER,
      2,
      Tool.HANDS,
      Needs.NOTHING,
      scene -> Recollection.sinceWhen(scene.bench().condition()),
      EnumSet.copyOf(Recollection.ANSWERS),
      EnumSet.noneOf(Aspect.class)),
  /** The board's light. */
  STATUS_LIGHT(
      FurnacePart.STATUS_LIGHT,
      1,
      Tool.HANDS,
      Needs.POWER,
      Scene::code,
      EnumSet.allOf(StatusCode.class),
      EnumSet.of(
          Aspect.INPUT_OFFSET,
          Aspect.VALVE_OPEN,
          Aspect.ROD_CONTACT,
          Aspect.LEAD_CHAFE,
          Aspect.INDUCER,
          Aspect.PRESSURE_OPEN,
          Aspect.PRESSURE_CLOSED,
          Aspect.LIMIT,
          Aspect.DOOR,
          Aspect.POLARITY,
          Aspect.BOARD)),
  /** The flames. */
  FLAME_PICTURE(
      FurnacePart.SIGHT_GLASS,
      2,
      Tool.HANDS,
      Needs.FLAME,
      Seeing::flame,
      EnumSet.range(Finding.FLAME_OUT, Finding.FLAME_PARTIAL),
      EnumSet.of(Aspect.PORTS, Aspect.BLOWER_AIR, Aspect.GAS_PRESSURE, Aspect.AIR)),
  /** The flame from burner to burner. */
  FLAME_TRAVEL(
      FurnacePart.SIGHT_GLASS,
      3,
      Tool.HANDS,
      Needs.FLAME,
      Seeing::travel,
      EnumSet.range(Finding.TRAVEL_NOTHING, Finding.TRAVEL_STOPS),
      EnumSet.of(Aspect.CROSSOVER)),
  /** The rod. */
  ROD(
      FurnacePart.ROD,
      1,
      Tool.LAMP,
      Needs.NOTHING,
      Seeing::rod,
      EnumSet.range(Finding.ROD_CLEAN, Finding.ROD_OFF),
      EnumSet.range(Aspect.ROD_COAT, Aspect.ROD_CONTACT)),
  /** The distance from rod to burner. */
  ROD_GAP(
      FurnacePart.ROD,
      2,
      Tool.RULER,
      Needs.NOTHING,
      Seeing::gap,
      EnumSet.range(Finding.GAP_RIGHT, Finding.GAP_NONE),
      EnumSet.range(Aspect.ROD_SHAPE, Aspect.ROD_CONTACT)),
  /** The rod's ceramic. */
  INSULATOR(
      FurnacePart.INSULATOR,
      1,
      Tool.LAMP,
      Needs.NOTHING,
      Seeing::insulator,
      EnumSet.range(Finding.CERAMIC_SOUND, Finding.CERAMIC_DEPOSIT),
      EnumSet.of(Aspect.INSULATOR_LEAK, Aspect.DEPOSIT)),
  /** A tug at the connector. */
  CONNECTOR_TUG(
      FurnacePart.BOARD_CONNECTOR,
      1,
      Tool.HANDS,
      Needs.NOTHING,
      Seeing::connector,
      EnumSet.range(Finding.CONNECTOR_FIRM, Finding.CONNECTOR_OFF),
      EnumSet.of(Aspect.CONNECTOR)),
  /** The lead from end to end. */
  LEAD_CONTINUITY(
      FurnacePart.SENSE_LEAD,
      3,
      Tool.MULTIMETER,
      Needs.NOTHING,
      Testing::lead,
      EnumSet.range(Finding.LEAD_THROUGH, Finding.LEAD_OPEN),
      EnumSet.of(Aspect.CONNECTOR, Aspect.LEAD_RESISTANCE, Aspect.ROD_BROKEN)),
  /** The way from burner to neutral. */
  BOND_RESISTANCE(
      FurnacePart.GROUND_STRAP,
      3,
      Tool.MULTIMETER,
      Needs.NOTHING,
      Testing::bond,
      EnumSet.range(Finding.BOND_GOOD, Finding.BOND_OPEN),
      EnumSet.of(Aspect.GROUND)),
  /** Lead and rod against the chassis. */
  INSULATION_TEST(
      FurnacePart.SENSE_LEAD,
      4,
      Tool.INSULATION_TESTER,
      Needs.NOTHING,
      Testing::insulation,
      EnumSet.range(Finding.INSULATION_GOOD, Finding.INSULATION_FAILED),
      EnumSet.of(
          Aspect.INSULATOR_LEAK,
          Aspect.DAMP_LEAK,
          Aspect.DEPOSIT,
          Aspect.LEAD_CHAFE,
          Aspect.ROD_CONTACT),
      Caution.TEST_VOLTAGE),
  /** The burner face. */
  BURNER_FACE(
      FurnacePart.BURNERS,
      2,
      Tool.LAMP,
      Needs.NOTHING,
      Seeing::burnerFace,
      EnumSet.range(Finding.BURNER_CLEAN, Finding.BURNER_BLOCKED),
      EnumSet.of(Aspect.BURNER_SCALE, Aspect.PORTS)),
  /** Line to ground and neutral to ground. */
  POLARITY(
      FurnacePart.SUPPLY,
      2,
      Tool.MULTIMETER,
      Needs.POWER,
      Testing::polarity,
      EnumSet.range(Finding.POLARITY_RIGHT, Finding.POLARITY_DEAD),
      EnumSet.of(Aspect.POLARITY)),
  /** Gas pressure behind the valve. */
  MANIFOLD_PRESSURE(
      FurnacePart.MANIFOLD_TAP,
      4,
      Tool.MANOMETER,
      Needs.FLAME,
      Testing::manifold,
      EnumSet.range(Finding.PRESSURE_NONE, Finding.PRESSURE_HIGH),
      EnumSet.of(
          Aspect.GAS_PRESSURE,
          Aspect.GAS_COCK,
          Aspect.VALVE_DRIVER,
          Aspect.VALVE_SHUT,
          Aspect.VALVE_OPEN),
      Caution.GAUGE_FIRST),
  /** Voltage at the gas valve during a trial. */
  VALVE_VOLTAGE(
      FurnacePart.VALVE_TERMINALS,
      3,
      Tool.MULTIMETER,
      Needs.CALL,
      Testing::valve,
      EnumSet.range(Finding.VALVE_POWERED, Finding.VALVE_NOT_CALLED),
      EnumSet.of(Aspect.VALVE_DRIVER)),
  /** Igniter or spark. */
  IGNITER(
      FurnacePart.IGNITER,
      1,
      Tool.LAMP,
      Needs.CALL,
      Testing::igniter,
      EnumSet.range(Finding.IGNITER_WORKS, Finding.IGNITER_CRACKED),
      EnumSet.of(Aspect.IGNITER),
      Caution.IGNITER_ELEMENT),
  /** The pressure switch. */
  PRESSURE_SWITCH(
      FurnacePart.PRESSURE_SWITCH,
      2,
      Tool.MULTIMETER,
      Needs.CALL,
      Testing::pressureSwitch,
      EnumSet.range(Finding.PRESSURE_SWITCH_OPEN, Finding.PRESSURE_SWITCH_CLOSED),
      EnumSet.of(Aspect.PRESSURE_OPEN, Aspect.PRESSURE_CLOSED),
      Caution.NEVER_BYPASS),
  /** The limit. */
  LIMIT(
      FurnacePart.LIMIT,
      2,
      Tool.MULTIMETER,
      Needs.POWER,
      Testing::limit,
      EnumSet.range(Finding.LIMIT_OPEN, Finding.LIMIT_CLOSED),
      EnumSet.of(Aspect.LIMIT),
      Caution.NEVER_BYPASS),
  /** The inducer. */
  INDUCER(
      FurnacePart.INDUCER_WHEEL,
      1,
      Tool.HANDS,
      Needs.CALL,
      Testing::inducer,
      EnumSet.range(Finding.INDUCER_TURNS, Finding.INDUCER_STILL),
      EnumSet.of(Aspect.INDUCER)),
  /** Air from the registers. */
  BLOWER(
      FurnacePart.CUSTOMER,
      1,
      Tool.HANDS,
      Needs.CALL,
      Testing::blower,
      EnumSet.range(Finding.BLOWER_TURNS, Finding.BLOWER_STILL),
      EnumSet.of(Aspect.BLOWER)),
  /** Whether combustion is better or worse than usual: a class, no number. */
  COMBUSTION(
      FurnacePart.FLUE,
      6,
      Tool.COMBUSTION_ANALYSER,
      Needs.FLAME,
      Seeing::combustion,
      EnumSet.range(Finding.COMBUSTION_NONE, Finding.COMBUSTION_STOP),
      EnumSet.of(
          Aspect.PORTS, Aspect.BLOWER_AIR, Aspect.BURNER_SCALE, Aspect.GAS_PRESSURE, Aspect.AIR));

  private final FurnacePart part;
  private final int ownMinutes;
  private final Tool tool;
  private final Needs needs;
  private final Function<Scene, Enum<?>> outcome;
  private final List<Enum<?>> outcomes;
  private final Set<Aspect> shows;
  private final List<Caution> cautions;

  Look(
      FurnacePart part,
      int ownMinutes,
      Tool tool,
      Needs needs,
      Function<Scene, Enum<?>> outcome,
      Set<? extends Enum<?>> outcomes,
      Set<Aspect> shows,
      Caution... cautions) {
    this.part = part;
    this.ownMinutes = ownMinutes;
    this.tool = tool;
    this.needs = needs;
    this.outcome = outcome;
    this.outcomes = List.copyOf(outcomes);
    this.shows = Collections.unmodifiableSet(shows);
    this.cautions = List.copyOf(Arrays.asList(cautions));
  }

  /** What it finds. */
  public Enum<?> at(Scene scene) {
    return outcome.apply(scene);
  }

  /** Everything it can find. */
  public List<Enum<?>> outcomes() {
    return outcomes;
  }

  /**
   * What it can show by itself, whatever the furnace does. What the furnace makes of other faults,
   * such as a flame that is out, it shows as well.
   */
  public Set<Aspect> shows() {
    return shows;
  }

  @Override
  public Optional<Proviso> proviso(Aspect aspect) {
    return switch (this) {
      case STATUS_LIGHT ->
          Optional.of(
              aspect == Aspect.POLARITY ? Proviso.IF_BOARD_CHECKS : Proviso.WHEN_BOARD_MEETS_IT);
      case VALVE_VOLTAGE -> Optional.of(Proviso.IN_A_TRIAL);
      case INDUCER -> Optional.of(Proviso.DURING_A_CALL);
      case PRESSURE_SWITCH ->
          aspect == Aspect.PRESSURE_OPEN ? Optional.of(Proviso.DURING_A_CALL) : Optional.empty();
      case BLOWER -> Optional.of(Proviso.ONCE_BLOWER_IS_ON);
      default -> Work.super.proviso(aspect);
    };
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
    return tool;
  }

  @Override
  public List<Caution> ownCautions() {
    return cautions;
  }

  @Override
  public boolean needsFlame() {
    return needs == Needs.FLAME;
  }

  @Override
  public boolean needsPower() {
    return needs != Needs.NOTHING;
  }

  @Override
  public boolean needsCall() {
    return needs == Needs.CALL || needs == Needs.FLAME;
  }

  @Override
  public boolean powerOff() {
    return needs == Needs.NOTHING && part.access().powerOff();
  }

  @Override
  public boolean gasOff() {
    return needs != Needs.FLAME && part.access().gasOff();
  }
}
