package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.bench.BenchFlame;
import halfwave.bench.Disorder;
import halfwave.bench.ProbeWire;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.bench.Trigger;
import halfwave.board.BoardOutputs;
import halfwave.board.BoardSettings;
import halfwave.board.BoardState;
import halfwave.board.SenseFilter;
import halfwave.board.ShippedBoards;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.circuit.Point;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.explain.VoltageLadder;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.instrument.HookUp;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.instrument.SupplyPoint;
import halfwave.picture.scene.Arrows;
import halfwave.picture.scene.DrawnBench;
import halfwave.sequence.Furnace;
import halfwave.sequence.Hooked;
import halfwave.sequence.Moment;
import java.util.EnumSet;
import java.util.Set;

/** Benches at one instant, as the drawing's tests and sheets need them. */
final class DrawnScenes {

  private static final Set<Trigger> EVERYTHING = EnumSet.allOf(Trigger.class);

  private DrawnScenes() {}

  static Bench standard() {
    return ShippedBenches.standard();
  }

  static Bench with(FaultKind... kinds) {
    Bench bench = standard();
    for (FaultKind kind : kinds) {
      bench = Fault.typical(kind).on(bench);
    }
    return bench;
  }

  static BoardSettings board(Bench bench) {
    return ShippedBoards.all().stream()
        .filter(b -> b.ignition().fits(bench.design().ignition()))
        .findFirst()
        .orElseThrow();
  }

  /** In steady operation, whatever lurks being out; a flame that cannot burn does not. */
  static DrawnBench running(Bench bench) {
    return of(bench, true, null, "");
  }

  static DrawnBench cold(Bench bench) {
    return of(bench, false, null, "");
  }

  static DrawnBench measured(Bench bench, HookUp hookUp, String reading) {
    return of(bench, true, hookUp, reading);
  }

  static DrawnBench inSeries(LeadEnd end) {
    return measured(standard(), new HookUp.InSenseLead(end, true), "3.0 µA DC");
  }

  static DrawnBench across(Point red, Point black, String reading) {
    return measured(standard(), new HookUp.Across(red, black), reading);
  }

  static DrawnBench onSupply() {
    return measured(
        standard(), new HookUp.AcrossSupply(SupplyPoint.LINE, SupplyPoint.GROUND), "120.3 V AC");
  }

  static DrawnBench wireInFlame() {
    Bench bench = standard();
    BenchFlame flame = new Stages().flame(bench);
    return measured(
        bench,
        new HookUp.WireInFlame(ProbeWire.IN_ROOT.against(bench, flame), Point.ROD, true),
        "−7.4 V DC");
  }

  static DrawnBench of(
      Bench bench, boolean called, @org.jspecify.annotations.Nullable HookUp hookUp, String text) {
    Stages stages = new Stages();
    Bench now = bench.under(EVERYTHING);
    BenchFlame flame = stages.flame(now);
    boolean gas = called && !now.condition().appliance().has(Disorder.GAS_SHUT);
    boolean burns = gas && flame.burning();
    int lit = burns ? bench.design().burnerCount() : 0;
    Furnace furnace =
        new Furnace(
            1,
            true,
            gas ? 1 : 0,
            called ? 700 : 300,
            lit,
            0,
            burns ? 1 : 0,
            0,
            1150,
            500,
            false,
            0,
            0,
            false);
    BoardSettings settings = board(bench);
    BoardState rest = BoardState.unpowered(settings);
    BoardState state =
        new BoardState(
            called ? Stage.RUN : Stage.STANDBY,
            60_000,
            60_000,
            0,
            0,
            0,
            0,
            called,
            60_000,
            17_000,
            StatusCode.READY,
            rest.locked());
    Hooked hooked =
        hookUp == null
            ? null
            : new Hooked(
                Meter.fresh(ShippedMeters.service()), MeterFunction.DC_MICROAMPS, hookUp, 0, false);
    Moment moment =
        new Moment(
            75_000,
            bench,
            settings,
            state,
            new BoardOutputs(called, false, false, false, called, called),
            EVERYTHING,
            SenseFilter.QUIET,
            furnace,
            hooked,
            true,
            called,
            false,
            1);
    return new DrawnBench(
        moment,
        flame,
        called ? StatusCode.FLAME : StatusCode.READY,
        burns ? arrows(stages, now, flame) : null,
        text);
  }

  private static @org.jspecify.annotations.Nullable Arrows arrows(
      Stages stages, Bench now, BenchFlame flame) {
    SteadyState state = SteadyState.of(stages.circuit(now));
    return state instanceof Solved solved
        ? Arrows.of(
            VoltageLadder.rodPositive(solved, flame.path()),
            VoltageLadder.rodNegative(solved, flame.path()))
        : null;
  }
}
