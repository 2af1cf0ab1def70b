package halfwave.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import halfwave.bench.ShippedBenches;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Occasion;
import halfwave.diagnosis.Outcome;
import halfwave.evidence.Course;
import halfwave.fault.FaultKind;
import halfwave.lesson.Words;
import halfwave.work.Caution;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds of a visit whatever is wrong. */
class VisitPropertyTest {

  private static final Appearances APPEARANCES = new Appearances();
  private static final Move CALL = new Move.Checked(new Check.Call());
  private static final Move ROD = new Move.Checked(new Check.Looked(Look.ROD, Occasion.STANDBY));
  private static final Move READING =
      new Move.Checked(new Check.Read(MeterTest.SERIES_CURRENT, Occasion.TRIAL));

  private static ServiceCall call(FaultKind kind, int minutes) {
    Words words = new Words(Map.of("en", kind.id()));
    return new ServiceCall(
        kind.id(),
        words,
        words,
        ShippedBenches.standard(),
        null,
        List.of(new Hidden(List.of(new Hidden.Part(kind, null)))),
        Set.of(Look.POLARITY),
        minutes,
        50,
        Objective.ROD,
        Level.BASIC,
        null);
  }

  private static Visit visit(FaultKind kind) {
    return Visit.begin(Variant.numbered(call(kind, 300), 1, 0), APPEARANCES, false);
  }

  private static Visit after(Visit visit, Move... moves) {
    Visit then = visit;
    for (Move move : moves) {
      then = then.after(move);
    }
    return then;
  }

  private static Outcome last(Visit visit) {
    return Objects.requireNonNull(visit.log().get(visit.log().size() - 1).outcome());
  }

  @Test
  void theSameMovesFindTheSame() {
    Move[] moves = {CALL, READING, new Move.Power(false), new Move.Gas(false), ROD};
    Visit one = after(visit(FaultKind.ROD_FOULED), moves);
    Visit other =
        after(
            Visit.begin(
                Variant.numbered(call(FaultKind.ROD_FOULED, 300), 1, 0), new Appearances(), false),
            moves);
    assertThat(other.log()).isEqualTo(one.log());
  }

  /** Nobody gets a better number by asking again. */
  @Test
  void theSameReadingTwiceIsTheSame() {
    Visit twice = after(visit(FaultKind.ROD_FOULED), READING, READING);
    assertThat(twice.log().get(0).outcome()).isEqualTo(twice.log().get(1).outcome());
  }

  @Test
  void learnersMeetDifferentFurnacesThatAreTheSameForEachOfThem() {
    ServiceCall call = call(FaultKind.ROD_FOULED, 300);
    Set<Integer> numbers = new HashSet<>();
    for (int k = 0; k < 40; k++) {
      Variant variant = Variant.of(call, 1, "learner " + k);
      assertThat(Variant.of(call, 1, "learner " + k)).isEqualTo(variant);
      numbers.add(variant.number());
    }
    assertThat(numbers).hasSize(Variant.COUNT);
  }

  @Test
  void workOnALiveApplianceStopsTheCall() {
    Visit stopped = after(visit(FaultKind.ROD_FOULED), ROD);
    assertThat(stopped.ending()).contains(Ending.DANGER);
    assertThat(stopped.log().get(0).danger()).isEqualTo(Caution.OFF_BEFORE_OPENING);
    assertThat(stopped.refusal(CALL)).contains(Refusal.OVER);
    assertThatThrownBy(() -> stopped.after(CALL)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @EnumSource
  void whatNobodyMayDoStopsTheCall(Temptation temptation) {
    Visit stopped = after(visit(FaultKind.ROD_FOULED), new Move.Tempted(temptation));
    assertThat(stopped.ending()).contains(Ending.DANGER);
    assertThat(stopped.log().get(0).danger()).isEqualTo(temptation.caution());
  }

  @Test
  void whatIsClosedOrNeedsPowerIsRefusedAndTakesNoTime() {
    Visit off = after(visit(FaultKind.ROD_FOULED), new Move.Power(false));
    assertThat(off.refusal(CALL)).contains(Refusal.NO_POWER);
    assertThat(off.refusal(new Move.Power(false))).contains(Refusal.ALREADY);
    assertThat(off.refusal(new Move.Checked(new Check.Looked(Look.POLARITY, Occasion.STANDBY))))
        .contains(Refusal.CLOSED);
    assertThat(off.refusal(new Move.Hint(1))).contains(Refusal.NO_HINTS);
    assertThat(after(visit(FaultKind.ROD_FOULED), new Move.Gas(false)).refusal(READING))
        .contains(Refusal.NO_GAS);
    assertThat(off.minutes()).isZero();
  }

  @Test
  void timeThatIsUsedUpEndsTheCall() {
    Visit visit =
        Visit.begin(Variant.numbered(call(FaultKind.ROD_FOULED, 5), 1, 0), APPEARANCES, false);
    assertThat(after(visit, CALL).ending()).contains(Ending.TIME_UP);
  }

  @Test
  void theRightRepairMakesItWhole() {
    Visit mended =
        after(
            visit(FaultKind.GROUND_LOST),
            new Move.Power(false),
            new Move.Gas(false),
            new Move.Repaired(Repair.RESTORE_BOND),
            new Move.Power(true),
            new Move.Gas(true),
            CALL);
    assertThat(mended.whole()).isTrue();
    assertThat(last(mended)).isEqualTo(new Outcome.Found(Course.RUNS));
  }

  private static Visit withSignal(FaultKind kind) {
    return after(
        visit(kind),
        new Move.Gas(false),
        new Move.Power(false),
        new Move.Signal(true),
        new Move.Power(true));
  }

  /** The board alone is left between the signal and its light. */
  @Test
  void aTestSignalTellsTheBoardFromTheRest() {
    Outcome sees = new Outcome.Found(Course.SEES_FALSE_FLAME);
    assertThat(last(after(withSignal(FaultKind.LEAD_BROKEN), CALL))).isEqualTo(sees);
    assertThat(last(after(withSignal(FaultKind.GROUND_LOST), CALL))).isEqualTo(sees);
    assertThat(last(after(withSignal(FaultKind.SENSE_SUPPLY_DEAD), CALL))).isNotEqualTo(sees);
    assertThat(last(after(withSignal(FaultKind.BOARD_DEAF), CALL))).isNotEqualTo(sees);
  }

  @Test
  void aTestSignalIsForAShutGasCockOnly() {
    assertThat(after(visit(FaultKind.LEAD_BROKEN), new Move.Signal(true)).ending())
        .contains(Ending.DANGER);
    assertThat(withSignal(FaultKind.LEAD_BROKEN).refusal(READING)).isPresent();
    Visit opened = after(withSignal(FaultKind.LEAD_BROKEN), new Move.Gas(true));
    assertThat(opened.ending()).contains(Ending.DANGER);
    assertThat(opened.log().get(opened.log().size() - 1).danger()).isEqualTo(Caution.NEVER_BYPASS);
  }
}
