package halfwave.flame;

/** How the burner's port holds the flame. */
public enum HolderKind {
  /** Ribs and small retention ports around the main port: slow rim, wrinkled inner cone. */
  RIBBED(0.5, 4),
  /** An open tube: full gradient of speed at the rim; the low end of the turbulent speed-up. */
  BARE(1, 2);

  private final double retentionRatio;
  private final double wrinklingRatio;

  HolderKind(double retentionRatio, double wrinklingRatio) {
    this.retentionRatio = retentionRatio;
    this.wrinklingRatio = wrinklingRatio;
  }

  /** f_ret: the rim's gradient of speed over that of a bare port (1) [practice]. */
  public double retentionRatio() {
    return retentionRatio;
  }

  /** Effective over laminar burning velocity of the inner cone (1), 2 to 4 [practice]. */
  public double wrinklingRatio() {
    return wrinklingRatio;
  }
}
