package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What every member of {@link ElectrodeLaw} promises. */
abstract class ElectrodeLawContract {

  /** The law under test. */
  abstract ElectrodeLaw law();

  @Test
  void isZeroAtZero() {
    assertThat(law().currentAmps(0)).isZero();
  }

  @Test
  void neverFallsAndStaysFinite() {
    double last = 0;
    for (double v = 1e-6; v < 1e6; v *= 1.03) {
      double i = law().currentAmps(v);
      assertThat(i).isFinite().isGreaterThanOrEqualTo(last);
      last = i;
    }
    assertThat(last).isPositive();
  }

  @Test
  void doesNotJump() {
    // Over 0.1 % of voltage no mechanism changes faster than V²; twice that leaves room for kinks
    // where two regimes meet.
    for (double v = 1e-3; v < 1e4; v *= 1.013) {
      double i = law().currentAmps(v);
      assertThat(law().currentAmps(v * 1.001)).isCloseTo(i, within(0.004 * i));
    }
  }

  @Test
  void refusesWhatIsNoVoltage() {
    for (double v : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1}) {
      assertThatThrownBy(() -> law().currentAmps(v)).isInstanceOf(IllegalArgumentException.class);
    }
  }
}
