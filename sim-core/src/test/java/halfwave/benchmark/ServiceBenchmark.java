package halfwave.benchmark;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.circuit.Circuit;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Look;
import halfwave.instrument.Measuring;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.instrument.Subject;
import halfwave.work.Repair;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * A service situation: a shipped bench with one or two faults, microamps in series, a repair, and
 * microamps again.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.MINUTES)
public class ServiceBenchmark {

  private final SplittableRandom random = new SplittableRandom(3);
  private final Meter meter = Meter.fresh(ShippedMeters.service());

  /** One situation. */
  @Benchmark
  public Object situation() {
    Bench bench = one(ShippedBenches.all().toArray(Bench[]::new));
    FaultKind first = one(FaultKind.values());
    FaultKind second = one(FaultKind.values());
    Bench faulty = Fault.typical(first).on(bench);
    faulty = second == first ? faulty : Fault.typical(second).on(faulty);
    Object before = reading(faulty);
    return new Object[] {before, reading(one(Repair.values()).on(faulty))};
  }

  private Object reading(Bench bench) {
    Stages stages = new Stages();
    Circuit circuit = BenchCircuit.of(bench, stages.flame(bench));
    return Measuring.of(
        meter,
        MeterFunction.AC_AND_DC_MICROAMPS,
        new InSenseLead(LeadEnd.BOARD, true),
        Subject.of(circuit),
        Look.settled(1));
  }

  private <T> T one(T[] all) {
    return all[random.nextInt(all.length)];
  }
}
