package halfwave.instrument;

/** At which end the sense lead is opened for a meter. */
public enum LeadEnd {
  /** At the board: what leaks from lead and cable passes through the meter as well. */
  BOARD,
  /** At the rod: only what enters the rod passes through the meter. */
  ROD
}
