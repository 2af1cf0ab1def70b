package halfwave.flame;

/**
 * Where the voltage of a flame path goes at one current; the three add up to it and have its sign.
 *
 * @param rodVolts across the rod's sheath or contact (V)
 * @param columnVolts along the plasma between the electrodes (V)
 * @param burnerVolts across the burner's sheath or contact (V)
 */
public record FlameDrops(double rodVolts, double columnVolts, double burnerVolts) {

  /** Voltage of the whole path, rod surface minus burner surface (V). */
  public double totalVolts() {
    return rodVolts + columnVolts + burnerVolts;
  }
}
