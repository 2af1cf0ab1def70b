package halfwave.board;

/** Currents that a sense amplifier meets. Sizes are [common practice, no source]. */
enum SenseCurrent {
  NOTHING(0, 0),
  GOOD_FLAME(4e-6, 8e-6),
  WEAK_FLAME(1.2e-6, 4e-6),
  /** Between drop-out and pick-up of most boards. */
  FADING_FLAME(0.6e-6, 3e-6),
  /** Dirt or moisture: both half waves alike. */
  LEAK(0, 15e-6),
  SHORT(0, 100e-6),
  /** A rectifier the wrong way round. */
  REVERSED(-4e-6, 8e-6),
  HUGE_AC(-0.2e-6, 300e-6),
  FLICKER(4e-6, 8e-6);

  /** A quarter of the shortest time constant of a shipped board, 0.1 s. */
  static final long SAMPLE_MILLIS = 25;

  private static final long FLICKER_MILLIS = 250;

  private final double meanAmps;
  private final double rmsAmps;

  SenseCurrent(double meanAmps, double rmsAmps) {
    this.meanAmps = meanAmps;
    this.rmsAmps = rmsAmps;
  }

  boolean steady() {
    return this != FLICKER;
  }

  /** No DC from board to rod. */
  boolean provesNothing() {
    return meanAmps <= 0;
  }

  double meanAmps(long atMillis) {
    return burns(atMillis) ? meanAmps : 0;
  }

  double rmsAmps(long atMillis) {
    return burns(atMillis) ? rmsAmps : 0;
  }

  private boolean burns(long atMillis) {
    return steady() || atMillis / FLICKER_MILLIS % 2 == 0;
  }
}
