package halfwave.gui.presentation.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Change;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Trigger;
import halfwave.display.UnitSystem;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.charts.StripView;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.picture.scene.DrawnPart;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import halfwave.work.Handling;
import halfwave.work.Look;
import halfwave.work.Repair;
import halfwave.work.Work;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever hands want, in whatever order: nothing breaks, and undo leads back. */
class WorkbenchPropertyTest {

  /** 10 seeds of 100 intents; ten times as many seeds with halfwave.deep. */
  private static final int SEEDS = Boolean.getBoolean("halfwave.deep") ? 100 : 10;

  private static final int INTENTS = 100;

  /** Every so many intents all views are made. */
  private static final int LOOK_EVERY = 10;

  private static final List<Wording> LANGUAGES =
      List.of(
          DirectBench.ENGLISH,
          DirectBench.SPANISH,
          Wording.of(Locale.ENGLISH, UnitSystem.INCH),
          Wording.of(Locale.forLanguageTag("es"), UnitSystem.INCH));

  private static final List<Work> WORKS =
      Stream.of(Look.values(), Repair.values(), Handling.values())
          .flatMap(Stream::<Work>of)
          .toList();

  static Stream<Integer> seeds() {
    return Stream.iterate(1, k -> k + 1).limit(SEEDS);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nothingBreaksAndUndoLeadsBackToTheFirstBench(int seed) {
    Random random = new Random(seed);
    DirectBench bench = new DirectBench();
    var all = ShippedBenches.all();
    bench.want(DirectBench.opens(all.get(seed % all.size())));
    Moment first = bench.moment();
    for (int k = 0; k < INTENTS; k++) {
      Intent intent = any(random, bench.shown());
      bench.want(intent);
      assertThat(bench.mistakes).as("seed %s, intent %s: %s", seed, k, intent).isEmpty();
      // time that passed before the first act is not undone
      first = bench.shown().history().done().isEmpty() ? bench.moment() : first;
      if (k % LOOK_EVERY == 0) {
        look(bench.shown(), LANGUAGES.get(k / LOOK_EVERY % LANGUAGES.size()), seed);
      }
    }
    LANGUAGES.forEach(words -> look(bench.shown(), words, seed));
    int acts = bench.shown().history().done().size();
    for (int k = 0; k < acts; k++) {
      bench.want(new Intent.Undo());
    }
    assertThat(bench.moment()).as("seed %s, %s acts undone", seed, acts).isEqualTo(first);
    assertThat(bench.shown().history().done()).isEmpty();
    assertThat(bench.mistakes).as("seed %s", seed).isEmpty();
  }

  /** Every view can be made, and has something to say. */
  private static void look(State s, Wording words, int seed) {
    assertThat(MeterView.of(s, words).spoken()).as("seed %s", seed).isNotBlank();
    BoardView board = BoardView.of(s, words);
    assertThat(board.headline()).as("seed %s", seed).isNotBlank();
    assertThat(board.gauge().share()).as("seed %s", seed).isBetween(0.0, 1.0);
    assertThat(StripView.of(s, words, 180_000, 600).spoken()).as("seed %s", seed).isNotBlank();
    ConditionView condition = ConditionView.of(s, words);
    assertThat(condition.summary()).as("seed %s", seed).isNotBlank();
    assertThat(condition.groups().stream().flatMap(g -> g.knobs().stream()))
        .as("seed %s", seed)
        .allMatch(k -> k.place() >= 0 && k.place() <= 1)
        .noneMatch(k -> k.value().isBlank() || k.name().isBlank());
    for (WorkCard.Sort sort : WorkCard.Sort.values()) {
      assertThat(WorkCard.all(sort, s, words)).as("seed %s", seed).isNotEmpty();
    }
    assertThat(WorkCard.done(s, words)).as("seed %s", seed).hasSize(s.standing().work().size());
    for (DrawnPart part : DrawnPart.values()) {
      assertThat(PartCard.of(part, s, words).name()).as("seed %s", seed).isNotBlank();
    }
    assertThat(FaultCard.found("", words)).as("seed %s", seed).hasSize(FaultKind.values().length);
    assertThat(BarView.of(s, words).title()).as("seed %s", seed).isNotBlank();
  }

  private static Intent any(Random random, State now) {
    return switch (random.nextInt(20)) {
      case 0, 1 -> new Intent.Pass(random.nextInt(500));
      case 2 -> new Intent.Play(random.nextBoolean());
      case 3 -> new Intent.Speed(BarView.SPEEDS.get(random.nextInt(BarView.SPEEDS.size())));
      case 4 -> new Intent.StepOn((long) random.nextInt(20_000));
      case 5 -> new Intent.StepOn(random.nextInt(4) == 0 ? null : 100L);
      case 6, 7, 8, 9 -> new Intent.Act(List.of(turned(random)), random.nextInt(3));
      case 10 -> new Intent.Act(List.of(deed(random)), 0);
      case 11 -> new Intent.Act(fault(random), 0);
      case 12, 13, 14 -> measured(random);
      case 15, 16 -> new Intent.Labor(WORKS.get(random.nextInt(WORKS.size())));
      case 17 -> random.nextBoolean() ? new Intent.Undo() : new Intent.Redo();
      case 18 -> handed(random, now);
      default -> carded(random, now);
    };
  }

  private static Deed turned(Random random) {
    Parameter parameter = Parameter.values()[random.nextInt(Parameter.values().length)];
    KnobScale scale =
        KnobScale.of(
            parameter.low(),
            parameter.high(),
            parameter.accepts(Double.POSITIVE_INFINITY),
            parameter.dimension());
    // the ends are where things break
    double place = random.nextInt(4) == 0 ? random.nextInt(2) : random.nextDouble();
    return DirectBench.turn(parameter, scale.value(place));
  }

  private static Deed deed(Random random) {
    return switch (random.nextInt(6)) {
      case 0 -> new Deed.Call(random.nextBoolean());
      case 1 -> new Deed.Supply(random.nextBoolean());
      case 2 -> new Deed.Damp(random.nextBoolean());
      case 3 -> new Deed.Touch();
      case 4 ->
          new Deed.Alter(
              new Change.Upset(
                  Disorder.values()[random.nextInt(Disorder.values().length)],
                  random.nextBoolean()));
      default -> new Deed.Become(Condition.HEALTHY);
    };
  }

  private static List<Deed> fault(Random random) {
    FaultKind kind = FaultKind.values()[random.nextInt(FaultKind.values().length)];
    FaultCard card = FaultCard.of(kind, DirectBench.ENGLISH);
    Trigger[] triggers = Trigger.values();
    Trigger trigger =
        random.nextBoolean() ? card.trigger() : triggers[random.nextInt(triggers.length)];
    return card.deeds(kind.typical(), trigger);
  }

  private static Intent measured(Random random) {
    Spot spot = Spot.values()[random.nextInt(Spot.values().length)];
    MeterFunction[] functions = MeterFunction.values();
    MeterFunction function =
        random.nextBoolean() ? spot.function() : functions[random.nextInt(functions.length)];
    return new Intent.Measure(function, spot.placing());
  }

  private static Intent handed(Random random, State now) {
    return new Intent.HandOver(
        random.nextBoolean()
            ? now.standing().meter().withNewFuse()
            : Meter.fresh(ShippedMeters.all().get(random.nextInt(ShippedMeters.all().size()))));
  }

  /** What a click on a part's card wants. */
  private static Intent carded(Random random, State now) {
    DrawnPart part = DrawnPart.values()[random.nextInt(DrawnPart.values().length)];
    List<PartCard.Action> actions = PartCard.of(part, now, DirectBench.ENGLISH).actions();
    return actions.isEmpty()
        ? new Intent.Act(List.of(new Deed.TakeOff()), 0)
        : actions.get(random.nextInt(actions.size())).intent();
  }
}
