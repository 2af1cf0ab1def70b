package halfwave.instrument;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import org.junit.jupiter.api.Test;

/** True-rms against mean-responding; the source is the closed form in each comment. */
@Validated(Area.METERS)
class AlternatingMethodReferenceTest {

  private static final int SAMPLES = 100_000;

  private static final Reference FORM = Reference.calc("closed form");
  private static final String SAMPLING = "kinks and steps are sampled to some 1e-5";
  private static final double SAMPLED = 2e-5;

  private static double[] wave(java.util.function.DoubleUnaryOperator ofPhase) {
    double[] wave = new double[SAMPLES];
    for (int n = 0; n < SAMPLES; n++) {
      wave[n] = ofPhase.applyAsDouble(2 * Math.PI * n / SAMPLES);
    }
    return wave;
  }

  /** A sine of peak 1, whatever its mean: 1/√2 on both. */
  @Test
  void bothAgreeOnASine() {
    double[] sine = wave(x -> 0.7 + StrictMath.sin(x));
    for (AlternatingMethod method : AlternatingMethod.values()) {
      FORM.check("AC of a sine of height 1", Unit.RATIO, method.of(sine))
          .at(method)
          .isCloseTo(Math.sqrt(0.5), SAMPLED, SAMPLING);
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
    double all = Math.sqrt(trueRms * trueRms + dc * dc);
    FORM.check("half sine: rms over DC, π/2", Unit.RATIO, all / dc)
        .isCloseTo(1.571, 5e-4, "half of the last digit quoted");
    FORM.check("half sine: true-rms AC over DC", Unit.RATIO, trueRms / dc)
        .isCloseTo(1.211, 5e-4, "half of the last digit quoted");
    double a = StrictMath.asin(dc);
    double rectified = (2 * StrictMath.cos(a) - (Math.PI - 2 * a) / Math.PI) / Math.PI;
    FORM.check(
            "half sine: AC by the rectified mean",
            Unit.RATIO,
            AlternatingMethod.MEAN_RESPONDING.of(half))
        .isCloseTo(rectified * Math.PI / (2 * Math.sqrt(2)), SAMPLED, SAMPLING);
  }

  /** A square wave of height 1: rms 1, mean-responding π/(2√2) = 1.111. */
  @Test
  void squareWave() {
    double[] square = wave(x -> x < Math.PI ? 1 : -1);
    FORM.check("square wave: true-rms AC", Unit.RATIO, AlternatingMethod.TRUE_RMS.of(square))
        .isCloseTo(1, SAMPLED, SAMPLING);
    FORM.check(
            "square wave: AC by the rectified mean",
            Unit.RATIO,
            AlternatingMethod.MEAN_RESPONDING.of(square))
        .isCloseTo(Math.PI / (2 * Math.sqrt(2)), SAMPLED, SAMPLING);
  }
}
