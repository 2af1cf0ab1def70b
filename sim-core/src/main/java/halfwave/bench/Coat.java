package halfwave.bench;

import halfwave.quantity.Guard;

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
    Guard.inRange("thicknessMeters", thicknessMeters, 0, 1e-3);
    Guard.inRange("porosityRatio", porosityRatio, 1, 1e6);
    Guard.resistance("crackOhms", crackOhms);
  }

  /** An even film without cracks. */
  public static Coat even(double thicknessMeters, double porosityRatio) {
    return new Coat(thicknessMeters, porosityRatio, Double.POSITIVE_INFINITY);
  }
}
