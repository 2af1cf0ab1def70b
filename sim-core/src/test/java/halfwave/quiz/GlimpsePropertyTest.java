package halfwave.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Disorder;
import halfwave.bench.ShippedBenches;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Occasion;
import halfwave.fault.FaultKind;
import halfwave.instrument.HookUp;
import halfwave.lesson.Words;
import halfwave.sequence.Hooked;
import halfwave.sequence.Moment;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What somebody had before him at each move, whatever is wrong. */
class GlimpsePropertyTest {

  private static final Appearances APPEARANCES = new Appearances();
  private static final Move CALL = new Move.Checked(new Check.Call());
  private static final Move READING =
      new Move.Checked(new Check.Read(MeterTest.SERIES_CURRENT, Occasion.TRIAL));
  private static final Move ROD = new Move.Checked(new Check.Looked(Look.ROD, Occasion.STANDBY));
  private static final Move LEAD_OFF =
      new Move.Checked(new Check.Read(MeterTest.TERMINAL_VOLTS_LEAD_OFF, Occasion.STANDBY));

  private static Visit visit(FaultKind kind) {
    Words words = new Words(Map.of("en", kind.id()));
    ServiceCall call =
        new ServiceCall(
            kind.id(),
            words,
            words,
            ShippedBenches.standard(),
            null,
            List.of(new Hidden(List.of(new Hidden.Part(kind, null)))),
            Set.of(),
            300,
            50,
            Objective.ROD,
            Level.BASIC,
            null);
    return Visit.begin(Variant.numbered(call, 1, 0), APPEARANCES, false);
  }

  private static List<Glimpse> seen(FaultKind kind, Move... moves) {
    Visit then = visit(kind);
    for (Move move : moves) {
      then = then.after(move);
    }
    return Glimpse.of(then);
  }

  @ParameterizedTest
  @EnumSource(
      value = FaultKind.class,
      names = {"ROD_SILICA", "CONNECTOR_OFF", "GROUND_LOST", "VALVE_STUCK_SHUT", "DOOR_OPEN"})
  void eachMoveHasWhatWasThere(FaultKind kind) {
    List<Glimpse> all =
        seen(
            kind,
            CALL,
            READING,
            new Move.Suspects(Set.of()),
            new Move.Power(false),
            new Move.Gas(false),
            ROD,
            new Move.Gas(true),
            new Move.Power(true));
    List<Boolean> supplied = new ArrayList<>();
    all.forEach(g -> supplied.add(g.moment().supply()));
    assertThat(supplied).containsExactly(true, true, true, false, false, false, false, true);
    assertThat(all)
        .extracting(Glimpse::gas)
        .containsExactly(true, true, true, true, false, false, true, true);
    // who only says something still has the same before him
    assertThat(all.get(2).moment()).isEqualTo(all.get(1).moment());
    // a shut cock is seen, an open one is not taken for shut
    assertThat(all.get(5).moment().bench().condition().appliance().has(Disorder.GAS_SHUT)).isTrue();
    assertThat(all.get(7).moment().bench().condition().appliance().has(Disorder.GAS_SHUT))
        .isFalse();
    assertThat(all.get(7).moment().call()).isFalse();
  }

  @Test
  void theMeterIsWhereItWas() {
    List<Glimpse> all =
        seen(
            FaultKind.ROD_SILICA, READING, new Move.Gas(false), LEAD_OFF, new Move.Gas(true), CALL);
    Hooked series = Objects.requireNonNull(all.get(0).moment().hooked());
    assertThat(series.hookUp()).isInstanceOf(HookUp.InSenseLead.class);
    assertThat(all.get(0).moment().furnace().burning()).isTrue();
    assertThat(Objects.requireNonNull(all.get(2).moment().hooked()).hookUp())
        .isInstanceOf(HookUp.Across.class);
    assertThat(all.get(2).moment().bench().condition().connectorOhms()).isInfinite();
    assertThat(all.get(4).moment().hooked()).isNull();
    assertThat(all.get(4).moment().bench().condition().connectorOhms()).isFinite();
  }

  @Test
  void aRepairIsSeen() {
    List<Glimpse> all =
        seen(
            FaultKind.CONNECTOR_OFF,
            new Move.Power(false),
            new Move.Gas(false),
            new Move.Repaired(Repair.REMAKE_CONNECTOR),
            new Move.Gas(true),
            new Move.Power(true),
            CALL);
    assertThat(all.get(1).moment().bench().condition().connectorOhms()).isGreaterThan(1e9);
    assertThat(all.get(2).moment().bench().condition().connectorOhms()).isLessThan(1e3);
    Moment watched = all.get(5).moment();
    assertThat(watched.furnace().burning()).isTrue();
    assertThat(watched.call()).isTrue();
  }

  @Test
  void aTestSignalIsNoFaultOfTheFurnace() {
    List<Glimpse> all =
        seen(
            FaultKind.ROD_SILICA,
            new Move.Power(false),
            new Move.Gas(false),
            new Move.Signal(true),
            new Move.Power(true));
    assertThat(all.get(3).signal()).isTrue();
    assertThat(all.get(3).moment().bench().condition().connectorOhms()).isInfinite();
    assertThat(all.get(3).moment().bench().condition().depositOhms())
        .isEqualTo(all.get(0).moment().bench().condition().depositOhms());
  }
}
