package halfwave.work;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.ShippedBenches;
import halfwave.board.Ignition;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A repair: it puts some aspects of the condition right, and takes away what came and went of them.
 * Costs are in units without a currency; a flame rod is 10.
 */
public enum Repair implements Work {
  /** Light abrasive pad, wiped afterwards. */
  CLEAN_ROD_WITH_PAD(
      FurnacePart.ROD, 5, 0, Tool.PAD, EnumSet.of(Aspect.ROD_COAT), Caution.READ_FIRST),
  /** Fine steel wool. */
  CLEAN_ROD_WITH_STEEL_WOOL(
      FurnacePart.ROD,
      5,
      0,
      Tool.STEEL_WOOL,
      EnumSet.of(Aspect.ROD_COAT),
      Caution.READ_FIRST,
      Caution.SCRATCHES,
      Caution.STRANDS),
  /** Brass brush. */
  CLEAN_ROD_WITH_BRASS_BRUSH(
      FurnacePart.ROD,
      5,
      0,
      Tool.BRASS_BRUSH,
      EnumSet.of(Aspect.ROD_COAT),
      Caution.READ_FIRST,
      Caution.SCRATCHES,
      Caution.STRANDS),
  /** Abrasive paper. */
  CLEAN_ROD_WITH_PAPER(
      FurnacePart.ROD,
      4,
      0,
      Tool.ABRASIVE_PAPER,
      EnumSet.of(Aspect.ROD_COAT),
      Caution.READ_FIRST,
      Caution.SCRATCHES,
      Caution.GRIT),
  /** A new rod with its ceramic. */
  REPLACE_ROD(
      FurnacePart.ROD,
      8,
      10,
      Tool.NUT_DRIVER,
      EnumSet.of(
          Aspect.ROD_COAT,
          Aspect.ROD_SHAPE,
          Aspect.ROD_DISTANCE,
          Aspect.ROD_BROKEN,
          Aspect.ROD_CONTACT,
          Aspect.INSULATOR_LEAK,
          Aspect.DAMP_LEAK,
          Aspect.DEPOSIT),
      Caution.READ_FIRST,
      Caution.CERAMIC,
      Caution.ROD_SKIN),
  /** The bracket set so that the rod stands as fitted. */
  REPOSITION_ROD(
      FurnacePart.ROD,
      6,
      0,
      Tool.NUT_DRIVER,
      EnumSet.of(Aspect.ROD_SHAPE, Aspect.ROD_DISTANCE, Aspect.ROD_CONTACT),
      Caution.READ_FIRST,
      Caution.CERAMIC),
  /** The rod bent back. */
  BEND_ROD(
      FurnacePart.ROD,
      4,
      0,
      Tool.PADDED_PLIERS,
      EnumSet.of(Aspect.ROD_SHAPE, Aspect.ROD_CONTACT),
      Caution.READ_FIRST,
      Caution.CERAMIC,
      Caution.MAKESHIFT),
  /** What joins rod and chassis taken away: a probe, a clip, a jumper. */
  TAKE_CONTACT_AWAY(
      FurnacePart.SENSE_LEAD,
      1,
      0,
      Tool.HANDS,
      EnumSet.of(Aspect.ROD_CONTACT),
      Caution.NEVER_BYPASS),
  /** A new ceramic. */
  REPLACE_INSULATOR(
      FurnacePart.INSULATOR,
      8,
      8,
      Tool.NUT_DRIVER,
      EnumSet.of(Aspect.INSULATOR_LEAK, Aspect.DAMP_LEAK, Aspect.DEPOSIT),
      Caution.READ_FIRST,
      Caution.CERAMIC),
  /** Ceramic and lead dried, and led away from the damp. */
  DRY_INSULATION(
      FurnacePart.INSULATOR,
      15,
      0,
      Tool.HANDS,
      EnumSet.of(Aspect.DAMP_LEAK),
      Caution.READ_FIRST,
      Caution.DAMP_RETURNS),
  /** A new connector, crimped. */
  REMAKE_CONNECTOR(
      FurnacePart.BOARD_CONNECTOR,
      5,
      1,
      Tool.CRIMPING_TOOL,
      EnumSet.of(Aspect.CONNECTOR),
      Caution.READ_FIRST,
      Caution.CONNECTOR_SPRING),
  /** A new lead with its connectors. */
  REPLACE_LEAD(
      FurnacePart.SENSE_LEAD,
      8,
      5,
      Tool.CRIMPING_TOOL,
      EnumSet.of(Aspect.LEAD_RESISTANCE, Aspect.LEAD_CHAFE, Aspect.CONNECTOR),
      Caution.READ_FIRST,
      Caution.LEAD_ROUTE),
  /** Bare metal, new screw, strap. */
  RESTORE_BOND(
      FurnacePart.GROUND_STRAP,
      10,
      2,
      Tool.STEEL_WOOL,
      EnumSet.of(Aspect.GROUND),
      Caution.READ_FIRST),
  /** The face of the burners brushed. */
  CLEAN_BURNER_FACE(
      FurnacePart.BURNERS,
      12,
      0,
      Tool.BRASS_BRUSH,
      EnumSet.of(Aspect.BURNER_SCALE),
      Caution.READ_FIRST,
      Caution.BURNER_SEAT),
  /** Ports and crossover slots brushed and blown out. */
  CLEAN_PORTS_AND_CROSSOVER(
      FurnacePart.CROSSOVER,
      20,
      0,
      Tool.BRUSH_AND_VACUUM,
      EnumSet.of(Aspect.PORTS, Aspect.CROSSOVER),
      Caution.READ_FIRST,
      Caution.BURNER_SEAT),
  /** The regulator set. */
  SET_GAS_PRESSURE(
      FurnacePart.MANIFOLD_TAP,
      10,
      0,
      Tool.MANOMETER,
      EnumSet.of(Aspect.GAS_PRESSURE),
      Caution.READ_FIRST,
      Caution.GAUGE_FIRST,
      Caution.GAS_SETTING),
  /** Intake and burner throats freed, shutters set, burners seated. */
  RESTORE_AIR(
      FurnacePart.AIR_INTAKE,
      15,
      0,
      Tool.BRUSH_AND_VACUUM,
      EnumSet.of(Aspect.AIR),
      Caution.READ_FIRST,
      Caution.BURNER_SEAT,
      Caution.CARBON_MONOXIDE),
  /** The way of the blower's air to the flame closed; until then the appliance stays off. */
  CLOSE_HEAT_EXCHANGER(
      FurnacePart.HEAT_EXCHANGER,
      180,
      120,
      Tool.NUT_DRIVER,
      EnumSet.of(Aspect.BLOWER_AIR),
      Caution.RED_TAG,
      Caution.CARBON_MONOXIDE),
  /** The cock opened. */
  OPEN_GAS_COCK(
      FurnacePart.GAS_COCK,
      2,
      0,
      Tool.HANDS,
      EnumSet.of(Aspect.GAS_COCK),
      Caution.WHY_SHUT,
      Caution.LEAK_TEST),
  /** A new igniter or spark circuit. */
  REPLACE_IGNITER(
      FurnacePart.IGNITER,
      8,
      25,
      Tool.NUT_DRIVER,
      EnumSet.of(Aspect.IGNITER),
      Caution.IGNITER_ELEMENT),
  /** Line and neutral put where they belong; where they are, nothing is done. */
  CORRECT_POLARITY(
      FurnacePart.SUPPLY,
      8,
      0,
      Tool.SCREWDRIVER,
      EnumSet.of(Aspect.POLARITY),
      Caution.SWITCH_MAY_NOT_CUT,
      Caution.LIVE_PARTS),
  /** A new pressure switch. */
  REPLACE_PRESSURE_SWITCH(
      FurnacePart.PRESSURE_SWITCH,
      8,
      20,
      Tool.SCREWDRIVER,
      EnumSet.of(Aspect.PRESSURE_OPEN, Aspect.PRESSURE_CLOSED),
      Caution.NEVER_BYPASS),
  /** A new limit. */
  REPLACE_LIMIT(
      FurnacePart.LIMIT, 8, 10, Tool.SCREWDRIVER, EnumSet.of(Aspect.LIMIT), Caution.NEVER_BYPASS),
  /** A new gas valve. */
  REPLACE_GAS_VALVE(
      FurnacePart.GAS_VALVE,
      30,
      70,
      Tool.WRENCHES,
      EnumSet.of(Aspect.VALVE_SHUT, Aspect.VALVE_OPEN),
      Caution.GAS_ESCAPES,
      Caution.LEAK_TEST,
      Caution.GAS_SETTING),
  /** A new board. */
  REPLACE_BOARD(
      FurnacePart.BOARD,
      25,
      90,
      Tool.SCREWDRIVER,
      EnumSet.of(Aspect.BOARD, Aspect.VALVE_DRIVER, Aspect.SENSE_SUPPLY, Aspect.INPUT_OFFSET),
      Caution.READ_FIRST,
      Caution.BOARD_LAST),
  /** A new inducer. */
  REPLACE_INDUCER(FurnacePart.INDUCER, 25, 110, Tool.NUT_DRIVER, EnumSet.of(Aspect.INDUCER)),
  /** A new motor for the circulating blower. */
  REPLACE_BLOWER(FurnacePart.BLOWER, 40, 130, Tool.NUT_DRIVER, EnumSet.of(Aspect.BLOWER)),
  /** The door hung so that it presses its switch, or a new switch. */
  CLOSE_DOOR(
      FurnacePart.DOOR_SWITCH,
      1,
      0,
      Tool.HANDS,
      EnumSet.of(Aspect.DOOR),
      Caution.LIVE_PARTS,
      Caution.OFF_BEFORE_OPENING,
      Caution.NEVER_BYPASS);

