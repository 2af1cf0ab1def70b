package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** How well the prepared table stands for the laws it is made of. */
class CurrentCurvePropertyTest {

  @Test
  void squareRootLawIsExact() {
    CurrentCurve curve = table(v -> 3e-7 * Math.sqrt(v));
    for (double v = 0.001; v < 2000; v *= 1.3) {
      double i = 3e-7 * Math.sqrt(v) + CurrentCurve.AIR_SIEMENS * v;
      assertThat(curve.currentAmps(v)).isCloseTo(i, within(1e-12 * i)); // rounding
    }
  }

  @Test
  void smoothLawsAreMetBetweenTheKnots() {
    ElectrodeLaw gap = new GapLaw(0.54e-3, 0.052, 0.22, 1, 5e-4);
    ElectrodeLaw sheath = new FlowingSourceSheath(2e19, 1e16, 3, 1.6e-3, 1.6e-3, 0.01);
    CurrentCurve ofGap = table(gap::currentAmps);
    CurrentCurve ofSheath = table(sheath::currentAmps);
    for (double v = 5; v < 300; v *= 1.07) {
      // cubic between knots 0.54 √V apart
      assertThat(ofGap.currentAmps(v))
          .isCloseTo(gap.currentAmps(v), within(0.03 * gap.currentAmps(v)));
      assertThat(ofSheath.currentAmps(v))
          .isCloseTo(sheath.currentAmps(v), within(1e-3 * sheath.currentAmps(v)));
    }
  }

  @Test
  void voltsAtIsTheInverse() {
    CurrentCurve curve = table(v -> 3e-7 * Math.sqrt(v)).inSeriesWith(5e4);
    for (double v = 0.01; v < 2000; v *= 1.5) {
      assertThat(curve.voltsAt(curve.currentAmps(v))).isCloseTo(v, within(1e-7 * v));
    }
  }

  @Test
  void knotsLieOnTheCurve() {
    CurrentCurve curve = table(v -> 3e-7 * Math.sqrt(v)).inSeriesWith(5e4);
    double[] volts = curve.knotVolts();
    double[] amps = curve.knotAmps();
    assertThat(volts).hasSize(CurrentCurve.INTERVALS + 1).isSorted();
    for (int k = 1; k < volts.length; k++) {
      assertThat(curve.currentAmps(volts[k])).isCloseTo(amps[k], within(1e-9 * amps[k]));
    }
  }

  /** A table that bends both ways behind megohms: Newton alone swings between two places. */
  @Test
  void currentInSeriesIsSolvedEverywhere() {
    double[] amps = new double[CurrentCurve.INTERVALS + 1];
    amps[1] = 1.3e-8;
    amps[2] = 1.3e-7;
    for (int k = 3; k < amps.length; k++) {
      amps[k] = amps[k - 1] + 7e-8;
    }
    CurrentCurve curve = CurrentCurve.of(amps, 0, 0);
    for (double ohms : new double[] {1e5, 1e7, 2e8, 1e9}) {
      for (double emf = 0.05; emf < 300; emf *= 1.0005) {
        double solved = curve.currentInSeriesAmps(emf, ohms);
        double volts = emf - solved * ohms;
        // a step below 3e-6 of the root leaves 1e-10, and the volts are a difference of large ones
        assertThat(curve.voltsAt(solved)).isCloseTo(volts, within(1e-8 * emf));
      }
    }
  }

  private static CurrentCurve table(DoubleUnaryOperator law) {
    double[] amps = new double[CurrentCurve.INTERVALS + 1];
    for (int k = 1; k < amps.length; k++) {
      amps[k] = law.applyAsDouble(CurrentCurve.tableVolts(k));
    }
    return CurrentCurve.of(amps, 0, 0);
  }
}
