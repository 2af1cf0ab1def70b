package halfwave.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** True-rms against mean-responding; the source is the closed form in each comment. */
class AlternatingMethodReferenceTest {

  private static final int SAMPLES = 100_000;

  private static double[] wave(java.util.function.DoubleUnaryOperator ofPhase) {
    double[] wave = new double[SAMPLES];
    for (int n = 0; n < SAMPLES; n++) {
      wave[n] = ofPhase.applyAsDouble(2 * Math.PI * n / SAMPLES);
    }
    return wave;
  }

  /** Kinks and steps are sampled to their share of the samples, some 1e-5. */
  private static org.assertj.core.data.Offset<Double> sampling() {
    return within(2e-5);
  }

  /** A sine of peak 1, whatever its mean: 1/√2 on both. */
  @Test
  void bothAgreeOnASine() {
    double[] sine = wave(x -> 0.7 + StrictMath.sin(x));
    for (AlternatingMethod method : AlternatingMethod.values()) {
      assertThat(method.of(sine)).isCloseTo(Math.sqrt(0.5), sampling());
    }
  }

  /**
   * A half sine of peak 1: mean 1/π, rms 1/2, so rms/DC π/2 = 1.571 and AC √(1/4 − 1/π²) = 1.211 of
   * the DC. Mean-responding, with sin a = 1/π: (2 cos a − (π − 2a)/π)/π times π/(2√2).
   */
  @Test
  void halfSine() {
    double[] half = wave(x -> Math.max(0, StrictMath.sin(x)));
    double dc = 1 / Math.PI;
    double trueRms = AlternatingMethod.TRUE_RMS.of(half);
    assertThat(Math.sqrt(trueRms * trueRms + dc * dc) / dc).isCloseTo(1.571, within(5e-4));
    assertThat(trueRms / dc).isCloseTo(1.211, within(5e-4));
    double a = StrictMath.asin(dc);
    double rectified = (2 * StrictMath.cos(a) - (Math.PI - 2 * a) / Math.PI) / Math.PI;
    assertThat(AlternatingMethod.MEAN_RESPONDING.of(half))
        .isCloseTo(rectified * Math.PI / (2 * Math.sqrt(2)), sampling());
  }

  /** A square wave of height 1: rms 1, mean-responding π/(2√2) = 1.111. */
  @Test
  void squareWave() {
    double[] square = wave(x -> x < Math.PI ? 1 : -1);
    assertThat(AlternatingMethod.TRUE_RMS.of(square)).isCloseTo(1, sampling());
    assertThat(AlternatingMethod.MEAN_RESPONDING.of(square))
        .isCloseTo(Math.PI / (2 * Math.sqrt(2)), sampling());
  }
}