  /** Resistance over dense silica of what cleaning leaves (1), as in any film. */
  private static final double POROSITY_RATIO = Coat.CLEAN.porosityRatio();

  private final FurnacePart part;
  private final int ownMinutes;
  private final int costUnits;
  private final Tool tool;
  private final Set<Aspect> aspects;
  private final List<Caution> cautions;

  Repair(
      FurnacePart part,
      int ownMinutes,
      int costUnits,
      Tool tool,
      Set<Aspect> aspects,
      Caution... cautions) {
    this.part = part;
    this.ownMinutes = ownMinutes;
    this.costUnits = costUnits;
    this.tool = tool;
    this.aspects = Collections.unmodifiableSet(aspects);
    this.cautions = List.copyOf(Arrays.asList(cautions));
  }

  /** Where a pilot lights the burner, the flue draws by itself: no inducer, no pressure switch. */
  @Override
  public boolean possibleAt(Ignition ignition) {
    boolean forced = ignition != Ignition.INTERMITTENT_PILOT;
    return forced || (this != REPLACE_INDUCER && this != REPLACE_PRESSURE_SWITCH);
  }

  /** Those that put a fault of that kind right and leave nothing but their own residue. */
  public static List<Repair> curing(FaultKind kind) {
    Bench sound = ShippedBenches.standard();
    Bench faulty = Fault.typical(kind).on(sound);
    return Stream.of(values())
        .filter(r -> r.on(faulty).condition().equals(r.on(sound).condition()))
        .toList();
  }

