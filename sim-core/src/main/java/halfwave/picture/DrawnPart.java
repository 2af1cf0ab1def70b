package halfwave.picture;

import halfwave.work.FurnacePart;
import java.util.Optional;

/** What can be pointed at on the drawing of a bench. */
public enum DrawnPart {
  /** The control board. */
  BOARD,
  /** Its status light. */
  STATUS_LIGHT,
  /** Its sense terminal. */
  SENSE_TERMINAL,
  /** Its common terminal. */
  COMMON_TERMINAL,
  /** Its terminals for the gas valve. */
  VALVE_TERMINALS,
  /** The sense lead from the connector to the rod. */
  SENSE_LEAD,
  /** The connector of the sense lead at the board. */
  CONNECTOR,
  /** The metal of the flame rod. */
  ROD,
  /** Its ceramic, with the bracket. */
  INSULATOR,
  /** The burner under the rod. */
  BURNER,
  /** The flame. */
  FLAME,
  /** The way from the burner over the chassis to the board's common. */
  GROUND_STRAP,
  /** The chassis. */
  CHASSIS,
  /** The igniter or the spark electrode. */
  IGNITER,
  /** The gas valve with its pipe. */
  GAS_VALVE,
  /** A leak from lead or ceramic to the chassis. */
  LEAK,
  /** A wire or a contact from the rod to the chassis. */
  JUMPER,
  /** A deposit that conducts one way. */
  DEPOSIT,
  /** The meter. */
  METER,
  /** The line connections. */
  SUPPLY,
  /** The view from the front. */
  FRONT;

  /** What a technician would look at or work on there; nothing where it is no part of a furnace. */
  public Optional<FurnacePart> furnacePart() {
    return switch (this) {
      case BOARD, SENSE_TERMINAL, COMMON_TERMINAL -> Optional.of(FurnacePart.BOARD);
      case STATUS_LIGHT -> Optional.of(FurnacePart.STATUS_LIGHT);
      case VALVE_TERMINALS -> Optional.of(FurnacePart.VALVE_TERMINALS);
      case SENSE_LEAD -> Optional.of(FurnacePart.SENSE_LEAD);
      case CONNECTOR -> Optional.of(FurnacePart.BOARD_CONNECTOR);
      case ROD -> Optional.of(FurnacePart.ROD);
      case INSULATOR, DEPOSIT -> Optional.of(FurnacePart.INSULATOR);
      case BURNER, FRONT -> Optional.of(FurnacePart.BURNERS);
      case FLAME -> Optional.of(FurnacePart.SIGHT_GLASS);
      case GROUND_STRAP -> Optional.of(FurnacePart.GROUND_STRAP);
      case IGNITER -> Optional.of(FurnacePart.IGNITER);
      case GAS_VALVE -> Optional.of(FurnacePart.GAS_VALVE);
      case SUPPLY -> Optional.of(FurnacePart.SUPPLY);
      case CHASSIS, LEAK, JUMPER, METER -> Optional.empty();
    };
  }
}
