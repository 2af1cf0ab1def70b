package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Ion collection against the check values of the model. Sources: closed forms worked out by hand
 * ("closed form"), a one-dimensional drift-diffusion-Poisson solution ("calc"), and the works named
 * at the line. Tolerances without a word are half the last digit quoted.
 */
class SheathReferenceTest {

  private static final double Q = 2.4e19;
  private static final double A = 1.6e-3;

  @Test
  void planarSourceSheath() {
    double j = SourceSheath.planarAmpsPerSquareMeter(Q, 1e-3, 127);
    assertThat(j).isCloseTo(0.01342, within(0.5e-5)); // closed form
    assertThat(j / (1.602176634e-19 * Q)).isCloseTo(3.49e-3, within(0.5e-5)); // closed form
    // calc: 0.01372, diffusion left out here; 3 % is the model's own statement of the difference
    assertThat(j).isCloseTo(0.01372, within(0.03 * 0.01372));
  }

  @Test
  void cylindricalSourceSheath() {
    SourceSheath law = new SourceSheath(Q, 1e-3, A, 25e-3);
    assertThat(law.currentAmps(127)).isCloseTo(5.37e-6, within(0.5e-8)); // closed form
    assertThat(law.sheathRadiusMeters(127)).isCloseTo(4.51e-3, within(0.5e-5)); // closed form
    assertThat(law.currentAmps(10)).isCloseTo(1.12e-6, within(0.5e-8)); // closed form
    assertThat(law.currentAmps(50)).isCloseTo(2.95e-6, within(0.5e-8)); // closed form
    assertThat(law.currentAmps(170)).isCloseTo(6.52e-6, within(0.5e-8)); // closed form
  }

  @Test
  void cylindricalSourceSheathAgainstTheFullSolution() {
    SourceSheath law = new SourceSheath(Q, 1e-3, A, 25e-3);
    // calc. Diffusion brings about as much as another two volts would, which is left out.
    assertThat(law.currentAmps(10)).isBetween(0.8 * 1.35e-6, 1.35e-6);
    assertThat(law.currentAmps(50)).isBetween(0.92 * 3.16e-6, 3.16e-6);
    assertThat(law.currentAmps(127)).isBetween(0.95 * 5.58e-6, 5.58e-6);
    assertThat(law.currentAmps(170)).isBetween(0.96 * 6.73e-6, 6.73e-6);
  }

  @Test
  void thickSheathWithoutSource() {
    ThickSheath law = new ThickSheath(1e16, 3, 1.6e-3, A, 0.01);
    assertThat(law.currentAmps(127)).isCloseTo(0.528e-6, within(0.5e-9)); // closed form
    assertThat(law.sheathRadiusMeters(127)).isCloseTo(5.50e-3, within(0.5e-5)); // closed form
    BurntGasSheath both = new BurntGasSheath(1e16, 3, 1.6e-3, A, 0.01);
    assertThat(both.thin().currentAmps(127)).isCloseTo(0.747e-6, within(0.5e-9)); // closed form
    assertThat(both.currentAmps(127)).isEqualTo(law.currentAmps(127));
  }

  @Test
  void sourceAndFlowTogether() {
    FlowingSourceSheath law = new FlowingSourceSheath(Q, 1e16, 3, 1.6e-3, A, 0.01);
    assertThat(law.currentAmps(127)).isCloseTo(2.588e-6, within(0.5e-9)); // closed form
    assertThat(law.sheathRadiusMeters(127)).isCloseTo(4.516e-3, within(0.5e-6)); // closed form
  }

