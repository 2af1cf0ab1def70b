package halfwave.bench;

import halfwave.quantity.Guard;
import halfwave.surface.ContaminationFilm;

/**
 * What has settled on the rod: a silica-like film. Zero thickness is a clean rod.
 *
 * @param thicknessMeters t (m); 0 to 1 mm
 * @param porosityRatio K_por, resistance over that of dense silica (1); 1 for a dense film, 100 to
 *     10,000 for a porous one [free parameter]
 * @param crackOhms resistance of the carbon and ash in its cracks, beside the film and the same at
 *     any temperature (Ω); infinity: none [practice: filmed rods that are weak but steady from a
 *     cold start on]
 */
public record Coat(double thicknessMeters, double porosityRatio, double crackOhms) {

  /** A clean rod. */
  public static final Coat CLEAN = new Coat(0, 1000, Double.POSITIVE_INFINITY);

  /** Checks the domain. */
  public Coat {
    Guard.inRange("thicknessMeters", thicknessMeters, 0, MOST_METERS);
    Guard.inRange("porosityRatio", porosityRatio, 1, 1e6);
    Guard.resistance("crackOhms", crackOhms);
  }

  /** Thickest film that the model can say (m). */
  private static final double MOST_METERS = 1e-3;

  /** From here a film has no bare metal between its islands any more (m) [practice, no source]. */
  private static final double COVERS_METERS = 0.15e-6;

  /**
   * Resistance of the cracks over the thickness of a film that has grown (Ω/m): a fouled rod's, 8
   * MΩ at 100 µm [practice, no source].
   */
  private static final double CRACK_OHMS_PER_METER = 8e6 / 100e-6;

  /** An even film without cracks. */
  public static Coat even(double thicknessMeters, double porosityRatio) {
    return new Coat(thicknessMeters, porosityRatio, Double.POSITIVE_INFINITY);
  }

  /**
   * Whether it covers the rod. A thinner one lies in islands with bare metal between them, which
   * takes all the current there is.
   */
  public boolean covers() {
    return thicknessMeters >= COVERS_METERS;
  }

  /**
   * The same after it has grown in the flame. As it closes it cracks; the cracks of a further layer
   * come on top. An even film stays even.
   *
   * @param siliconKilogramsPerCubicMeter silicon in the air that is burnt (kg/m³)
   * @param burningSeconds time with the rod in flame (s)
   */
  public Coat grown(double siliconKilogramsPerCubicMeter, double burningSeconds) {
    return thicker(
        ContaminationFilm.grownFromAirMeters(siliconKilogramsPerCubicMeter, burningSeconds), 1);
  }

  /**
   * The same with more on it, which cracks as it closes.
   *
   * @param moreMeters thickness that comes on top (m); zero or above
   * @param cracksRatio resistance of the new cracks over the usual (1); above zero
   */
  public Coat thicker(double moreMeters, double cracksRatio) {
    double thickness = Math.min(MOST_METERS, thicknessMeters + moreMeters);
    if (thickness < COVERS_METERS) {
      return new Coat(thickness, porosityRatio, crackOhms);
    }
    double perMeter = CRACK_OHMS_PER_METER * cracksRatio;
    double cracks =
        covers() ? crackOhms + perMeter * (thickness - thicknessMeters) : perMeter * thickness;
    return new Coat(thickness, porosityRatio, cracks);
  }
}
