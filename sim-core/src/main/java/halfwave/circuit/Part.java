package halfwave.circuit;

/** What an element of the sense circuit is; failures and the voltage ladder name it. */
public enum Part {
  /** The ideal source inside the board. */
  SOURCE,
  /** The resistance behind which the source stands. */
  SOURCE_RESISTANCE,
  /** The capacitor (or the direct connection) between source and sense terminal. */
  COUPLING,
  /** The resistance from the sense terminal to common. */
  RETURN,
  /** The joint between sense terminal and lead; an open one is a pulled lead. */
  CONNECTOR,
  /** Leakage from lead and rod to the chassis. */
  INSULATION,
  /** Capacitance of the lead to the chassis. */
  CABLE,
  /** The lead's own resistance. */
  LEAD,
  /** Resistance of the film on the rod. */
  ROD_FILM,
  /** Capacitance of the film on the rod. */
  ROD_FILM_CAPACITANCE,
  /** The flame between rod and burner. */
  FLAME,
  /** The rod's contact with the plasma, where a third electrode makes it a part of its own. */
  ROD_SHEATH,
  /** The burner's contact with the plasma, where a third electrode makes it a part of its own. */
  BURNER_SHEATH,
  /** The third electrode's contact with the plasma. */
  PROBE_SHEATH,
  /** Resistance of the film on the burner. */
  BURNER_FILM,
  /** Capacitance of the film on the burner. */
  BURNER_FILM_CAPACITANCE,
  /** The way from the chassis back to common. */
  GROUND,
  /** The spark transformer's winding, between a spark electrode and the chassis. */
  SPARK_WINDING,
  /** A deposit that conducts one way. */
  DEPOSIT,
  /** A wire put where none belongs. */
  JUMPER,
  /** A meter's resistance. */
  METER,
  /** A meter's input capacitance. */
  METER_CAPACITANCE,
  /** A second meter's resistance. */
  SECOND_METER,
  /** A second meter's input capacitance. */
  SECOND_METER_CAPACITANCE,
  /** The contact of a wire in the flame with the plasma. */
  WIRE_SHEATH
}
