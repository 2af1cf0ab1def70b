package halfwave.io.bench;

/** Where a table of a conduction law is worth taking: denser near zero, where laws bend most. */
final class TablePoints {

  /** Points on each side of zero. */
  private static final int SIDE = 100;

  private TablePoints() {}

  /**
   * Voltages from −most to +most through zero, rising, their distance growing as the square.
   *
   * @param most the largest voltage (V); above zero
   */
  static double[] volts(double most) {
    double[] volts = new double[2 * SIDE + 1];
    for (int k = 1; k <= SIDE; k++) {
      double share = (double) k / SIDE;
      volts[SIDE + k] = most * share * share;
      volts[SIDE - k] = -volts[SIDE + k];
    }
    return volts;
  }
}
