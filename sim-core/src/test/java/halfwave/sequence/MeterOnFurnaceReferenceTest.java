package halfwave.sequence;

import static halfwave.sequence.Calls.MINUTE;
import static halfwave.sequence.Calls.SECOND;
import static halfwave.sequence.Calls.board;
import static halfwave.sequence.Calls.entries;
import static halfwave.sequence.Calls.play;
import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.Stage;
import halfwave.circuit.Point;
import halfwave.instrument.Figure;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Measurement;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.instrument.Shown;
import halfwave.instrument.SupplyPoint;
import halfwave.message.MessageKey;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A meter on a burning furnace. Source of all: common practice, no published source. */
@Validated(Area.SEQUENCE)
class MeterOnFurnaceReferenceTest {

  private static final Reference PRACTICE = Reference.practice("common practice");
  private static final Bench BENCH = ShippedBenches.standard();
  private static final long ON = 3 * MINUTE;

  private static Segment with(MeterFunction function, HookUp hookUp, long millis, Act... more) {
    Act[] acts = new Act[more.length + 1];
    acts[0] = hook(ON, function, hookUp);
    System.arraycopy(more, 0, acts, 1, more.length);
    return play(BENCH, board("carbide-four-trials"), ON + millis, acts);
  }

  private static Act hook(long millis, MeterFunction function, HookUp hookUp) {
    Meter meter = Meter.fresh(ShippedMeters.service());
    return new Act(millis, new Deed.HookOn(meter, function, hookUp));
  }

  private static double shown(Segment segment) {
    Measurement measured = MeterDisplay.at(segment.end()).orElseThrow();
    Figure figure =
        measured.shown() instanceof Shown.Direct direct
            ? direct.figure()
            : ((Shown.Alternating) measured.shown()).figure();
    return ((Figure.Value) figure).quantity().si();
  }

  /** Opening the lead with the burner running drops it out; it comes back with the meter in it. */
  @Test
  void openingTheLeadDropsTheFlame() {
    HookUp series = new InSenseLead(LeadEnd.BOARD, true);
    Segment soon = with(MeterFunction.DC_MICROAMPS, series, 4 * SECOND);
    assertThat(entries(soon, Stage.INTER_PURGE)).hasSize(1);
    assertThat(soon.end().outputs().gas()).isFalse();

    Segment later = with(MeterFunction.DC_MICROAMPS, series, 3 * MINUTE);
    assertThat(later.end().board().stage()).isEqualTo(Stage.RUN);
    goodSignal("opened while it burned", shown(later));
  }

  private static void goodSignal(String at, double amps) {
    PRACTICE
        .check("DC on a meter in a burning furnace", Unit.MICROAMPS, amps)
        .at(at)
        .isBetween(2e-6, 3.5e-6, "what the trade calls a good signal");
  }

  /** With the power off to connect, nothing is lost. */
  @Test
  void powerOffToConnectIsTheRightWay() {
    Segment right =
        play(
            BENCH,
            board("carbide-four-trials"),
            4 * MINUTE,
            hook(0, MeterFunction.DC_MICROAMPS, new InSenseLead(LeadEnd.BOARD, true)));
    assertThat(entries(right, Stage.INTER_PURGE)).isEmpty();
    goodSignal("connected without power", shown(right));
  }

  /** A 10 Mohm voltmeter lowers the signal, and the board holds. */
  @Test
  void highImpedanceVoltmeterIsBorne() {
    Segment run = with(MeterFunction.AC_VOLTS, new Across(Point.TERMINAL, Point.COMMON), MINUTE);
    assertThat(run.end().board().stage()).isEqualTo(Stage.RUN);
    PRACTICE
        .check("10 MΩ meter on a burning furnace", Unit.VOLTS, shown(run))
        .isBetween(50, 85, "common range with flame");
    PRACTICE
        .check("signal while that meter hangs on", Unit.MICROAMPS, run.end().filter().meanAmps())
        .isBetween(1.5e-6, 2.3e-6, "it falls, and the board holds");
  }

  /** Low impedance, or a microamp range, across the source: the board loses its flame. */
  @Test
  void shortingMetersLoseTheFlame() {
    Across terminal = new Across(Point.TERMINAL, Point.COMMON);
    for (MeterFunction function :
        new MeterFunction[] {MeterFunction.LOW_IMPEDANCE_AC_VOLTS, MeterFunction.DC_MICROAMPS}) {
      Segment run = with(function, terminal, 5 * SECOND);
      assertThat(run.end().outputs().gas()).as("%s", function).isFalse();
      assertThat(run.events())
          .filteredOn(e -> e.subject() == Event.Subject.ACT)
          .hasSizeGreaterThan(3);
    }
  }

  /** A blown fuse stays blown, and the meter then reads zero on a healthy furnace. */
  @Test
  void blownFuseReadsZeroAfterwards() {
    Segment run =
        with(
            MeterFunction.DC_MICROAMPS,
            new AcrossSupply(SupplyPoint.LINE, SupplyPoint.NEUTRAL),
            SECOND);
    Meter blown = run.end().hooked().meter();
    assertThat(blown.fuseIntact()).isFalse();

    Act again =
        new Act(
            run.end().timeMillis(),
            new Deed.HookOn(
                blown, MeterFunction.DC_MICROAMPS, new InSenseLead(LeadEnd.BOARD, true)));
    Segment later =
        new Sequence().advance(run.end(), run.end().timeMillis() + MINUTE, List.of(again));
    assertThat(shown(later)).isZero();
    assertThat(later.end().outputs().gas()).isFalse();
  }

  /** Where the rod is the spark electrode, a meter in its lead dies with the spark. */
  @Test
  void noMeterOnAnElectrodeThatSparks() {
    Bench one = ShippedBenches.named("spark-and-sense-rod").orElseThrow();
    Segment start = play(one, board("spark-three-trials"), MINUTE);
    long trial = entries(start, Stage.TRIAL).get(0);
    Segment run =
        play(
            one,
            board("spark-three-trials"),
            MINUTE,
            hook(trial + SECOND, MeterFunction.DC_MICROAMPS, new InSenseLead(LeadEnd.ROD, true)));
    assertThat(run.end().hooked().meter().alive()).isFalse();
    assertThat(run.events())
        .anyMatch(e -> e.message().key() == MessageKey.METER_ON_SPARK_ELECTRODE);
  }

  /** Taken off, the furnace is as before. */
  @Test
  void takenOffItIsGone() {
    Segment run =
        with(
            MeterFunction.AC_VOLTS,
            new Across(Point.TERMINAL, Point.COMMON),
            MINUTE,
            new Act(ON + 10 * SECOND, new Deed.TakeOff()));
    assertThat(MeterDisplay.at(run.end())).isEmpty();
    PRACTICE
        .check("signal with the meter taken off", Unit.MICROAMPS, run.end().filter().meanAmps())
        .isAbove(2.2e-6, "above what it was with the meter on");
  }
}
