package halfwave.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.work.Repair;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/**
 * Against closed forms: the documented growth of 20 µm per 1000 h and mg of silicon in a cubic
 * metre of gas, 9.52 times that for air; quantiles of the log-normal distribution by Commons Math;
 * a year of 365.25 days.
 */
class ForecastReferenceTest {

  private static final double HOUR = 3600;
  private static final Bench BENCH = ShippedBenches.standard();

  private static final Question QUESTION =
      new Question(BENCH, List.of(), true, 1e-7, Map.of(), 3600e3, 1e-6, 0.95, 1);

  private static Map<Rate, Double> alike(double ratio) {
    Map<Rate, Double> rates = new EnumMap<>(Rate.class);
    for (Rate rate : Rate.values()) {
      rates.put(rate, ratio);
    }
    return rates;
  }

  private static double filmMeters(double hours, List<Logged.Done> done) {
    return new Life(QUESTION, new Rods(BENCH), alike(1))
        .at(hours * HOUR, done)
        .coat()
        .thicknessMeters();
  }

  /** 0.1 mg/m³ in air for 1000 h: 19.04 µm, on the 0.1 µm of fingers. */
  @Test
  void filmGrowsAsDocumented() {
    // rounding
    assertThat(filmMeters(1000, List.of())).isCloseTo(19.04e-6 + 0.1e-6, within(1e-12));
    assertThat(filmMeters(3000, List.of())).isCloseTo(3 * 19.04e-6 + 0.1e-6, within(1e-12));
  }

  /** Cleaned after 1000 h with a pad, which leaves 10 nm. */
  @Test
  void cleaningBeginsAnew() {
    List<Logged.Done> cleaned = List.of(new Logged.Done(1000 * HOUR, Repair.CLEAN_ROD_WITH_PAD));

    // rounding
    assertThat(filmMeters(1500, cleaned)).isCloseTo(0.5 * 19.04e-6 + 10e-9, within(1e-12));
  }

  /** A micrometre of radius and a tenth of a degree in 1000 h, until there is a new rod. */
  @Test
  void rodsWearAsDocumented() {
    Rods rods = new Rods(BENCH);
    Life life = new Life(QUESTION, rods, alike(2));
    Bench worn = rods.bench(life.at(2000 * HOUR, List.of()));
    Bench renewed =
        rods.bench(life.at(2000 * HOUR, List.of(new Logged.Done(2000 * HOUR, Repair.REPLACE_ROD))));

    // rounding
    assertThat(BENCH.design().rod().radiusMeters() - worn.design().rod().radiusMeters())
        .isCloseTo(4e-6, within(1e-12));
    assertThat(worn.condition().rodPosition().bendRadians())
        .isCloseTo(-0.4 * Math.PI / 180, within(1e-12));
    assertThat(renewed.design().rod()).isEqualTo(BENCH.design().rod());
    assertThat(Parameter.ROD_FILM.of(renewed)).isZero();
  }

  @Test
  void rangesHoldNineTenths() {
    Range range = new Range(0.2, 5);
    double width = Math.log(5) / 1.6448536269514722;
    LogNormalDistribution reference = new LogNormalDistribution(0, width);

    // the deviate of 95 % to the last digits
    assertThat(range.at(-1.6448536269514722)).isCloseTo(0.2, within(1e-12));
    assertThat(range.at(0)).isCloseTo(1, within(1e-12));
    assertThat(reference.cumulativeProbability(range.at(0.5)))
        .isCloseTo(new NormalDistribution(null, 0, 1).cumulativeProbability(0.5), within(1e-9));
  }

  @Test
  void aYearHasItsHours() {
    Calendar calendar = new Calendar(LocalDate.of(2024, 3, 1), Calendar.burningRatio(1000));

    // 365 of 365.25 days
    assertThat(calendar.flameSeconds(LocalDate.of(2025, 3, 1)))
        .isCloseTo(1000 * HOUR * 365 / 365.25, within(1e-3));
    assertThat(calendar.day(calendar.flameSeconds(LocalDate.of(2025, 3, 1)) + 1))
        .isEqualTo(LocalDate.of(2025, 3, 1));
  }
}
