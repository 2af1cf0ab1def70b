package halfwave.board;

/** How an appliance lights its gas. */
public enum Ignition {
  /** A glowing igniter of silicon carbide, and a flame rod of its own. */
  HOT_SURFACE,
  /** A glowing igniter of silicon nitride, which is hot sooner, and a flame rod of its own. */
  HOT_SURFACE_NITRIDE,
  /** A spark at the burner, and a flame rod of its own. */
  DIRECT_SPARK,
  /** One electrode that sparks and then senses. */
  SPARK_AND_SENSE,
  /** A spark lights a pilot, which is sensed and lights the burner. */
  INTERMITTENT_PILOT;

  /** Whether an igniter has to glow before the gas may come. */
  public boolean hotSurface() {
    return this == HOT_SURFACE || this == HOT_SURFACE_NITRIDE;
  }

  /** Whether a board made for this can work an appliance made for the other. */
  public boolean fits(Ignition other) {
    return hotSurface() == other.hotSurface()
        && (this == INTERMITTENT_PILOT) == (other == INTERMITTENT_PILOT);
  }
}
