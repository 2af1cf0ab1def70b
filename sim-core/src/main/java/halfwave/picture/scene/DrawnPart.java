package halfwave.picture.scene;

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
  FRONT
}