  /** The condition after it. */
  public Condition on(Condition condition) {
    Condition after = condition;
    for (Aspect aspect : aspects) {
      after = aspect.righted(after);
    }
    double residue = residueMeters();
    return residue == 0 ? after : after.withRodCoat(Coat.even(residue, POROSITY_RATIO));
  }

  /** The bench after it. */
  public Bench on(Bench bench) {
    return bench.with(on(bench.condition()));
  }

  /**
   * Film that is left on the rod, or settles at once in scratches and on grit (m). Sources
   * conflict: some manuals forbid abrasive paper for the grit it leaves, others ask for it; that
   * scratched rods foul faster is popular and unproven. The sizes are free; none of them shows in a
   * reading.
   */
  public double residueMeters() {
    return switch (this) {
      case CLEAN_ROD_WITH_PAD -> 1e-8;
      case CLEAN_ROD_WITH_STEEL_WOOL, CLEAN_ROD_WITH_BRASS_BRUSH -> 2e-8;
      case CLEAN_ROD_WITH_PAPER -> 5e-8;
      default -> 0;
    };
  }

  /** What it puts right. */
  public Set<Aspect> aspects() {
    return aspects;
  }

  /** Cost of parts, in units without a currency; a flame rod is 10. */
  public int costUnits() {
    return costUnits;
  }

  /** What may go wrong on the way however careful one is. */
  public Optional<Handling> mishap() {
    return this == BEND_ROD ? Optional.of(Handling.ROD_SNAPS) : Optional.empty();
  }

  /** Looks that can no longer show what was wrong. */
  public Set<Look> spoiltLooks() {
    Set<Look> spoilt = EnumSet.noneOf(Look.class);
    Stream.of(Look.values())
        .filter(look -> !Collections.disjoint(look.shows(), aspects))
        .forEach(spoilt::add);
    return Collections.unmodifiableSet(spoilt);
  }

  /** Readings that can no longer show it. */
  public Set<MeterTest> spoiltReadings() {
    Set<MeterTest> spoilt = EnumSet.noneOf(MeterTest.class);
    Stream.of(MeterTest.values())
        .filter(test -> !Collections.disjoint(test.shows(), aspects))
        .forEach(spoilt::add);
    return Collections.unmodifiableSet(spoilt);
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

  /** Gas pressure is set while it burns; everything else waits for the way to the part. */
  @Override
  public boolean needsFlame() {
    return this == SET_GAS_PRESSURE;
  }

  @Override
  public boolean needsPower() {
    return needsFlame();
  }

  @Override
  public boolean needsCall() {
    return needsFlame();
  }

  @Override
  public boolean powerOff() {
    return !needsFlame() && part.access().powerOff();
  }

  @Override
  public boolean gasOff() {
    return !needsFlame() && part.access().gasOff();
  }
}
