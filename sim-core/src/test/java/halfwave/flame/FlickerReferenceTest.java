package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * A first-order average of noise with exponential correlation: variance τ/(τ + T) of the whole
 * (Papoulis, Probability, Random Variables and Stochastic Processes, 3rd ed. 1991, ch. 10: power
 * spectrum times the square of the filter's gain).
 */
class FlickerReferenceTest {

  @Test
  void withoutAverageAllOfItIsSeen() {
    // rounding
    assertThat(Flicker.averagedRatio(0)).isCloseTo(Flicker.SOURCE_RATIO, within(1e-15));
  }

  @Test
  void anAverageLeavesTheRootOfTheShare() {
    // rounding; 0.03 of 0.03 + 0.27 s is a tenth
    assertThat(Flicker.averagedRatio(0.27)).isCloseTo(0.07 * Math.sqrt(0.1), within(1e-15));
  }
}
