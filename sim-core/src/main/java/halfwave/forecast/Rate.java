package halfwave.forecast;

/**
 * A number that nobody knows well enough: it is drawn, as a multiple of its usual value, from a
 * log-normal distribution of which 5 % lie below and 5 % above the stated range.
 */
public enum Rate {
  /** Film over 20 µm per 1000 h and mg of silicon in a cubic metre of gas [calc, factor 5]. */
  GROWTH(0.2, 5),
  /** Silicon in the air over what was said or is usual [judgement]. */
  SILICON(0.25, 4),
  /** K_por of the film over 1000: 100 to 10,000 [free parameter of the film]. */
  POROSITY(0.1, 10),
  /** Resistance of the film's cracks over 8 MΩ at 100 µm [practice, judgement]. */
  CRACKS(0.33, 3),
  /** What fingers leave on a rod over 0.1 µm [practice, judgement]. */
  SKIN_OIL(0.33, 3),
  /** What cleaning leaves over that of each way of cleaning [practice, judgement]. */
  RESIDUE(0.33, 3),
  /**
   * How much faster a scratched rod fouls: popular and unproven, hence from no faster to twice as
   * fast [judgement].
   */
  SCRATCHES(1, 2),
  /** Metal lost by oxidation over 1 µm of radius per 1000 h [memory, factor 5]. */
  THINNING(0.2, 5),
  /** Drooping over 0.1° per 1000 h at the rod's middle [judgement]. */
  DROOP(0.2, 5);

  private final Range usual;

  Rate(double lowRatio, double highRatio) {
    usual = new Range(lowRatio, highRatio);
  }

  /** Its range where nobody says otherwise. */
  public Range usual() {
    return usual;
  }
}
