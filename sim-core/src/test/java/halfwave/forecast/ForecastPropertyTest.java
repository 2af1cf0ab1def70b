package halfwave.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.forecast.Forecast.Learned;
import halfwave.forecast.Forecast.Plan;
import halfwave.forecast.Forecast.Point;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Microammeter;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bands, logs, and work on the rod. */
class ForecastPropertyTest {

  private static final Bench BENCH = ShippedBenches.standard();
  private static final double HOUR = 3600;
  private static final double AHEAD = 5000 * HOUR;
  private static final double LIMIT = 1.5e-6;

  /** Nothing grows, but for the rod's own wear. */
  private static final double NO_SILICON = 0;

  /** A house with some silicon, twice. */
  private static final Question PLAIN = question(BENCH, List.of(), 50e-9, Map.of(), 1);

  private static final Forecast FIRST = forecast(PLAIN);
  private static final Forecast OTHER = forecast(question(BENCH, List.of(), 50e-9, Map.of(), 2));

  private static Question question(
      Bench bench, List<Logged> log, double silicon, Map<Rate, Range> ranges, long seed) {
    return new Question(bench, log, false, silicon, ranges, AHEAD, LIMIT, 0.95, seed);
  }

  private static Forecast forecast(Question question) {
    return (Forecast) Forecasting.of(question);
  }

  private static Map<Rate, Range> known(double ratio) {
    Map<Rate, Range> ranges = new EnumMap<>(Rate.class);
    for (Rate rate : Rate.values()) {
      ranges.put(rate, new Range(1, 1));
    }
    ranges.put(Rate.GROWTH, new Range(ratio, ratio));
    return ranges;
  }

  private static double dcAmps(Bench bench) {
    return ((MeterReading.Amps) Microammeter.SERVICE.read(new Stages().circuit(bench))).meanAmps();
  }

  /** A log of one life, without scatter: the first rates of that seed, as they would read. */
  private static List<Logged> log(Question question, Map<Rate, Double> rates, double... hours) {
    List<Logged> log = new ArrayList<>();
    for (double hour : hours) {
      Rods rods = new Rods(question.bench());
      Bench then = rods.bench(new Life(question, rods, rates).at(hour * HOUR, List.of()));
      log.add(new Logged.Read(hour * HOUR, dcAmps(then)));
    }
    return log;
  }

  @Test
  void theBandBeginsAtTheBenchAndWidens() {
    Forecast forecast = FIRST;

    // the level is even about the bench; 512 lives leave a per cent or so
    assertThat(forecast.now().middleAmps()).isCloseTo(dcAmps(BENCH), within(0.05e-6));
    Point last = forecast.band().get(forecast.band().size() - 1);
    assertThat(last.highAmps() - last.lowAmps())
        .isGreaterThan(forecast.now().highAmps() - forecast.now().lowAmps());
    assertThat(forecast.band())
        .allSatisfy(
            p -> {
              assertThat(p.lowAmps()).isLessThanOrEqualTo(p.middleAmps());
              assertThat(p.middleAmps()).isLessThanOrEqualTo(p.highAmps());
            });
    assertThat(last.middleAmps()).isLessThan(forecast.now().middleAmps());
  }

  @Test
  void theSameQuestionHasTheSameAnswer() {
    assertThat(Forecasting.of(PLAIN)).isEqualTo(FIRST);
    assertThat(OTHER.band()).isNotEqualTo(FIRST.band());
  }

  /** Another seed moves the ends of the band by less than its width matters. */
  @Test
  void theSeedHardlyMatters() {
    Point one = FIRST.band().get(6);
    Point other = OTHER.band().get(6);

    // of 512 lives 26 lie below the low end: it wanders by a few per cent of the band
    double tenth = 0.1 * (one.highAmps() - one.lowAmps());
    assertThat(other.lowAmps()).isCloseTo(one.lowAmps(), within(1.5 * tenth));
    assertThat(other.middleAmps()).isCloseTo(one.middleAmps(), within(tenth));
  }

  /** The log of a fast life narrows the band about that life and makes its growth more probable. */
  @Test
  void aLogTellsTheRates() {
    Map<Rate, Double> fast = new EnumMap<>(Rate.class);
    for (Rate rate : Rate.values()) {
      fast.put(rate, 1.0);
    }
    fast.put(Rate.GROWTH, 4.0);
    List<Logged> log = log(PLAIN, fast, 0, 500, 1000, 1500, 2000);

    Forecast without = FIRST;
    Forecast with = forecast(question(BENCH, log, 50e-9, Map.of(), 1));

    assertThat(with.plausible()).isTrue();
    assertThat(learned(with, Rate.GROWTH).middleRatio())
        .isGreaterThan(1.3 * learned(without, Rate.GROWTH).middleRatio());
    assertThat(with.now().highAmps() - with.now().lowAmps())
        .isLessThan(0.7 * (without.band().get(5).highAmps() - without.band().get(5).lowAmps()));
    Rods rods = new Rods(BENCH);
    Worn worn = new Life(PLAIN, rods, fast).at(2000 * HOUR + AHEAD / 2, List.of());
    double truth = dcAmps(rods.bench(worn));
    Point then = with.band().get(6);
    assertThat(truth).isBetween(then.lowAmps(), then.highAmps());
  }

