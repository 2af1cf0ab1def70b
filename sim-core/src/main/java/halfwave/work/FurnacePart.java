package halfwave.work;

import static halfwave.work.Cover.BLOWER_DOOR;
import static halfwave.work.Cover.BURNER_BOX;
import static halfwave.work.Cover.BURNER_DOOR;
import static halfwave.work.Cover.CONTROL_BOX;
import static halfwave.work.Cover.JUNCTION_BOX;
import static halfwave.work.Cover.MANIFOLD;
import static halfwave.work.Hazard.CARBON_MONOXIDE;
import static halfwave.work.Hazard.FLAME;
import static halfwave.work.Hazard.GAS_JOINT;
import static halfwave.work.Hazard.HOT_SURFACE;
import static halfwave.work.Hazard.LINE_VOLTAGE;
import static halfwave.work.Hazard.MOVING_PARTS;
import static halfwave.work.Hazard.SHARP_EDGE;

import halfwave.board.Ignition;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What a person can get at, how, and what can hurt there with power and gas on. Layout, minutes and
 * fasteners are those of an invented upright furnace [common practice, no source].
 */
public enum FurnacePart {
  /** The person who called. */
  CUSTOMER(Access.OPEN),
  /** The thermostat. */
  THERMOSTAT(Access.OPEN),
  /** The board's light, behind a glass in the door. */
  STATUS_LIGHT(Access.OPEN),
  /** The glass before the burners. */
  SIGHT_GLASS(
      new Access(List.of(BURNER_DOOR), 0, 0, Tool.HANDS, false, false),
      FLAME,
      CARBON_MONOXIDE,
      HOT_SURFACE),
  /** The flame rod with its bracket. */
  ROD(
      Access.off(1, 1, Tool.NUT_DRIVER, BURNER_DOOR, BURNER_BOX),
      LINE_VOLTAGE,
      FLAME,
      CARBON_MONOXIDE,
      HOT_SURFACE,
      SHARP_EDGE),
  /** The rod's ceramic. */
  INSULATOR(
      Access.off(1, 1, Tool.NUT_DRIVER, BURNER_DOOR, BURNER_BOX),
      LINE_VOLTAGE,
      FLAME,
      CARBON_MONOXIDE,
      HOT_SURFACE,
      SHARP_EDGE),
  /** The wire from board to rod. */
  SENSE_LEAD(
      Access.off(1, 0, Tool.HANDS, BURNER_DOOR, BLOWER_DOOR, CONTROL_BOX),
      LINE_VOLTAGE,
      HOT_SURFACE,
      SHARP_EDGE),
  /** That wire's connector at the board. */
  BOARD_CONNECTOR(
      Access.off(0, 0, Tool.HANDS, BLOWER_DOOR, CONTROL_BOX),
      LINE_VOLTAGE,
      MOVING_PARTS,
      SHARP_EDGE),
  /** The control board. */
  BOARD(
      Access.off(2, 4, Tool.SCREWDRIVER, BLOWER_DOOR, CONTROL_BOX),
      LINE_VOLTAGE,
      MOVING_PARTS,
      SHARP_EDGE),
  /** Hot surface or spark electrode. */
  IGNITER(
      Access.off(2, 2, Tool.NUT_DRIVER, BURNER_DOOR, BURNER_BOX),
      LINE_VOLTAGE,
      FLAME,
      CARBON_MONOXIDE,
      HOT_SURFACE,
      SHARP_EDGE),
  /** The burners, pulled. */
  BURNERS(
      Access.off(4, 3, Tool.NUT_DRIVER, BURNER_DOOR, BURNER_BOX, MANIFOLD),
      LINE_VOLTAGE,
      FLAME,
      CARBON_MONOXIDE,
      GAS_JOINT,
      HOT_SURFACE,
      SHARP_EDGE),
  /** The slots from burner to burner. */
  CROSSOVER(
      Access.off(4, 3, Tool.NUT_DRIVER, BURNER_DOOR, BURNER_BOX, MANIFOLD),
      LINE_VOLTAGE,
      FLAME,
      CARBON_MONOXIDE,
      GAS_JOINT,
      HOT_SURFACE,
      SHARP_EDGE),
  /** The strap from burner to chassis. */
  GROUND_STRAP(
      Access.off(1, 1, Tool.NUT_DRIVER, BURNER_DOOR), LINE_VOLTAGE, HOT_SURFACE, SHARP_EDGE),
  /** The cock before the appliance. */
  GAS_COCK(Access.OPEN),
  /** The gas valve. */
  GAS_VALVE(
      Access.off(6, 2, Tool.WRENCHES, BURNER_DOOR, MANIFOLD),
      LINE_VOLTAGE,
      FLAME,
      CARBON_MONOXIDE,
      GAS_JOINT,
      HOT_SURFACE,
      SHARP_EDGE),
  /** The terminals on the gas valve. */
  VALVE_TERMINALS(
      Access.off(0, 0, Tool.HANDS, BURNER_DOOR), LINE_VOLTAGE, FLAME, CARBON_MONOXIDE, HOT_SURFACE),
  /** The plug for a pressure gauge, and the regulator's screw beside it. */
  MANIFOLD_TAP(
      Access.off(3, 2, Tool.HEX_KEY, BURNER_DOOR),
      LINE_VOLTAGE,
      FLAME,
      CARBON_MONOXIDE,
      GAS_JOINT,
      HOT_SURFACE),
  /** Where the burners get their air. */
  AIR_INTAKE(
      Access.off(2, 2, Tool.SCREWDRIVER, BURNER_DOOR),
      LINE_VOLTAGE,
      FLAME,
      CARBON_MONOXIDE,
      HOT_SURFACE,
      SHARP_EDGE),
  /** The pressure switch. */
  PRESSURE_SWITCH(
      Access.off(2, 2, Tool.SCREWDRIVER, BURNER_DOOR), LINE_VOLTAGE, HOT_SURFACE, SHARP_EDGE),
  /** The limit. */
  LIMIT(Access.off(2, 2, Tool.SCREWDRIVER, BURNER_DOOR), LINE_VOLTAGE, HOT_SURFACE, SHARP_EDGE),
  /** The door that the door switch feels. */
  DOOR_SWITCH(Access.OPEN),
  /** The line connections of the furnace. */
  SUPPLY(Access.off(0, 0, Tool.SCREWDRIVER, JUNCTION_BOX), LINE_VOLTAGE, SHARP_EDGE),
  /** The inducer's wheel, where it can be seen and heard. */
  INDUCER_WHEEL(Access.off(0, 0, Tool.HANDS, BURNER_DOOR), LINE_VOLTAGE, MOVING_PARTS, HOT_SURFACE),
  /** The inducer. */
  INDUCER(
      Access.off(8, 6, Tool.NUT_DRIVER, BURNER_DOOR),
      LINE_VOLTAGE,
      MOVING_PARTS,
      CARBON_MONOXIDE,
      HOT_SURFACE,
      SHARP_EDGE),
  /** The circulating blower. */
  BLOWER(
      Access.off(10, 4, Tool.NUT_DRIVER, BLOWER_DOOR, CONTROL_BOX),
      LINE_VOLTAGE,
      MOVING_PARTS,
      SHARP_EDGE),
  /** The heat exchanger. */
  HEAT_EXCHANGER(
      Access.off(
          60, 30, Tool.NUT_DRIVER, BURNER_DOOR, BLOWER_DOOR, CONTROL_BOX, BURNER_BOX, MANIFOLD),
      LINE_VOLTAGE,
      MOVING_PARTS,
      FLAME,
      CARBON_MONOXIDE,
      GAS_JOINT,
      HOT_SURFACE,
      SHARP_EDGE),
  /** The hole for a probe in the flue. */
  FLUE(new Access(List.of(), 2, 1, Tool.SCREWDRIVER, false, false), CARBON_MONOXIDE, HOT_SURFACE);

  private final Access access;
  private final Set<Hazard> hazards;

  FurnacePart(Access access, Hazard... hazards) {
    this.access = access;
    this.hazards = Collections.unmodifiableSet(hazardSet(hazards));
  }

  private static Set<Hazard> hazardSet(Hazard... hazards) {
    Set<Hazard> set = EnumSet.noneOf(Hazard.class);
    Collections.addAll(set, hazards);
    return set;
  }

  /** How it is reached. */
  public Access access() {
    return access;
  }

  /** What can hurt there with power and gas on. */
  Set<Hazard> hazards(Ignition ignition) {
    if (!sparks(ignition)) {
      return hazards;
    }
    Set<Hazard> more = EnumSet.copyOf(hazards);
    more.add(Hazard.SPARK_VOLTAGE);
    return more;
  }

  private boolean sparks(Ignition ignition) {
    boolean sameWire = ignition == Ignition.SPARK_AND_SENSE;
    return switch (this) {
      case IGNITER -> !ignition.hotSurface();
      case ROD, INSULATOR, SENSE_LEAD, BOARD_CONNECTOR -> sameWire;
      default -> false;
    };
  }
}
