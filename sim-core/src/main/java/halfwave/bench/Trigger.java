package halfwave.bench;

/** What brings out a fault that comes and goes. */
public enum Trigger {
  /** The burner compartment is warm. */
  HEAT,
  /** Something shakes: the inducer, or a hand. */
  VIBRATION,
  /** The circulating blower runs. */
  BLOWER,
  /** The air is damp, and nothing has dried it yet. */
  DAMP
}
