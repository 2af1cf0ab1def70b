package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Not evidence: the trial numbers of design/model.md, section 6, come from an earlier and separate
 * program of the same model. They guard the reading of the model, and the directions.
 *
 * <p>Where this program differs, and why. (1) The trial's rod, 3.6 and 1.96 µA at 100 and 50 V,
 * used two or three passes for the mean source over the sheath's disc; the passes swing about the
 * answer (2.6, 4.7, 2.7 … µA at 100 V after 2, 3, 4 of them), which is 3.16 and 1.75 µA. (2) Its
 * burner collects 2 to 5 % more than the formulas as written give: as if the gap were 0.52 mm, not
 * 0.54. The two nearly cancel in the mean current. 10 % of each current covers both.
 */
class FlamePathRegressionTest {

  private static final double MICRO = 1e-6;
  private static final double SHARE = 0.10;
  private static final double SMALL = 0.15e-6;

  @Test
  void rodAndBurnerAlone() {
    FlameBench trial = FlameBench.trial();
    CurrentCurve rod = trial.rodLaw().ions();
    CurrentCurve burner = trial.burnerLaw().ions();
    // our own numbers; 0.5 % for another choice of stations and sheath edges
    assertThat(rod.currentAmps(100)).isCloseTo(3.156 * MICRO, within(0.016 * MICRO));
    assertThat(rod.currentAmps(50)).isCloseTo(1.745 * MICRO, within(0.009 * MICRO));
    // the trial's, with the differences explained above
    assertThat(rod.currentAmps(100)).isBetween(2.6 * MICRO, 4.7 * MICRO);
    assertThat(burner.currentAmps(100)).isCloseTo(11.0 * MICRO, within(0.025 * 11 * MICRO));
    assertThat(burner.currentAmps(50)).isCloseTo(4.7 * MICRO, within(0.05 * 4.7 * MICRO));
  }

  @Test
  void currentsBehindTheSource() {
    FlameBench trial = FlameBench.trial();
    near(trial.meanAmps(), 2.53);
    near(trial.alternatingAmps(), 6.8);
    near(trial.withSource(90).meanAmps(), 1.98);
    near(trial.withSource(90).alternatingAmps(), 5.6);
    near(trial.withSource(180).meanAmps(), 4.3);
  }

  @Test
  void lawForTheRodOutsideCostsAFewPercent() {
    // our own numbers
    FlameBench bench = FlameBench.standard();
    assertThat(bench.meanAmps()).isCloseTo(2.49 * MICRO, within(0.02 * MICRO));
    assertThat(bench.alternatingAmps()).isCloseTo(6.63 * MICRO, within(0.02 * MICRO));
  }

  @Test
  void resistanceAtTheRod() {
    FlameBench trial = FlameBench.trial();
    double healthy = trial.meanAmps();
    // −30 % and −66 %
    assertThat(trial.meanAmps(3e6) / healthy).isCloseTo(0.70, within(0.03));
    assertThat(trial.meanAmps(10e6) / healthy).isCloseTo(0.34, within(0.03));
  }

  @Test
  void gapOfTheFlame() {
    FlameBench trial = FlameBench.trial();
    double healthy = trial.meanAmps();
    // −35 %, −58 %, zero at 1.5 mm, −0.4 µA at 2 mm
    assertThat(trial.withGap(0.8e-3).meanAmps() / healthy).isCloseTo(0.65, within(0.03));
    assertThat(trial.withGap(1e-3).meanAmps() / healthy).isCloseTo(0.42, within(0.03));
    assertThat(trial.withGap(1.5e-3).meanAmps()).isCloseTo(0, within(SMALL));
    assertThat(trial.withGap(2e-3).meanAmps()).isCloseTo(-0.4 * MICRO, within(SMALL));
  }

  @Test
  void placesOfTheRod() {
    FlameBench trial = FlameBench.trial();
    near(rod(trial, 0, 12).meanAmps(), 3.1);
    near(rod(trial, 5, -14).meanAmps(), 3.7);
    near(rod(trial, 5, -17).meanAmps(), 0.6);
    // Along the mantle the passes count most: 1.0 and 0.1 µA in the trial, 0.7 and 0.4 here
    assertThat(rod(trial, 13, 12).meanAmps()).isBetween(0.4 * MICRO, 1.1 * MICRO);
    assertThat(rod(trial, 19, 12).meanAmps()).isBetween(0.05 * MICRO, 0.5 * MICRO);
  }

  @Test
  void gasPressure() {
    FlameBench trial = FlameBench.trial();
    double[] inches = {1, 1.75, 3.5, 7};
    double[] mean = {2.0, 2.3, 2.5, 2.5};
    double[] alternating = {4.6, 5.6, 6.8, 8.0};
    for (int k = 0; k < inches.length; k++) {
      FlameBench other = trial.withInchesOfWater(inches[k]);
      near(other.meanAmps(), mean[k]);
      near(other.alternatingAmps(), alternating[k]);
    }
  }

  @Test
  void tooMuchAirReversesTheSign() {
    // above about 1.35 times healthy
    assertThat(FlameBench.trial().withAirFactor(0.95 * 1.3).meanAmps()).isPositive();
    assertThat(FlameBench.trial().withAirFactor(0.95 * 1.4).meanAmps()).isNegative();
  }

  private static void near(double amps, double microamps) {
    assertThat(amps).isCloseTo(microamps * MICRO, within(SHARE * microamps * MICRO));
  }

  private static FlameBench rod(FlameBench bench, double y, double tip) {
    return bench.withRod(Rod.across(15e-3, y * 1e-3, -40e-3, tip * 1e-3, 1.6e-3));
  }
}
