package halfwave.circuit;

/** The places in the sense circuit where things join, and where a meter lead can be put. */
public enum Point {
  /** The board's common (transformer neutral side); the reference of all voltages. */
  COMMON,
  /** Behind the ideal source inside the board; not reachable with a meter. */
  EMF,
  /** Between the source's resistance and its coupling capacitor. */
  FEED,
  /** The sense terminal T on the board. */
  TERMINAL,
  /** The board end of the sense lead. */
  LEAD,
  /** The metal of the rod, at its terminal. */
  ROD,
  /** The flame side of whatever covers the rod. */
  ROD_SURFACE,
  /** The flame side of whatever covers the burner. */
  BURNER_SURFACE,
  /** Burner, chassis and ground strap: one piece of metal. */
  CHASSIS,
  /** The plasma of the flame, where three or more electrodes meet. */
  PLASMA,
  /** A third electrode that belongs to the appliance: the spark electrode. */
  PROBE,
  /** A bare wire that a person holds in the flame. */
  WIRE,
  /** Where the sense lead is opened for a meter: the side away from the meter's own. */
  OPENED
}
