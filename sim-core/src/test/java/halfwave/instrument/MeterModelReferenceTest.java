package halfwave.instrument;

import halfwave.circuit.Point;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import org.junit.jupiter.api.Test;

/** Standard deviations against what a meter shows of one voltage again and again. */
@Validated(Area.METERS)
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

    Reference.calc("spread of 4000 looks, by its definition")
        .check(
            "spread of what a meter shows over what it is said to be",
            Unit.RATIO,
            spread / model.deviationSi(MeterFunction.AC_VOLTS, mean))
        .isCloseTo(1, 0.034, "4000 looks are known to 1.1 %; three deviations");
  }
}
