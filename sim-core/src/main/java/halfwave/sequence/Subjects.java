package halfwave.sequence;

import halfwave.bench.ApplianceCondition;
import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.BenchFlame;
import halfwave.bench.Disorder;
import halfwave.bench.ProbeWire;
import halfwave.bench.Stages;
import halfwave.board.Ignition;
import halfwave.circuit.Circuit;
import halfwave.circuit.Point;
import halfwave.flame.FlameCalibration;
import halfwave.instrument.HookUp.WireInFlame;
import halfwave.instrument.Subject;
import halfwave.instrument.Supply;

/** What a meter meets at a moment: the circuit as it is, hot or cold, lit or dark, live or not. */
public final class Subjects {

  private Subjects() {}

  /** What there is to measure at that moment. The meter's own load is not fed back to the board. */
  public static Subject at(Moment moment) {
    Bench bench = bench(moment);
    BenchFlame flame = new Stages().flame(bench);
    boolean lit = moment.furnace().growthRatio() > 0;
    Circuit circuit = lit ? BenchCircuit.of(bench, flame) : BenchCircuit.withoutFlame(bench, flame);
    ApplianceCondition appliance = bench.condition().appliance();
    Subject here = Subject.of(circuit);
    if (bench.design().ignition() == Ignition.SPARK_AND_SENSE) {
      here = here.withSparkingRod();
    }
    if (!moment.supply()) {
      return here.unpowered();
    }
    Supply supply =
        appliance.has(Disorder.LINE_REVERSED) ? Supply.CORRECT.lineReversed() : Supply.CORRECT;
    // the door's switch cuts the board off, not the outlet
    Circuit seen = appliance.has(Disorder.DOOR_OPEN) ? circuit.unpowered() : circuit;
    return new Subject(seen, supply, moment.outputs().spark(), here.rodSparks());
  }

  /** A wire held in the flame, the other lead on a point; red on the wire. */
  public static WireInFlame wire(Moment moment, ProbeWire wire, Point other) {
    Bench bench = bench(moment);
    return new WireInFlame(wire.against(bench, new Stages().flame(bench)), other, true);
  }

  /**
   * The bench with the rod as warm, and the flame as grown, as they are; where nothing burns, with
   * the flame that it would have.
   */
  public static Bench bench(Moment moment) {
    Bench bench = moment.benchNow();
    Furnace furnace = moment.furnace();
    FlameCalibration flame = bench.design().flame();
    double strength = furnace.growthRatio() > 0 ? furnace.growthRatio() : 1;
    return bench
        .with(
            bench
                .design()
                .withFlame(flame.withIonMultiplier(strength * flame.ionMultiplierRatio())))
        .with(bench.condition().withRodKelvin(Math.max(280, Math.min(1600, furnace.rodKelvin()))));
  }
}