  @Test
  void flowingSourceSheathContainsBothLimits() {
    for (double v = 1; v < 400; v *= 1.5) {
      double source = new SourceSheath(Q, 1.6e-3, A, 0.01).currentAmps(v);
      double flow = new ThickSheath(1e16, 3, 1.6e-3, A, 0.01).currentAmps(v);
      // closed form; 1e-5 is the eight-point quadrature
      assertThat(new FlowingSourceSheath(Q, 0, 3, 1.6e-3, A, 0.01).currentAmps(v))
          .isCloseTo(source, within(1e-5 * source));
      assertThat(new FlowingSourceSheath(0, 1e16, 3, 1.6e-3, A, 0.01).currentAmps(v))
          .isCloseTo(flow, within(1e-5 * flow));
    }
  }

  @Test
  void thinSheathCoefficients() {
    // closed form, quoted to four digits; the sphere's 12.13 also seen: propane/air flame probe
    // study, manuscript.isc.ac inventory 1421607
    ThinSheath law = new ThinSheath(1e16, 3, 1.6e-3, A, 0.01);
    double em = 8.8541878128e-12 * 1.6e-3;
    double neu = 1e16 * 1.602176634e-19 * 3;
    double common = Math.sqrt(Math.sqrt(em)) * StrictMath.pow(neu, 0.75) * Math.sqrt(127);
    assertThat(law.currentAmps(127) / (common * StrictMath.pow(A, 0.25) * 0.01))
        .isCloseTo(5.264, within(0.5e-3));
    assertThat(law.sphereAmps(127) / (common * StrictMath.pow(A, 1.25)))
        .isCloseTo(12.13, within(0.5e-2));
  }

  @Test
  void exponentOfCurrentInDensity() {
    double one = new ThinSheath(1e16, 3, 1.6e-3, A, 0.01).sphereAmps(100);
    double two = new ThinSheath(2e16, 3, 1.6e-3, A, 0.01).sphereAmps(100);
    double exponent = StrictMath.log(two / one) / StrictMath.log(2);
    // seen: J. Phys. D 3 (1970) 1255, 0.69 ± 0.04 measured beside the theory's 0.75: 1.5 times the
    // stated error
    assertThat(exponent).isCloseTo(0.75, within(1e-9)).isCloseTo(0.69, within(0.061));
  }

  @Test
  void gapCurrentDensity() {
    // closed form (Mott and Gurney)
    assertThat(GapLaw.unsaturatedAmpsPerSquareMeter(5e-4, 127, 1e-3))
        .isCloseTo(0.0803, within(0.5e-4));
    assertThat(GapLaw.unsaturatedAmpsPerSquareMeter(5e-4, 127, 2e-3))
        .isCloseTo(0.0100, within(0.5e-4));
    assertThat(GapLaw.unsaturatedAmpsPerSquareMeter(5e-4, 127, 3e-3))
        .isCloseTo(0.00298, within(0.5e-5));
  }

  @Test
  void gapLawIsTheIntegralAlongTheSheet() {
    double g = 0.54e-3;
    double j = 0.05;
    double p = 0.22;
    for (double m : new double[] {1.0, 0.6}) {
      for (double v : new double[] {5, 20, 60, 170}) {
        double sum = 0;
        double step = 1e-6;
        for (double s = 0.5 * step; s < 0.2; s += step) {
          double y = g + m * s;
          double free = GapLaw.unsaturatedAmpsPerSquareMeter(5e-4, v, y);
          sum += Math.min(j, free) * step * p;
        }
        double i = new GapLaw(g, j, p, m, 5e-4).currentAmps(v);
        // midpoint sum of 1 µm steps; what lies beyond 0.2 m is 1e-5 of the whole
        assertThat(i).isCloseTo(sum, within(1e-4 * sum));
      }
    }
  }

  @Test
  void outsideLawTendsToThePlaneGap() {
    // closed form: close to the rod half a circumference of plane gap, here 1 % of the radius away
    double d = 0.01 * A;
    double plane = Math.PI * A * GapLaw.unsaturatedAmpsPerSquareMeter(5e-4, 1, d);
    double i = new OutsideLaw(d, 1e9, 5e-4, A, 1).currentAmps(1);
    assertThat(i).isCloseTo(plane, within(0.02 * plane)); // terms of the order d/a
  }
}
