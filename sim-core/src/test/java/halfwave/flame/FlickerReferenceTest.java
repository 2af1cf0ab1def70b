package halfwave.flame;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import org.junit.jupiter.api.Test;

/**
 * A first-order average of noise with exponential correlation: variance τ/(τ + T) of the whole
 * (Papoulis, Probability, Random Variables and Stochastic Processes, 3rd ed. 1991, ch. 10: power
 * spectrum times the square of the filter's gain).
 */
@Validated(Area.FLAME)
class FlickerReferenceTest {

  private static final Reference PAPOULIS =
      Reference.calc("averaged noise, variance τ/(τ + T): Papoulis, 3rd ed. 1991, ch. 10");

  @Test
  void withoutAverageAllOfItIsSeen() {
    PAPOULIS
        .check("flicker without an average", Unit.RATIO, Flicker.averagedRatio(0))
        .isCloseTo(Flicker.SOURCE_RATIO, 1e-15, "rounding");
  }

  @Test
  void anAverageLeavesTheRootOfTheShare() {
    // 0.03 of 0.03 + 0.27 s is a tenth
    PAPOULIS
        .check("flicker behind an average of 0.27 s", Unit.RATIO, Flicker.averagedRatio(0.27))
        .isCloseTo(0.07 * Math.sqrt(0.1), 1e-15, "rounding");
  }
}
