package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.ConductionLaw;
import org.junit.jupiter.api.Test;

/** What the flame's two-sided laws promise the circuit. */
abstract class FlameLawContract {

  /** The law under test. */
  abstract ConductionLaw law();

  @Test
  void isPassiveStrictlyRisingAndFinite() {
    ConductionLaw law = law();
    assertThat(law.currentAmps(0)).isZero();
    double up = 0;
    double down = 0;
    for (double v = 1e-4; v < 3000; v *= 1.02) {
      double plus = law.currentAmps(v);
      double minus = law.currentAmps(-v);
      assertThat(plus).isFinite().isGreaterThan(up);
      assertThat(minus).isFinite().isLessThan(down);
      up = plus;
      down = minus;
    }
  }

  @Test
  void slopeIsThatOfTheCurrent() {
    ConductionLaw law = law();
    for (double v = 0.01; v < 1000; v *= 1.17) {
      for (double volts : new double[] {v, -v}) {
        double h = 1e-4 * v;
        double slope = (law.currentAmps(volts + h) - law.currentAmps(volts - h)) / (2 * h);
        double told = law.differentialSiemens(volts);
        // The table has continuous slopes; across a knot their bend leaves h times the curvature,
        // 1e-4 times a few; 1e-18 S is the rounding of currents of a picoampere.
        assertThat(told).isPositive().isCloseTo(slope, within(2e-3 * told + 1e-18));
      }
    }
  }

  @Test
  void seriesCurrentObeysKirchhoff() {
    ConductionLaw law = law();
    for (double r : new double[] {0, 1e3, 2.2e6, 1e9}) {
      for (double e = -400; e <= 400; e += 7.3) {
        double i = law.currentInSeriesAmps(e, r);
        double v = e - i * r;
        // Newton ends within 1e-10 of the root of the voltage; in volts against the source, since
        // the current of a small difference of large voltages has no digits left.
        double slope = law.differentialSiemens(v);
        assertThat(law.currentAmps(v) - i)
            .isCloseTo(0, within(1e-9 * Math.abs(e) * slope + 1e-8 * Math.abs(i) + 1e-24));
      }
    }
  }

  @Test
  void seriesSlopeIsThatOfTheSeriesCurrent() {
    ConductionLaw law = law();
    for (double r : new double[] {0, 1e5, 2.2e6}) {
      for (double e = 1.1; e <= 400; e *= 1.4) {
        for (double emf : new double[] {e, -e}) {
          double h = 1e-4 * e;
          double slope =
              (law.currentInSeriesAmps(emf + h, r) - law.currentInSeriesAmps(emf - h, r)) / (2 * h);
          double told = law.seriesSlopeSiemens(emf, law.currentInSeriesAmps(emf, r), r);
          // as above
          assertThat(told).isPositive().isCloseTo(slope, within(3e-3 * told + 1e-18));
        }
      }
    }
  }

  @Test
  void refusesWhatIsNoVoltage() {
    for (double v : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> law().currentAmps(v)).isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> law().differentialSiemens(v))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
