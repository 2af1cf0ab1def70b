package halfwave.fault;

/** What a fault is a fault of. */
public enum FaultGroup {
  /** The flame rod. */
  ROD,
  /** Its insulator. */
  INSULATOR,
  /** The sense lead and its connector. */
  LEAD,
  /** The way back from burner to board. */
  GROUND,
  /** The burners. */
  BURNER,
  /** Gas and valve. */
  GAS,
  /** Air and flue. */
  AIR,
  /** Igniter or spark. */
  IGNITER,
  /** The supply. */
  SUPPLY,
  /** Switches that guard the appliance. */
  SAFETY_SWITCH,
  /** The control board. */
  BOARD
}
