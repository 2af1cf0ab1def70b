package halfwave.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds for the sense filter with any current. */
class SenseFilterPropertyTest {

  private static final Sensing SENSING = ShippedBoards.all().get(0).sensing();

  /** 150 time constants of 0.2 s. */
  private static final double LONG_SECONDS = 30;

  /** Whatever was proved before: reversed DC ends it. */
  @ParameterizedTest
  @EnumSource(FlameSignal.class)
  void reversedDcNeverProves(FlameSignal before) {
    long seed = 3;
    SplittableRandom random = new SplittableRandom(seed);
    for (int k = 0; k < 10_000; k++) {
      double mean = -1e-3 * random.nextDouble();
      double rms = 1e-2 * random.nextDouble();
      assertThat(
              new SenseFilter(4e-6, 8e-6, before)
                  .after(SENSING, mean, rms, LONG_SECONDS)
                  .signal()
                  .proves())
          .as("seed %d, %d", seed, k)
          .isFalse();
    }
  }
}
