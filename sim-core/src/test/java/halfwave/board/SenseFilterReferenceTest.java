package halfwave.board;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The sense filter against the closed form of a first-order linear filter, {@code τ·dy/dt + y = x}:
 * from rest, {@code y = x·(1 − exp(−t/τ))}; left alone, {@code y = y₀·exp(−t/τ)}.
 */
@Validated(Area.SEQUENCE)
class SenseFilterReferenceTest {

  /** Time constant 0.2 s. */
  private static final Sensing SENSING = ShippedBoards.all().get(0).sensing();

  private static final double TAU_SECONDS = 0.2;
  private static final double MEAN_AMPS = 4e-6;
  private static final double RMS_AMPS = 9e-6;

  /** A few hundred steps round by far less, 1e-6 A times 1e-16 each. */
  private static final double TOLERANCE_AMPS = 1.01e-13;

  private static final Reference FORM = Reference.calc("closed form of a first-order filter");

  private static void agrees(String subject, Object at, double computed, double expected) {
    FORM.check(subject, Unit.MICROAMPS, computed)
        .at(at)
        .isCloseTo(
            expected,
            TOLERANCE_AMPS,
            "the filter calls itself settled within 1e-13 A of its input");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-6, 0.001, 0.05, 0.1, 0.2, 0.5, 1, 2, 3, 5, 60})
  void aStepRisesAsTheClosedFormDoes(double seconds) {
    SenseFilter filter = SenseFilter.QUIET.after(SENSING, MEAN_AMPS, RMS_AMPS, seconds);
    double share = 1 - StrictMath.exp(-seconds / TAU_SECONDS);
    agrees("sense filter, rising, DC", seconds + " s", filter.meanAmps(), MEAN_AMPS * share);
    agrees(
        "sense filter, rising, AC", seconds + " s", filter.alternatingRmsAmps(), RMS_AMPS * share);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.05, 0.1, 0.2, 0.5, 1, 2, 3, 5, 60})
  void aFlameThatGoesOutFallsAsTheClosedFormDoes(double seconds) {
    SenseFilter burning = new SenseFilter(MEAN_AMPS, RMS_AMPS, FlameSignal.GOOD);
    SenseFilter filter = burning.after(SENSING, 0, 0, seconds);
    double share = StrictMath.exp(-seconds / TAU_SECONDS);
    agrees("sense filter, falling, DC", seconds + " s", filter.meanAmps(), MEAN_AMPS * share);
    agrees(
        "sense filter, falling, AC", seconds + " s", filter.alternatingRmsAmps(), RMS_AMPS * share);
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 10, 300})
  void manyShortStepsAreOneLongOne(int steps) {
    double seconds = 0.7;
    SenseFilter filter = SenseFilter.QUIET;
    for (int k = 0; k < steps; k++) {
      filter = filter.after(SENSING, MEAN_AMPS, RMS_AMPS, seconds / steps);
    }
    double share = 1 - StrictMath.exp(-seconds / TAU_SECONDS);
    agrees("sense filter, in many steps", steps + " steps", filter.meanAmps(), MEAN_AMPS * share);
  }
}
