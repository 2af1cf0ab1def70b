package halfwave.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Coat;
import halfwave.bench.Intermittent;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Trigger;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.board.Stage;
import halfwave.work.Handling;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The film on the rod grows with flame, by steps that no cut of time moves. */
class FilmGrowthPropertyTest {

  /** Much, so that hours of play show it (kg/m³). */
  private static final double SILICON = 1e-6;

  private static final Bench CLEAN = ShippedBenches.standard();
  private static final Bench DUSTY = CLEAN.with(CLEAN.design().withSilicon(SILICON));
  private static final BoardSettings BOARD = ShippedBoards.standard(CLEAN.design().ignition());
  private static final long UNTIL_MILLIS = 3 * Calls.HOUR + 20 * Calls.MINUTE;

  private static final List<Act> ACTS =
      Script.withStart(
          List.of(
              new Act(70 * Calls.MINUTE, new Deed.Call(false)),
              new Act(90 * Calls.MINUTE, new Deed.Call(true))));

  private static double film(Moment moment) {
    return moment.bench().condition().rodCoat().thicknessMeters();
  }

  private static Segment play(Bench bench, long until, List<Act> acts) {
    return new Sequence().advance(Moment.cold(bench, BOARD, 1), until, acts);
  }

  @Test
  void cutMakesNoDifference() {
    Segment whole = play(DUSTY, UNTIL_MILLIS, ACTS);
    // the film grows at the first of these that comes an hour after the flame has reached the rod
    long grows =
        3_600_000
            + whole.samples().stream()
                .filter(s -> s.growthRatio() > 0)
                .findFirst()
                .orElseThrow()
                .timeMillis();
    List<Long> cuts = new ArrayList<>(List.of(59 * Calls.MINUTE + 7));
    for (long near = -2; near <= 2; near++) {
      cuts.add(grows + near * Sequence.PACE_MILLIS);
    }
    cuts.add(100 * Calls.MINUTE);
    cuts.add(UNTIL_MILLIS);
    Timeline pieces = Timeline.from(Moment.cold(DUSTY, BOARD, 1));
    for (long cut : cuts) {
      long from = pieces.end().timeMillis();
      List<Act> due =
          ACTS.stream().filter(a -> a.timeMillis() >= from && a.timeMillis() < cut).toList();
      pieces = pieces.then(new Sequence().advance(pieces.end(), cut, due));
    }

    assertThat(pieces.events()).isEqualTo(whole.events());
    assertThat(pieces.samples()).isEqualTo(whole.samples());
    assertThat(pieces.end()).isEqualTo(whole.end());
  }

  /** What cleaning or a hand leaves is the start of a film, and no fault of the next cold start. */
  @Test
  void cleanedAndTouchedRodsStartCold() {
    List<Bench> benches = new ArrayList<>(List.of(Handling.FINGERS_ON_ROD.on(CLEAN)));
    Stream.of(Repair.values())
        .filter(r -> r.residueMeters() > 0)
        .forEach(r -> benches.add(r.on(CLEAN)));

    assertThat(benches).hasSize(5);
    for (Bench bench : benches) {
      Segment run = play(bench, Calls.MINUTE, Script.withStart(List.of()));
      assertThat(run.end().board().stage()).isEqualTo(Stage.RUN);
      assertThat(run.end().board().failedTrials()).isZero();
    }
  }

  /**
   * Symptom table of the trade, row 1: over weeks and years the signal falls, and the furnace goes
   * on starting for a long time. 3000 flame hours at 0.1 mg/m³.
   */
  @Test
  void foulsOverYears() {
    Coat old = Coat.CLEAN.grown(1e-7, 3000 * 3600.0);
    Bench fouled = CLEAN.with(CLEAN.condition().withRodCoat(old));
    Segment healthy = play(CLEAN, 5 * Calls.MINUTE, Script.withStart(List.of()));
    Segment run = play(fouled, 5 * Calls.MINUTE, Script.withStart(List.of()));
    double before = Calls.largestAmps(healthy, 4 * Calls.MINUTE, 5 * Calls.MINUTE);
    double after = Calls.largestAmps(run, 4 * Calls.MINUTE, 5 * Calls.MINUTE);

    assertThat(run.end().board().stage()).isEqualTo(Stage.RUN);
    assertThat(after).isBetween(0.3 * before, 0.8 * before);
  }

