package halfwave.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.Readings;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.explain.SweepRow.Impossible;
import halfwave.explain.SweepRow.Taken;
import halfwave.instrument.MeterReading;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Axes and sweeps. */
class SweepTest {

  private static final Bench BENCH = ShippedBenches.standard();

  @Test
  void valuesAreEvenAndKeepTheirEnds() {
    assertThat(Axis.linear(Parameter.ROD_UP, -0.01, 0.01, 5).values())
        .containsExactly(-0.01, -0.005, 0.0, 0.005, 0.01);
    assertThat(Axis.linear(Parameter.ROD_UP, 0.003, 0, 4).values())
        .containsExactly(0.003, 0.002, 0.001, 0.0);
    assertThat(Axis.logarithmic(Parameter.CONNECTOR, 1e4, 1e8, 5).values())
        .containsExactly(1e4, 1e5, 1e6, 1e7, 1e8);
  }

  @ParameterizedTest
  @CsvSource({
    "-1, 0.01, 5, false, from",
    "NaN, 0.01, 5, false, from",
    "0, 0.2, 5, false, to",
    "0, 0, 5, false, to",
    "0, 0.01, 1, false, count",
    "0, 0.01, 10001, false, count",
    "0, 0.01, 5, true, from",
    "0.01, -0.01, 5, true, to"
  })
  void badAxesAreRefused(double from, double to, int count, boolean logarithmic, String field) {
    assertThatExceptionOfType(RejectedValueException.class)
        .isThrownBy(
            () -> {
              Object unused =
                  logarithmic
                      ? Axis.logarithmic(Parameter.ROD_UP, from, to, count)
                      : Axis.linear(Parameter.ROD_UP, from, to, count);
            })
        .satisfies(e -> assertThat(e.field()).isEqualTo(field));
  }

  @Test
  void axesAreOneOrTwoOfDifferentParametersAndNotTooMany() {
    Axis up = Axis.linear(Parameter.ROD_UP, 0, 0.01, 1000);
    Axis across = Axis.linear(Parameter.ROD_ACROSS, 0, 0.01, 1000);
    for (List<Axis> axes :
        List.of(List.<Axis>of(), List.of(up, up), List.of(up, across), List.of(up, across, up))) {
      assertThatExceptionOfType(RejectedValueException.class)
          .isThrownBy(() -> Sweep.of(BENCH, axes));
    }
  }

  /** A row is what the meters show on that bench alone. */
  @Test
  void rowsAreTheReadingsOfTheirBenches() {
    Sweep sweep = Sweep.of(BENCH, List.of(Axis.linear(Parameter.ROD_UP, -0.01, 0.01, 3)));

    assertThat(sweep.rows()).hasSize(3);
    for (SweepRow row : sweep.rows()) {
      Readings alone = Readings.of(new Stages(), Parameter.ROD_UP.with(BENCH, row.values().get(0)));
      MeterReading.Amps amps = (MeterReading.Amps) alone.series();
      MeterReading.Volts volts = (MeterReading.Volts) alone.terminal();
      assertThat(row.taken())
          .contains(
              new Taken(amps.meanAmps(), amps.alternatingRmsAmps(), volts.alternatingRmsVolts()));
    }
  }

  @Test
  void theSameSweepTwiceIsEqual() {
    List<Axis> axes =
        List.of(
            Axis.logarithmic(Parameter.CONNECTOR, 1e4, 1e8, 3),
            Axis.linear(Parameter.ROD_ALONG, -0.02, 0.02, 3));

    assertThat(Sweep.of(BENCH, axes)).isEqualTo(Sweep.of(BENCH, axes));
  }

  /** Which axis is computed outermost must not show. */
  @Test
  void orderOfRowsIsTheOrderOfTheAxes() {
    Axis connector = Axis.logarithmic(Parameter.CONNECTOR, 1e4, 1e8, 3);
    Axis air = Axis.linear(Parameter.PRIMARY_AIR, 0.8, 1, 2);

    Sweep one = Sweep.of(BENCH, List.of(connector, air));
    Sweep other = Sweep.of(BENCH, List.of(air, connector));

    assertThat(one.rows().stream().map(SweepRow::values))
        .containsExactly(
            List.of(1e4, 0.8),
            List.of(1e4, 1.0),
            List.of(1e6, 0.8),
            List.of(1e6, 1.0),
            List.of(1e8, 0.8),
            List.of(1e8, 1.0));
    for (int c = 0; c < 3; c++) {
      for (int a = 0; a < 2; a++) {
        assertThat(one.rows().get(2 * c + a).outcome())
            .isEqualTo(other.rows().get(3 * a + c).outcome());
      }
    }
  }

  @Test
  void anImpossibleBenchIsAValueWithItsReason() {
    Sweep sweep = Sweep.of(BENCH, List.of(Axis.linear(Parameter.ROD_ALONG, -0.02, 0.02, 3)));

    assertThat(sweep.rows().get(0).taken()).isEmpty();
    assertThat(((Impossible) sweep.rows().get(0).outcome()).reason().allowed())
        .isEqualTo(Allowed.CLEAR_OF_BURNER);
    assertThat(sweep.rows().get(1).taken()).isPresent();
  }

  @Test
  void theWatchIsToldAndMayEndIt() {
    List<Integer> told = new ArrayList<>();
    List<Axis> axes = List.of(Axis.linear(Parameter.GROUND, 0, 1e6, 5));

    assertThat(Sweep.of(BENCH, axes, (done, all) -> told.add(10 * done + all))).isPresent();
    assertThat(told).containsExactly(15, 25, 35, 45, 55);
    assertThat(Sweep.of(BENCH, axes, (done, all) -> done < 2)).isEmpty();
  }
}
