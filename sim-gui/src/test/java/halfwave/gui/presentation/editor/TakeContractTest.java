package halfwave.gui.presentation.editor;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Change;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.bench.RodPosition;
import halfwave.circuit.Point;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.bench.FaultCard;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Placing;
import halfwave.gui.presentation.bench.RodGesture;
import halfwave.instrument.HookUp;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.lesson.Play;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import halfwave.work.Repair;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What was done at the bench and recorded leads, played again, to the very same moment. */
class TakeContractTest {

  private final DirectBench bench = DirectBench.standing();

  private Take begin() {
    bench.want(new Intent.Enter(bench.moment()));
    return Take.begin(bench.shown());
  }

  private static Moment played(Take take, Take.Taken taken) {
    Play exactly = new Play(taken.acts(), taken.lengthMillis(), 1);
    return exactly.from(take.start()).performed().after();
  }

  static Stream<Deed> deeds() {
    Stream<Deed> plain =
        Stream.of(
            new Deed.Call(false),
            new Deed.Supply(false),
            new Deed.Damp(true),
            new Deed.Touch(),
            new Deed.TakeOff(),
            new Deed.PutRight(Repair.REPLACE_LEAD),
            new Deed.Alter(new Change.Upset(Disorder.GAS_SHUT, true)),
            new Deed.Alter(Change.Turned.to(Parameter.ROD_FILM, 2e-5)),
            new Deed.Alter(Change.Joined.by(Parameter.LEAKAGE, 5e6)),
            new Deed.Alter(new Change.HeldUp(2)),
            new Deed.HookOn(
                Meter.fresh(ShippedMeters.service()),
                MeterFunction.DC_VOLTS,
                new HookUp.Across(Point.TERMINAL, Point.COMMON)));
    Stream<Deed> faults =
        Stream.of(FaultKind.values())
            .flatMap(
                kind ->
                    FaultCard.found("", DirectBench.ENGLISH).stream()
                        .filter(c -> c.kind() == kind && c.trigger() == null)
                        .limit(1)
                        .flatMap(c -> c.deeds(kind.typical(), null).stream()))
            .limit(12);
    return Stream.concat(plain, faults);
  }

  @ParameterizedTest
  @MethodSource("deeds")
  void aDeedReplaysToTheSameMoment(Deed deed) {
    bench.want(DirectBench.act(DirectBench.turn(Parameter.LEAKAGE, 2e7)));
    Take take = begin();
    bench.want(new Intent.StepOn(1234L), DirectBench.act(deed), new Intent.StepOn(2345L));
    Take.Taken taken = take.taken(bench.shown());
    assertThat(taken.leftOut()).isEmpty();
    assertThat(taken.acts()).isNotEmpty().allMatch(a -> a.timeMillis() == 1234);
    assertThat(played(take, taken)).isEqualTo(bench.moment());
    assertThat(bench.mistakes).isEmpty();
  }

  @Test
  void severalDeedsReplayToTheSameMomentAndWhatIsUndoneWasNeverDone() {
    Take take = begin();
    bench.want(
        new Intent.StepOn(700L),
        DirectBench.act(DirectBench.turn(Parameter.GROUND, 1e6)),
        new Intent.StepOn(300L),
        DirectBench.act(new Deed.Supply(false)),
        new Intent.Undo(),
        new Intent.StepOn(5000L),
        DirectBench.act(new Deed.Become(Condition.HEALTHY)),
        new Intent.StepOn(40L));
    Take.Taken taken = take.taken(bench.shown());
    assertThat(taken.acts()).allMatch(a -> !(a.deed() instanceof Deed.Supply));
    assertThat(played(take, taken)).isEqualTo(bench.moment());
    Play play = taken.play();
    assertThat(play.lengthMillis()).isGreaterThanOrEqualTo(taken.lengthMillis());
    assertThat(play.lengthMillis() % 100).isZero();
  }

  /** Only where it ends is told, so that a class sees one act and not two hundred. */
  @Test
  void aDragIsTheActThatItEndsWith() {
    Take take = begin();
    for (int k = 1; k <= 20; k++) {
      bench.want(DirectBench.drag(7, Parameter.ROD_UP, 1e-4 * k), new Intent.StepOn(30L));
    }
    Take.Taken taken = take.taken(bench.shown());
    assertThat(taken.acts()).hasSize(1);
    assertThat(played(take, taken).bench().condition().rodPosition())
        .isEqualTo(bench.moment().bench().condition().rodPosition());
  }

  /** Straight to the end, one number after the other would lead through metal. */
  @Test
  void aDragRoundMetalReplaysWhole() {
    Take take = begin();
    RodPosition fitted = bench.moment().bench().condition().rodPosition();
    RodGesture gesture = new RodGesture(fitted, 9);
    for (int k = 1; k <= 30; k++) {
      bench.want(gesture.to(fitted.withUp(1e-3 * k)), new Intent.StepOn(20L));
    }
    for (int k = 1; k <= 30; k++) {
      bench.want(gesture.to(fitted.withUp(0.03).withAlong(-2e-3 * k)), new Intent.StepOn(20L));
    }
    Take.Taken taken = take.taken(bench.shown());
    assertThat(played(take, taken).bench().condition().rodPosition())
        .isEqualTo(bench.moment().bench().condition().rodPosition());
  }

  @Test
  void whatFilesHaveNoWordsForIsToldAndLeftOut() {
    Take take = begin();
    HookUp swapped = new HookUp.InSenseLead(LeadEnd.BOARD, false);
    bench.want(
        new Intent.Measure(MeterFunction.DC_MICROAMPS, new Placing.At(swapped)),
        DirectBench.act(new Deed.Call(false)));
    Take.Taken taken = take.taken(bench.shown());
    assertThat(taken.leftOut()).hasSize(1);
    assertThat(taken.acts()).extracting(a -> a.deed()).containsExactly(new Deed.Call(false));
  }

  @Test
  void anotherBenchEndsIt() {
    Take take = begin();
    assertThat(take.goesOn(bench.shown())).isTrue();
    bench.want(DirectBench.act(new Deed.Call(false)));
    assertThat(take.goesOn(bench.shown())).isTrue();
    List<Intent> elsewhere =
        List.of(new Intent.Enter(bench.moment()), DirectBench.opens(bench.moment().bench()));
    for (Intent intent : elsewhere) {
      bench.want(intent);
      assertThat(take.goesOn(bench.shown())).as("%s", intent.getClass()).isFalse();
    }
  }
}