  /** In one step or in a thousand, but for rounding: who forecasts may take long steps. */
  @Test
  void stepsOfTheLawDoNotMatter() {
    Coat once = Coat.CLEAN.grown(1e-7, 3.6e6);
    Coat often = Coat.CLEAN;
    for (int k = 0; k < 1000; k++) {
      often = often.grown(1e-7, 3600);
    }

    assertThat(often.thicknessMeters()).isCloseTo(once.thicknessMeters(), withinPercentage(1e-9));
    assertThat(often.crackOhms()).isCloseTo(once.crackOhms(), withinPercentage(1e-9));
    assertThat(Coat.even(1e-6, 1000).grown(1e-7, 3600).crackOhms()).isInfinite();
  }

  /** Two whole hours of flame in three hours and twenty minutes with a pause: the law, twice. */
  @Test
  void growsWithFlameHours() {
    Moment end = play(DUSTY, UNTIL_MILLIS, ACTS).end();
    Coat law = Coat.CLEAN.grown(SILICON, 2 * 3600);

    // one rounding of a sum
    assertThat(film(end)).isCloseTo(law.thicknessMeters(), within(1e-22));
    assertThat(end.furnace().filmMillis()).isBetween(40 * Calls.MINUTE, 60 * Calls.MINUTE);
  }

  @Test
  void needsSiliconAndFlame() {
    Moment clean = play(CLEAN, 2 * Calls.HOUR, Script.withStart(List.of())).end();
    Moment idle = play(DUSTY, 2 * Calls.HOUR, List.of(new Act(0, new Deed.Supply(true)))).end();

    assertThat(film(clean)).isZero();
    assertThat(clean.furnace().filmMillis()).isZero();
    assertThat(film(idle)).isZero();
    assertThat(idle.furnace().filmMillis()).isZero();
  }

  /** The board sees the film: less current after an hour than before it. */
  @Test
  void takesTheSignal() {
    Bench filthy = CLEAN.with(CLEAN.design().withSilicon(1e-4));
    Segment run = play(filthy, 65 * Calls.MINUTE, Script.withStart(List.of()));
    double before = Calls.largestAmps(run, 55 * Calls.MINUTE, 60 * Calls.MINUTE);
    double after = Calls.largestAmps(run, 62 * Calls.MINUTE, 65 * Calls.MINUTE);

    assertThat(film(run.end())).isGreaterThan(10e-6);
    assertThat(after).isLessThan(before);
  }

  @Test
  void cleaningBeginsItAgain() {
    List<Act> acts =
        Script.withStart(
            List.of(new Act(100 * Calls.MINUTE, new Deed.PutRight(Repair.CLEAN_ROD_WITH_PAD))));
    Moment end = play(DUSTY, 110 * Calls.MINUTE, acts).end();

    assertThat(film(end)).isEqualTo(Repair.CLEAN_ROD_WITH_PAD.residueMeters());
  }

  /** No film is thicker than the model can say, what comes and goes included. */
  @Test
  void staysInsideTheModel() {
    Bench thick =
        CLEAN.with(
            CLEAN
                .condition()
                .withRodCoat(Coat.even(0.9e-3, 1))
                .withAppliance(
                    CLEAN
                        .condition()
                        .appliance()
                        .with(
                            new Intermittent(
                                Trigger.HEAT, Change.Joined.by(Parameter.ROD_FILM, 0.095e-3)))));
    Bench filthy = thick.with(thick.design().withSilicon(1e-4));

    assertThat(film(play(filthy, 65 * Calls.MINUTE, Script.withStart(List.of())).end()))
        .isEqualTo(0.9e-3);
    assertThat(Coat.even(0.9999e-3, 1).grown(1e-4, 1e6).thicknessMeters()).isEqualTo(1e-3);
  }
}
