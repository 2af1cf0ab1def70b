package halfwave.gui.presentation.evidence;

import halfwave.bench.Parameter;
import halfwave.board.Stage;
import halfwave.circuit.Part;
import halfwave.explain.Rung;
import halfwave.gui.presentation.bench.LitParts;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.scene.DrawnPart;
import halfwave.work.Aspect;
import java.util.EnumSet;
import java.util.Set;

/** Which parts of the drawing a sentence speaks about: by what it says, and by what it names. */
public final class SaidParts {

  private SaidParts() {}

  /** The parts of a message; none where it speaks of nothing that is drawn. */
  public static Set<DrawnPart> of(Message message) {
    Set<DrawnPart> parts = EnumSet.noneOf(DrawnPart.class);
    parts.addAll(said(message.key()));
    for (Argument argument : message.arguments()) {
      if (argument instanceof Argument.Name name) {
        parts.addAll(named(name.constant()));
      } else if (argument instanceof Argument.Nested nested) {
        parts.addAll(of(nested.message()));
      }
    }
    return Set.copyOf(parts);
  }

  /** What a sentence speaks of whatever it names. */
  private static Set<DrawnPart> said(MessageKey key) {
    return switch (key) {
      case ACCOUNT_FLAME -> Set.of(DrawnPart.FLAME, DrawnPart.BURNER);
      case ACCOUNT_NO_FLAME, ACCOUNT_UNLIT -> Set.of(DrawnPart.FLAME, DrawnPart.GAS_VALVE);
      case ACCOUNT_NOT_AT_ROD -> Set.of(DrawnPart.FRONT, DrawnPart.ROD);
      case ACCOUNT_ROD_OUT, ACCOUNT_ROD_IN_FLAME, ACCOUNT_ROD_MOVED ->
          Set.of(DrawnPart.ROD, DrawnPart.FLAME);
      case ACCOUNT_ATTACHMENT -> Set.of(DrawnPart.FLAME, DrawnPart.BURNER);
      case ACCOUNT_SCALE -> Set.of(DrawnPart.BURNER);
      case ACCOUNT_SERIES_OHMS -> Set.of(DrawnPart.CONNECTOR, DrawnPart.GROUND_STRAP);
      case ACCOUNT_LEAD_OFF -> Set.of(DrawnPart.CONNECTOR, DrawnPart.SENSE_LEAD);
      case ACCOUNT_GROUND_LOST -> Set.of(DrawnPart.GROUND_STRAP, DrawnPart.CHASSIS);
      case ACCOUNT_ROD_TOUCHES -> Set.of(DrawnPart.ROD, DrawnPart.BURNER);
      case ACCOUNT_JUMPER -> Set.of(DrawnPart.JUMPER, DrawnPart.ROD);
      case ACCOUNT_LEAKAGE -> Set.of(DrawnPart.LEAK, DrawnPart.INSULATOR);
      case ACCOUNT_FILM -> Set.of(DrawnPart.ROD);
      case ACCOUNT_HEALTHY,
          ACCOUNT_WEAK,
          ACCOUNT_TOO_WEAK,
          ACCOUNT_REVERSED,
          ACCOUNT_NO_DC,
          ACCOUNT_METER,
          ACCOUNT_METER_SLIGHT,
          ACCOUNT_METER_LOADS,
          ACCOUNT_METER_CUTS ->
          Set.of(DrawnPart.METER, DrawnPart.SENSE_TERMINAL);
      case ACCOUNT_METER_NONE, ACCOUNT_METER_IDLE -> Set.of(DrawnPart.METER);
      case ACCOUNT_METER_OPENING ->
          Set.of(DrawnPart.METER, DrawnPart.CONNECTOR, DrawnPart.SENSE_LEAD);
      case ACCOUNT_CONDUCTS_ONLY ->
          Set.of(DrawnPart.ROD, DrawnPart.BURNER, DrawnPart.INSULATOR, DrawnPart.SENSE_LEAD);
      case ACCOUNT_SENSE_GOOD,
          ACCOUNT_SENSE_WEAK,
          ACCOUNT_SENSE_SMALL,
          ACCOUNT_SENSE_REVERSED,
          ACCOUNT_SENSE_NOTHING,
          ACCOUNT_IF_LIT ->
          Set.of(DrawnPart.BOARD, DrawnPart.SENSE_TERMINAL);
      case ACCOUNT_NO_POWER -> Set.of(DrawnPart.BOARD, DrawnPart.SUPPLY);
      // the ions are collected by the cathode: it decides how much flows
      case ACCOUNT_ROD_POSITIVE -> Set.of(DrawnPart.FLAME, DrawnPart.BURNER);
      case ACCOUNT_ROD_NEGATIVE -> Set.of(DrawnPart.FLAME, DrawnPart.ROD);
      case ACCOUNT_RECTIFIES, ACCOUNT_RECTIFIES_BACKWARDS ->
          Set.of(DrawnPart.FLAME, DrawnPart.ROD, DrawnPart.BURNER);
      case ACCOUNT_BOARD -> Set.of(DrawnPart.BOARD, DrawnPart.STATUS_LIGHT);
      case BOARD_POWER_LOST,
          BOARD_POWER_BACK,
          BOARD_POWER_BACK_LOCKED,
          BOARD_POWER_BACK_BLOWER,
          BOARD_LINE_REVERSED ->
          Set.of(DrawnPart.BOARD, DrawnPart.SUPPLY);
      case BOARD_SIGNAL,
          BOARD_SIGNAL_GONE,
          BOARD_PROVED,
          BOARD_FLAME_LOST,
          BOARD_LOSSES_USED_UP,
          BOARD_FALSE_FLAME,
          BOARD_FALSE_FLAME_GONE,
          BOARD_FALSE_FLAME_STAYS ->
          Set.of(DrawnPart.BOARD, DrawnPart.SENSE_TERMINAL, DrawnPart.FLAME);
      case BOARD_TRIAL_FAILED, BOARD_TRIALS_USED_UP, BOARD_PILOT_PROVED ->
          Set.of(DrawnPart.BOARD, DrawnPart.GAS_VALVE, DrawnPart.FLAME);
      case BOARD_WARMED_UP -> Set.of(DrawnPart.BOARD, DrawnPart.IGNITER, DrawnPart.GAS_VALVE);
      default -> other(key);
    };
  }

