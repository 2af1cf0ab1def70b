package halfwave.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.Point;
import org.junit.jupiter.api.Test;

/** Standard deviations against what a meter shows of one voltage again and again. */
class MeterModelReferenceTest {

  private static final int LOOKS = 4000;

  /**
   * The spread of many looks, by its definition. Both parts show: a third of the limit, and the
   * last digit (the variance of an even distribution over one step is a twelfth of its square).
   */
  @Test
  void deviationIsTheSpreadOfManyLooks() {
    MeterModel model = ShippedMeters.plain();
    double sum = 0;
    double squares = 0;
    for (int seed = 0; seed < LOOKS; seed++) {
      Shown shown =
          Measuring.of(
                  Meter.fresh(model),
                  MeterFunction.AC_VOLTS,
                  new HookUp.Across(Point.TERMINAL, Point.COMMON),
                  Subject.of(SenseCircuits.burning()),
                  Look.settled(seed))
              .shown();
      double si = IdealMeters.si(shown);
      sum += si;
      squares += si * si;
    }
    double mean = sum / LOOKS;
    double spread = Math.sqrt(squares / LOOKS - mean * mean);

    // the spread of 4000 looks is known to 1.1 %, three deviations 3.4 %
    assertThat(spread / model.deviationSi(MeterFunction.AC_VOLTS, mean))
        .isCloseTo(1, within(0.034));
  }
}
