package halfwave.bench;

/** How the appliance lights its gas. */
public enum Ignition {
  /** A glowing igniter, and a flame rod of its own. */
  HOT_SURFACE,
  /** A spark at the burner, and a flame rod of its own. */
  DIRECT_SPARK,
  /** One electrode that sparks and then senses. */
  SPARK_AND_SENSE,
  /** A spark lights a pilot, which is sensed and lights the burner. */
  INTERMITTENT_PILOT
}
