package halfwave.bench;

import halfwave.quantity.Guard;

/**
 * What has settled on the rod: a silica-like film. Zero thickness is a clean rod.
 *
 * @param thicknessMeters t (m); 0 to 1 mm
 * @param porosityRatio K_por, resistance over that of dense silica (1); 1 for a dense film, 100 to
 *     10,000 for a porous one [free parameter]
 */
public record Coat(double thicknessMeters, double porosityRatio) {

  /** A clean rod. */
  public static final Coat CLEAN = new Coat(0, 1000);

  /** Checks the domain. */
  public Coat {
    Guard.inRange("thicknessMeters", thicknessMeters, 0, 1e-3);
    Guard.inRange("porosityRatio", porosityRatio, 1, 1e6);
  }
}
