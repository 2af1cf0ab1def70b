package halfwave.work;

import java.util.Optional;

/** What is on although work needs it off. */
public enum StillOn {
  /** Power alone. */
  POWER,
  /** Gas alone. */
  GAS,
  /** Both. */
  POWER_AND_GAS;

  /** What of the two is on, or nothing. */
  public static Optional<StillOn> of(boolean power, boolean gas) {
    if (power) {
      return Optional.of(gas ? POWER_AND_GAS : POWER);
    }
    return gas ? Optional.of(GAS) : Optional.empty();
  }
}
