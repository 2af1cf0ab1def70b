package halfwave.quiz;

/** What a service call asks for. */
public enum Objective {
  /** To read the sequence of operation and the board's light. */
  SEQUENCE,
  /** The rod, what is on it, and where it stands. */
  ROD,
  /** Lead, connector and insulator. */
  SENSE_PATH,
  /** The burner as the other electrode, and the way to ground. */
  RETURN_PATH,
  /** Gas, air, burners, and how the flame travels. */
  FLAME,
  /** Igniter and valve. */
  IGNITION,
  /** Supply, door and the switches that guard. */
  GUARDS,
  /** The control board, last of all. */
  BOARD
}
