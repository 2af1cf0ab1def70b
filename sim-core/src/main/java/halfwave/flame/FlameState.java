package halfwave.flame;

/**
 * What a flame looks like, judged in this order; the thresholds that are not physics [practice].
 */
public enum FlameState {
  /** No gas flows. */
  OUT,
  /** Rim gradient beyond the critical one (χ ≥ 1), or a gap of more than 10 mm: no flame. */
  BLOWN_OFF,
  /** Rim gradient below the flashback gradient: the flame burns inside the tube. */
  FLASHBACK,
  /** Gap of more than 3 mm between metal and flame. */
  LIFTED,
  /** The axis has risen by more than 3 mm at 15 mm from the port. */
  LAZY,
  /** φ_p below 1.35: hard flame with a strong inner cone, too much primary air. */
  LEAN,
  /** φ_p above 2.5: soft flame with yellow tips, too little primary air. */
  RICH,
  /** None of the others. */
  HEALTHY;

  /** Whether sheets of flame stand in front of the port. */
  public boolean burning() {
    return switch (this) {
      case OUT, BLOWN_OFF, FLASHBACK -> false;
      case LIFTED, LAZY, LEAN, RICH, HEALTHY -> true;
    };
  }
}