  private static Learned learned(Forecast forecast, Rate rate) {
    return forecast.learned().stream().filter(l -> l.rate() == rate).findFirst().orElseThrow();
  }

  /** A signal that falls to a third between two visits and comes back by itself is no ageing. */
  @Test
  void aStepIsNoAgeing() {
    List<Logged> log =
        List.of(
            new Logged.Read(0, 2.4e-6),
            new Logged.Read(500 * HOUR, 0.7e-6),
            new Logged.Read(1000 * HOUR, 2.4e-6),
            new Logged.Read(1500 * HOUR, 2.3e-6));

    assertThat(forecast(question(BENCH, log, 50e-9, Map.of(), 1)).plausible()).isFalse();
  }

  /** On a filmed rod cleaning brings back what a new rod brings; on a clean one nothing helps. */
  @Test
  void cleaningHelpsAFilmedRod() {
    Bench filmed =
        BENCH.with(BENCH.condition().withRodCoat(BENCH.condition().rodCoat().thicker(80e-6, 1)));
    Forecast forecast = forecast(question(filmed, List.of(), 20e-9, known(1), 1));

    double nothing = plan(forecast, null).after().middleAmps();
    double cleaned = plan(forecast, Repair.CLEAN_ROD_WITH_PAD).after().middleAmps();
    double renewed = plan(forecast, Repair.REPLACE_ROD).after().middleAmps();
    assertThat(cleaned).isGreaterThan(1.3 * nothing);
    // the residue of a pad is far too thin to show
    assertThat(cleaned).isCloseTo(renewed, within(1e-9));
    assertThat(plan(forecast, null).serviceSeconds())
        .isLessThan(plan(forecast, Repair.CLEAN_ROD_WITH_PAD).serviceSeconds());
  }

  private static Plan plan(Forecast forecast, @Nullable Repair repair) {
    return forecast.plans().stream().filter(p -> p.repair() == repair).findFirst().orElseThrow();
  }

  /** More silicon, or surer to be in time: service comes sooner. */
  @Test
  void serviceComesSoonerWithMoreSilicon() {
    double little = plan(FIRST, null).serviceSeconds();
    Forecast much = forecast(question(BENCH, List.of(), 200e-9, Map.of(), 1));

    assertThat(plan(much, null).serviceSeconds()).isLessThan(little);
    assertThat(plan(much, null).serviceSeconds()).isLessThan(plan(much, null).likelySeconds());
  }

  /** Known rates and no silicon leave only the rod's own wear, which is slow. */
  @Test
  void wearOfTheRodIsSlow() {
    Forecast forecast = forecast(question(BENCH, List.of(), NO_SILICON, known(1), 1));

    Point last = forecast.band().get(forecast.band().size() - 1);
    // 5 µm of radius and half a degree in 5000 h: less than a tenth of the signal either way
    assertThat(last.middleAmps()).isCloseTo(forecast.now().middleAmps(), within(0.25e-6));
  }

  /** Half of the rod out of the flame: what reaches it, and the film, is less. */
  @Test
  void aRodThatIsPulledBackFoulsMoreSlowly() {
    Bench back = Parameter.ROD_ACROSS.with(BENCH, -20e-3);

    assertThat(new Rods(back).reachedRatio(false)).isLessThan(0.9);
    assertThat(new Rods(back).reachedRatio(true)).isEqualTo(1);
    assertThat(new Rods(BENCH).reachedRatio(false)).isEqualTo(1);
  }

  /** The grids against the benches themselves, for lives of every kind. */
  @ParameterizedTest
  @MethodSource("halfwave.bench.ShippedBenches#all")
  void gridsAreTrueToTheBench(Bench bench) {
    Question question = question(bench, List.of(), 50e-9, Map.of(), 3);
    Rods rods = new Rods(bench);
    Currents currents = new Currents(rods, false, 1e-4, 0.2);
    double sum = 0;
    List<Drawn> drawn = Drawn.of(question, 40);
    for (Drawn one : drawn) {
      Worn worn = new Life(question, rods, one.rates()).at(AHEAD, List.of());
      double off =
          Math.abs(currents.amps(worn) - Math.max(Currents.NOTHING_AMPS, dcAmps(rods.bench(worn))));
      // a tenth of what lies between one furnace and the next
      assertThat(off).as("%s %s", bench.name(), worn).isLessThan(0.1e-6);
      sum += off;
    }
    // less than the last digit of a good meter
    assertThat(sum / drawn.size()).isLessThan(0.01e-6);
  }
}
