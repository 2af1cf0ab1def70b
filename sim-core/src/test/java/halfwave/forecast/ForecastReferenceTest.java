package halfwave.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
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
@Validated(Area.FILMS)
class ForecastReferenceTest {

  private static final Reference GROWTH =
      Reference.calc(
          "documented growth: 20 µm per 1000 h and mg in a m³ of gas, 9.52 times for air");
  private static final Reference WEAR = Reference.calc("documented rates of wear, times hours");
  private static final Reference QUANTILES =
      Reference.calc("quantiles of the log-normal distribution, Commons Math 3.6.1");
  private static final Reference YEAR = Reference.calc("a year of 365.25 days");

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
    for (int thousands : new int[] {1, 3}) {
      GROWTH
          .check(
              "film at 0.1 mg/m³ on 0.1 µm of fingers",
              Unit.MICROMETERS,
              filmMeters(1000 * thousands, List.of()))
          .at(1000 * thousands + " h")
          .isCloseTo(thousands * 19.04e-6 + 0.1e-6, 1e-12, "rounding");
    }
  }

  /** Cleaned after 1000 h with a pad, which leaves 10 nm. */
  @Test
  void cleaningBeginsAnew() {
    List<Logged.Done> cleaned = List.of(new Logged.Done(1000 * HOUR, Repair.CLEAN_ROD_WITH_PAD));

    GROWTH
        .check(
            "film 500 h after a pad, which leaves 10 nm",
            Unit.MICROMETERS,
            filmMeters(1500, cleaned))
        .isCloseTo(0.5 * 19.04e-6 + 10e-9, 1e-12, "rounding");
  }

  /** A micrometre of radius and a tenth of a degree in 1000 h, until there is a new rod. */
  @Test
  void rodsWearAsDocumented() {
    Rods rods = new Rods(BENCH);
    Life life = new Life(QUESTION, rods, alike(2));
    Bench worn = rods.bench(life.at(2000 * HOUR, List.of()));
    Bench renewed =
        rods.bench(life.at(2000 * HOUR, List.of(new Logged.Done(2000 * HOUR, Repair.REPLACE_ROD))));

    double thinner = BENCH.design().rod().radiusMeters() - worn.design().rod().radiusMeters();
    WEAR.check("radius lost in 2000 h at twice the rate", Unit.MICROMETERS, thinner)
        .isCloseTo(4e-6, 1e-12, "rounding");
    WEAR.check(
            "drooping in 2000 h at twice the rate",
            Unit.DEGREES,
            worn.condition().rodPosition().bendRadians())
        .isCloseTo(-0.4 * Math.PI / 180, 1e-12, "rounding");
    assertThat(renewed.design().rod()).isEqualTo(BENCH.design().rod());
    assertThat(Parameter.ROD_FILM.of(renewed)).isZero();
  }

  @Test
  void rangesHoldNineTenths() {
    Range range = new Range(0.2, 5);
    double width = Math.log(5) / 1.6448536269514722;
    LogNormalDistribution reference = new LogNormalDistribution(0, width);

    QUANTILES
        .check("lower end of a rate's range of 90 %", Unit.RATIO, range.at(-1.6448536269514722))
        .isCloseTo(0.2, 1e-12, "the deviate of 95 % is known to the last digit");
    QUANTILES
        .check("middle of a rate's range", Unit.RATIO, range.at(0))
        .isCloseTo(1, 1e-12, "rounding");
    QUANTILES
        .check(
            "probability below half a deviation",
            Unit.RATIO,
            reference.cumulativeProbability(range.at(0.5)))
        .isCloseTo(
            new NormalDistribution(null, 0, 1).cumulativeProbability(0.5),
            1e-9,
            "series of the error function");
  }

  @Test
  void aYearHasItsHours() {
    Calendar calendar = new Calendar(LocalDate.of(2024, 3, 1), Calendar.burningRatio(1000));

    YEAR.check(
            "hours of flame in 365 days at 1000 h a year",
            Unit.HOURS,
            calendar.flameSeconds(LocalDate.of(2025, 3, 1)))
        .isCloseTo(1000 * HOUR * 365 / 365.25, 1e-3, "a millisecond");
    assertThat(calendar.day(calendar.flameSeconds(LocalDate.of(2025, 3, 1)) + 1))
        .isEqualTo(LocalDate.of(2025, 3, 1));
  }

  /** Practice cleans rods once a year or every few years, as if most had lost their signal. */
  @Test
  void mostRodsOfACleanHouseWouldNeverNeedCleaning() {
    Question question =
        new Question(BENCH, List.of(), false, 20e-9, Map.of(), 5000 * HOUR, 1.5e-6, 0.95, 1);
    Forecast forecast = (Forecast) Forecasting.of(question);
    List<Forecast.Point> band = forecast.band();

    Reference.practice("rods are cleaned once a year or every few years")
        .check(
            "median DC after 5000 h of flame in a clean house",
            Unit.MICROAMPS,
            band.get(band.size() - 1).middleAmps())
        .isKnownToDiffer(
            0,
            1.5e-6,
            2.19e-6,
            0.05e-6,
            "silicon or its growth is underrated, or most cleanings are precaution; nothing we have"
                + " decides it");
  }
}