  /** What the board says is about the board, what a meter cautions about is about the meter. */
  private static Set<DrawnPart> other(MessageKey key) {
    if (key.name().startsWith("BOARD_")) {
      return Set.of(DrawnPart.BOARD);
    }
    return key.name().startsWith("METER_") ? Set.of(DrawnPart.METER) : Set.of();
  }

  private static Set<DrawnPart> named(Enum<?> constant) {
    if (constant instanceof Part part) {
      return Set.of(LitParts.of(part));
    } else if (constant instanceof Rung rung) {
      return rung(rung);
    } else if (constant instanceof Parameter parameter) {
      return parameter(parameter);
    } else if (constant instanceof Aspect aspect) {
      return aspect(aspect);
    } else if (constant instanceof Stage stage) {
      return stage.gas() ? Set.of(DrawnPart.GAS_VALVE) : Set.of();
    }
    return Set.of();
  }

  private static Set<DrawnPart> rung(Rung rung) {
    return switch (rung) {
      case SOURCE, COUPLING -> Set.of(DrawnPart.BOARD);
      case LEAD -> Set.of(DrawnPart.CONNECTOR, DrawnPart.SENSE_LEAD);
      case ROD_FILM, ROD_SHEATH -> Set.of(DrawnPart.ROD);
      case COLUMN -> Set.of(DrawnPart.FLAME);
      case BURNER_SHEATH, BURNER_FILM -> Set.of(DrawnPart.BURNER);
      case GROUND -> Set.of(DrawnPart.GROUND_STRAP);
    };
  }

  private static Set<DrawnPart> parameter(Parameter parameter) {
    return switch (parameter) {
      case SOURCE_VOLTS, SOURCE_OHMS, SENSE_SUPPLY, INPUT_OFFSET -> Set.of(DrawnPart.BOARD);
      case GAS_PRESSURE -> Set.of(DrawnPart.GAS_VALVE);
      case PRIMARY_AIR, ORIFICE, BURNER_SCALE -> Set.of(DrawnPart.BURNER);
      case BURNER_ATTACHMENT -> Set.of(DrawnPart.FLAME, DrawnPart.BURNER);
      case ION_STRENGTH -> Set.of(DrawnPart.FLAME);
      case ROD_ACROSS,
          ROD_UP,
          ROD_ALONG,
          ROD_TURN,
          ROD_TILT,
          ROD_BEND,
          ROD_RADIUS,
          ROD_TEMPERATURE,
          ROD_FILM,
          ROD_CRACKS,
          SILICON ->
          Set.of(DrawnPart.ROD);
      case CONNECTOR -> Set.of(DrawnPart.CONNECTOR);
      case LEAD, CABLE -> Set.of(DrawnPart.SENSE_LEAD);
      case LEAKAGE -> Set.of(DrawnPart.LEAK, DrawnPart.INSULATOR);
      case JUMPER -> Set.of(DrawnPart.JUMPER);
      case DEPOSIT -> Set.of(DrawnPart.DEPOSIT);
      case GROUND -> Set.of(DrawnPart.GROUND_STRAP);
    };
  }

  private static Set<DrawnPart> aspect(Aspect aspect) {
    return switch (aspect) {
      case ROD_COAT, ROD_SHAPE, ROD_DISTANCE, ROD_BROKEN -> Set.of(DrawnPart.ROD);
      case ROD_CONTACT -> Set.of(DrawnPart.ROD, DrawnPart.JUMPER);
      case INSULATOR_LEAK, DAMP_LEAK -> Set.of(DrawnPart.INSULATOR, DrawnPart.LEAK);
      case DEPOSIT -> Set.of(DrawnPart.INSULATOR, DrawnPart.DEPOSIT);
      case LEAD_CHAFE, LEAD_RESISTANCE -> Set.of(DrawnPart.SENSE_LEAD);
      case CONNECTOR -> Set.of(DrawnPart.CONNECTOR);
      case GROUND -> Set.of(DrawnPart.GROUND_STRAP);
      case BURNER_SCALE, PORTS, AIR -> Set.of(DrawnPart.BURNER);
      case BLOWER_AIR -> Set.of(DrawnPart.FLAME);
      case CROSSOVER -> Set.of(DrawnPart.FRONT);
      case GAS_PRESSURE, GAS_COCK, VALVE_SHUT, VALVE_OPEN -> Set.of(DrawnPart.GAS_VALVE);
      case VALVE_DRIVER -> Set.of(DrawnPart.BOARD, DrawnPart.VALVE_TERMINALS);
      case IGNITER -> Set.of(DrawnPart.IGNITER);
      case DOOR, POLARITY -> Set.of(DrawnPart.SUPPLY);
      case SENSE_SUPPLY, INPUT_OFFSET, BOARD -> Set.of(DrawnPart.BOARD);
      // these are no part of the drawing; it is the board that sees to them
      case INDUCER, BLOWER, PRESSURE_OPEN, PRESSURE_CLOSED, LIMIT -> Set.of(DrawnPart.BOARD);
    };
  }
}
