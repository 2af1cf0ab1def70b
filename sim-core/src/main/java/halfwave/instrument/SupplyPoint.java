package halfwave.instrument;

/** Where a lead can be put on the supply, for checks of polarity and phase. */
public enum SupplyPoint {
  /** Line, L1. */
  LINE,
  /** Neutral. */
  NEUTRAL,
  /** Ground and chassis. */
  GROUND,
  /** The hot end of the control transformer's secondary, R. */
  CONTROL_HOT,
  /** The common end of the control transformer's secondary, C. */
  CONTROL_COMMON
}
