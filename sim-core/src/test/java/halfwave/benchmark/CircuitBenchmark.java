package halfwave.benchmark;

import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.circuit.Circuit;
import halfwave.circuit.ConductionLaw;
import halfwave.circuit.LumpedCircuit;
import halfwave.circuit.LumpedCircuit.Film;
import halfwave.circuit.LumpedCircuit.Ground;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Readings;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.circuit.Prepared;
import halfwave.circuit.Solved;
import halfwave.circuit.SquareRootLaw;
import halfwave.circuit.SteadyState;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** From a circuit's value, and from a bench's geometry, to the five readings. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CircuitBenchmark {

  private static final SquareRootLaw FLAME = new SquareRootLaw(2.5e-7, 8e-7, 5e4);

  private final LumpedCircuit plain = plain(FLAME);

  private final Prepared prepared = new Prepared(plain.circuit());

  /** The flame path that the standard bench tabulates. */
  private final LumpedCircuit plainTabulated =
      plain(new Stages().flame(ShippedBenches.standard()).path());

  private final LumpedCircuit filmAndCable =
      new LumpedCircuit(
          new Source(110, 60, 2.2e6, null, null),
          new Lead(1, 2e8, 1e-10),
          new Film(3e6, 3.4e-10),
          FLAME,
          null,
          new Ground(1));

  /** 0.22 uF and 10 megohm: 2.2 s. */
  private final LumpedCircuit coupled =
      new LumpedCircuit(
          new Source(110, 60, 1e6, 2.2e-7, 1e7),
          new Lead(1, 2e8, 1e-10),
          null,
          FLAME,
          null,
          new Ground(1));

  /** Without capacitors. */
  @Benchmark
  public Readings a_plain() {
    return readings(plain.circuit());
  }

  /** The same, its reduction made before. */
  @Benchmark
  public Readings a2_prepared() {
    return prepared.readings();
  }

  /** Without capacitors, the flame from a table. */
  @Benchmark
  public Readings a3_tabulated() {
    return readings(plainTabulated.circuit());
  }

  /** A film on the rod and the cable's capacitance. */
  @Benchmark
  public Readings b_filmAndCable() {
    return readings(filmAndCable.circuit());
  }

  /** A coupling capacitor with a time constant of seconds. */
  @Benchmark
  public Readings c_coupled() {
    return readings(coupled.circuit());
  }

  /** The standard bench, nothing remembered: field, rod, burner, path, circuit, readings. */
  @Benchmark
  public Readings d_wholeBench() {
    return readings(new Stages().circuit(ShippedBenches.standard()));
  }

  private static LumpedCircuit plain(ConductionLaw flame) {
    return new LumpedCircuit(
        new Source(110, 60, 2.2e6, null, null),
        new Lead(1, 2e8, null),
        null,
        flame,
        null,
        new Ground(1));
  }

  private static Readings readings(Circuit circuit) {
    return Readings.of((Solved) SteadyState.of(circuit));
  }
}
