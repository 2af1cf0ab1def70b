package halfwave.work;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Readings;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.instrument.MeterReading;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every reading keeps. */
class MeterTestContractTest {

  /** A meter's own error is about a hundredth; what changes less is not shown. */
  private static final double SHOWN_RATIO = 0.01;

  private static final Stages STAGES = new Stages();
  private static final Readings SOUND = Readings.of(STAGES, ShippedBenches.standard());

  /** A reading shows the faults that it says it shows at some severity, and no others at any. */
  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void showsWhatItSays(FaultKind kind) {
    Set<MeterTest> claimed = EnumSet.noneOf(MeterTest.class);
    Set<MeterTest> shown = EnumSet.noneOf(MeterTest.class);
    for (double severity : new double[] {kind.least(), kind.typical(), kind.most()}) {
      Bench bench = Fault.of(kind, severity).on(ShippedBenches.standard());
      Readings readings = Readings.of(STAGES, bench.under(Settings.ALL));
      for (MeterTest test : MeterTest.values()) {
        if (test.shows().stream().anyMatch(a -> a.wrongOrLurks(bench.condition()))) {
          claimed.add(test);
        }
        if (differ(test.of(readings), test.of(SOUND))) {
          shown.add(test);
        }
      }
    }
    assertThat(shown).as(kind.id()).isEqualTo(claimed);
  }

  private static boolean differ(MeterReading a, MeterReading b) {
    if (a instanceof MeterReading.Volts x && b instanceof MeterReading.Volts y) {
      return differ(x.alternatingRmsVolts(), y.alternatingRmsVolts());
    }
    if (a instanceof MeterReading.Amps x && b instanceof MeterReading.Amps y) {
      return differ(x.meanAmps(), y.meanAmps());
    }
    throw new AssertionError(a + " against " + b);
  }

  private static boolean differ(double a, double b) {
    return Math.abs(a - b) > SHOWN_RATIO * Math.abs(b);
  }
}
