package halfwave.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.Readings;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.instrument.MeterReading;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What every reading keeps. */
class MeterTestContractTest {

  /** A meter's own error is about a hundredth; what changes less is not shown. */
  private static final double SHOWN_RATIO = 0.01;

  private static final Stages STAGES = new Stages();

  /** A reading shows the faults that it says it shows at some severity, and no others at any. */
  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void showsWhatItSays(FaultKind kind) {
    Set<MeterTest> claimed = EnumSet.noneOf(MeterTest.class);
    Set<MeterTest> shown = EnumSet.noneOf(MeterTest.class);
    for (double severity : new double[] {kind.least(), kind.typical(), kind.most()}) {
      Bench bench = Fault.of(kind, severity).on(ShippedBenches.standard());
      for (MeterTest test : MeterTest.values()) {
        if (test.shows().stream().anyMatch(a -> a.wrongOrLurks(bench.condition()))) {
          claimed.add(test);
        }
        double here = MeterShows.si(test, STAGES, bench.under(Settings.ALL));
        if (differ(here, MeterShows.si(test, STAGES, ShippedBenches.standard()))) {
          shown.add(test);
        }
      }
    }
    assertThat(shown).as(kind.id()).isEqualTo(claimed);
  }

  private static boolean differ(double a, double b) {
    return Math.abs(a - b) > SHOWN_RATIO * Math.abs(b);
  }

  /**
   * The multimeter shows what the fixed readings say, within twice its accuracy: 1 % and 2 digits
   * in series, 1 % and 3 digits of volts.
   */
  @ParameterizedTest
  @MethodSource("benches")
  void showsTheReadingsOfTheBench(Bench bench) {
    Readings readings = Readings.of(STAGES, bench);
    double amps = ((MeterReading.Amps) readings.series()).meanAmps();

    assertThat(MeterShows.si(MeterTest.SERIES_CURRENT, STAGES, bench))
        .isCloseTo(amps, within(0.02 * amps + 0.04e-6));
    assertVolts(MeterTest.TERMINAL_VOLTS, readings.terminal(), bench);
    assertVolts(MeterTest.TERMINAL_VOLTS_LEAD_OFF, readings.terminalLeadOff(), bench);
    assertVolts(MeterTest.TERMINAL_VOLTS_FLAME_OUT, readings.terminalFlameOut(), bench);
  }

  static Stream<Bench> benches() {
    return ShippedBenches.all().stream();
  }

  private static void assertVolts(MeterTest test, MeterReading reading, Bench bench) {
    double volts = ((MeterReading.Volts) reading).alternatingRmsVolts();
    assertThat(MeterShows.si(test, STAGES, bench)).isCloseTo(volts, within(0.02 * volts + 0.6));
  }
}
