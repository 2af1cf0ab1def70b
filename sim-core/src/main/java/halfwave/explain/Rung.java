package halfwave.explain;

/** The parts between which the source's voltage is shared, in the order of the path. */
public enum Rung {
  /** The resistance behind which the source stands. */
  SOURCE,
  /** The coupling capacitor. */
  COUPLING,
  /** Connector and sense lead. */
  LEAD,
  /** The film on the rod. */
  ROD_FILM,
  /** The layer between rod and plasma. */
  ROD_SHEATH,
  /** The plasma between rod and burner. */
  COLUMN,
  /** The layer between plasma and burner. */
  BURNER_SHEATH,
  /** Rust and scale on the burner face. */
  BURNER_FILM,
  /** The way from the chassis back to common. */
  GROUND
}
