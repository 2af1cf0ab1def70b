package halfwave.gui.presentation.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.Stage;
import halfwave.circuit.Point;
import halfwave.instrument.HookUp;
import halfwave.instrument.MeterFunction;
import halfwave.sequence.Deed;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Dial and leads of a meter are two things: who turns one does not move the other. */
class MeterDialTest {

  private final DirectBench bench = DirectBench.standing();

  private MeterView meter() {
    return MeterView.of(bench.shown(), DirectBench.ENGLISH);
  }

  private static Intent.Lead to(Spot spot) {
    return new Intent.Lead(spot.placing(), spot.function());
  }

  @Test
  void besideTheBenchOnlyTheDialTurns() {
    bench.want(DirectBench.act(new Deed.TakeOff()));
    int acts = bench.shown().history().done().size();
    bench.want(new Intent.Turn(MeterFunction.DC_VOLTS), new Intent.StepOn(10_000L));

    assertThat(bench.moment().hooked()).isNull();
    assertThat(bench.moment().board().stage()).isEqualTo(Stage.RUN);
    assertThat(bench.shown().history().done()).hasSize(acts);
    assertThat(meter().function()).isEqualTo(MeterFunction.DC_VOLTS);
    assertThat(meter().unit()).isEqualTo("V DC");
  }

  @Test
  void leadsKeepWhatTheDialHas() {
    bench.want(
        DirectBench.act(new Deed.TakeOff()),
        new Intent.Turn(MeterFunction.LOW_IMPEDANCE_AC_VOLTS),
        to(Spot.LINE_TO_NEUTRAL),
        to(Spot.TERMINAL_TO_COMMON));

    assertThat(bench.moment().hooked().function()).isEqualTo(MeterFunction.LOW_IMPEDANCE_AC_VOLTS);
    assertThat(Spot.TERMINAL_TO_COMMON.holds(bench.moment().hooked().hookUp())).isTrue();
    assertThat(meter().cautions()).isNotEmpty();
  }

  @Test
  void microampsOnTheLineBlowTheFuseAndTheFaceSaysSo() {
    assertThat(meter().alarm()).isEmpty();
    bench.want(to(Spot.LINE_TO_NEUTRAL));

    assertThat(meter().cautions()).isNotEmpty();
    assertThat(meter().alarm()).containsIgnoringCase("fuse");
  }

  @Test
  void aDialThatNobodyTurnedIsSetToWhatIsUsualThere() {
    State state = bench.shown();
    Effects effects = new Effects();
    State unmetered = effects.running(DirectBench.opens(state.moment().bench()), false);
    State placed = effects.after(unmetered, to(Spot.LINE_TO_NEUTRAL));

    assertThat(placed.moment().hooked().function()).isEqualTo(MeterFunction.AC_VOLTS);
  }

  @Test
  void undoBringsTheDialBackWithTheLeads() {
    bench.want(to(Spot.SERIES_AT_BOARD), new Intent.Turn(MeterFunction.OHMS), new Intent.Undo());

    assertThat(bench.shown().standing().dial()).isEqualTo(MeterFunction.DC_MICROAMPS);
  }

  @Test
  void aPlaceIsKnownAgainWithItsLeadsSwapped() {
    HookUp across = new HookUp.Across(Point.CHASSIS, Point.ROD);

    assertThat(Arrays.stream(Spot.values()).filter(s -> s.holds(across)))
        .containsExactly(Spot.ROD_TO_BURNER);
  }

  @Test
  void tellsThatTheOpenedLeadEndedTheFlame() {
    String said = DirectBench.ENGLISH.text("meter.lead-opened");
    assertThat(meter().cautions()).doesNotContain(said);

    bench.want(
        DirectBench.act(new Deed.TakeOff()),
        new Intent.StepOn(10_000L),
        new Intent.Turn(MeterFunction.DC_MICROAMPS),
        to(Spot.SERIES_AT_BOARD));
    assertThat(meter().cautions()).as("while it is open").contains(said);

    bench.want(new Intent.StepOn(15_000L));
    assertThat(bench.moment().board().stage()).isNotEqualTo(Stage.RUN);
    assertThat(meter().cautions()).as("after it").contains(said);

    bench.want(new Intent.StepOn(150_000L));
    assertThat(bench.moment().board().stage()).isEqualTo(Stage.RUN);
    assertThat(meter().cautions()).as("when the flame is back").doesNotContain(said);
  }
}
