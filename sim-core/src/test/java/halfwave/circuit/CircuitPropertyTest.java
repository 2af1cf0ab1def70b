package halfwave.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.Element.Capacitor;
import halfwave.circuit.Element.Conductor;
import halfwave.circuit.Element.Resistor;
import halfwave.circuit.LumpedCircuit.Ground;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * What holds for every circuit, on seeded random ones; twenty-five times as many with
 * halfwave.deep.
 */
class CircuitPropertyTest {

  private static final int COUNT = Boolean.getBoolean("halfwave.deep") ? 100_000 : 4_000;

  private static RandomCircuits circuits(long seed) {
    return new RandomCircuits(new SplittableRandom(seed));
  }

  /** Kirchhoff's current law for the means: capacitors keep no charge over a period. */
  @Test
  void chargeAndPowerBalance() {
    RandomCircuits circuits = circuits(1);
    for (int k = 0; k < COUNT; k++) {
      LumpedCircuit lumped = circuits.any();
      Solved s = OracleCircuits.solved(lumped.circuit());
      double board = s.currentMeanAmps(Part.CONNECTOR);
      double rest =
          s.currentMeanAmps(Part.LEAD)
              + s.currentMeanAmps(Part.INSULATION)
              + s.currentMeanAmps(Part.CABLE);
      // rounding of potentials up to 325 V across the least resistance, 0.05 ohm, is 1e-12 A
      assertThat(board - rest).as("%s", lumped).isCloseTo(0, within(1e-11));
      allFinite(s, lumped.circuit());
      powerBalances(s);
    }
  }

  private static void allFinite(Solved s, Circuit circuit) {
    double sum = 0;
    for (Element e : circuit.elements()) {
      sum += s.currentMeanAmps(e.part()) + s.currentAlternatingRmsAmps(e.part());
      sum += s.voltageMeanVolts(e.from(), e.to());
      sum += s.voltageAlternatingRmsVolts(e.from(), e.to());
    }
    assertThat(sum).as("%s", circuit).isFinite();
  }

  /**
   * The powers add up to 1e-9 of the source's. No element but the source gives any; a contact in
   * which nearly nothing is lost is rounded, which an ulp of the source's power allows for.
   */
  private static void powerBalances(Solved s) {
    PowerBalance balance = PowerBalance.of(s);
    double source = balance.sourceWatts();
    assertThat(balance.residualWatts()).as("%s", s.circuit()).isCloseTo(0, within(1e-9 * source));
    for (Element e : s.circuit().elements()) {
      double watts = balance.watts(e.part());
      double most = e instanceof Capacitor ? 0 : Double.POSITIVE_INFINITY;
      assertThat(watts).as("%s in %s", e.part(), s.circuit()).isBetween(-Math.ulp(source), most);
    }
  }

  /**
   * Where the loop is broken, exactly nothing flows through the flame; also without a ground, where
   * the flame still closes a loop with the insulation, but none with the source.
   */
  @Test
  void aBrokenLoopCarriesNothing() {
    RandomCircuits circuits = circuits(2);
    for (int k = 0; k < COUNT / 5; k++) {
      LumpedCircuit c = circuits.any();
      double ohms = Double.POSITIVE_INFINITY;
      Lead lead = new Lead(ohms, c.lead().insulationOhms(), c.lead().capacitanceFarads());
      silent(
          new LumpedCircuit(c.source(), lead, c.rodFilm(), c.flame(), c.burnerFilm(), c.ground()));
      silent(
          new LumpedCircuit(
              c.source(), c.lead(), c.rodFilm(), c.flame(), c.burnerFilm(), new Ground(ohms)));
    }
  }

  private static void silent(LumpedCircuit c) {
    Solved s = OracleCircuits.solved(c.circuit());
    assertThat(s.currentMeanAmps(Part.FLAME)).as("%s", c).isZero();
    assertThat(s.currentAlternatingRmsAmps(Part.FLAME)).as("%s", c).isZero();
  }

  /** Exchanging the electrodes is the same as starting half a period later with a minus sign. */
  @Test
  void swappedElectrodesSwapTheSign() {
    RandomCircuits circuits = circuits(3);
    for (int k = 0; k < COUNT / 5; k++) {
      LumpedCircuit c = circuits.any();
      SquareRootLaw law = (SquareRootLaw) c.flame();
      SquareRootLaw swapped =
          new SquareRootLaw(
              law.burnerIonAmpsPerRootVolt(), law.rodIonAmpsPerRootVolt(), law.columnOhms());
      LumpedCircuit mirrored =
          new LumpedCircuit(c.source(), c.lead(), c.rodFilm(), swapped, c.burnerFilm(), c.ground());
      Solved a = OracleCircuits.solved(c.circuit());
      Solved b = OracleCircuits.solved(mirrored.circuit());
      double scale = a.currentAlternatingRmsAmps(Part.FLAME);
      // the period closes to 1e-7 of the source; a slow film turns that into a little more
      assertThat(a.currentMeanAmps(Part.FLAME) + b.currentMeanAmps(Part.FLAME))
          .as("%s", c)
          .isCloseTo(0, within(1e-5 * scale + 1e-15));
    }
  }

  /** Source: monotony of a resistive network with one rising law; |DC| for the square root. */
  @Test
  void moreSeriesResistanceNeverHelps() {
    RandomCircuits circuits = circuits(4);
    for (int k = 0; k < COUNT; k++) {
      Source s = circuits.source();
      Source direct =
          new Source(
              s.openCircuitRmsVolts(),
              s.frequencyHertz(),
              s.resistanceOhms(),
              null,
              s.returnOhms());
      double ohms = circuits.spread(1, 1e7);
      LumpedCircuit less = resistive(direct, ohms, circuits.law());
      LumpedCircuit more = resistive(direct, ohms * circuits.spread(1.001, 30), less.flame());
      Solved a = OracleCircuits.solved(less.circuit());
      Solved b = OracleCircuits.solved(more.circuit());
      double[] ia = a.currentAmps(Part.FLAME);
      double[] ib = b.currentAmps(Part.FLAME);
      assertThat(largest(ib, 1)).isLessThanOrEqualTo(largest(ia, 1));
      assertThat(largest(ib, -1)).isLessThanOrEqualTo(largest(ia, -1));
      // equal electrodes leave a rounding of 1e-16 of the current on both sides
      double rounding = 1e-15 * a.currentAlternatingRmsAmps(Part.FLAME);
      assertThat(Math.abs(b.currentMeanAmps(Part.FLAME)))
          .isLessThanOrEqualTo(Math.abs(a.currentMeanAmps(Part.FLAME)) + rounding);
    }
  }

  private static LumpedCircuit resistive(Source source, double leadOhms, ConductionLaw law) {
    return new LumpedCircuit(
        source, new Lead(leadOhms, 1e8, null), null, law, null, new Ground(10));
  }

  private static double largest(double[] values, int sign) {
    double most = 0;
    for (double v : values) {
      most = Math.max(most, sign * v);
    }
    return most;
  }

  /** Meters, jumpers and capacitors between any two points, also where that shorts something. */
  @Test
  void metersAnywhere() {
    RandomCircuits circuits = circuits(5);
    SplittableRandom random = new SplittableRandom(55);
    int shorted = 0;
    for (int k = 0; k < COUNT; k++) {
      Circuit circuit = circuits.any().circuit();
      circuit = circuit.with(meter(random, circuits, Part.METER, Part.METER_CAPACITANCE));
      circuit =
          circuit.with(meter(random, circuits, Part.SECOND_METER, Part.SECOND_METER_CAPACITANCE));
      SteadyState state = SteadyState.of(circuit);
      boolean short_ = new Topology(circuit).sourceShorted();
      shorted += short_ ? 1 : 0;
      assertThat(state)
          .as("%s", circuit)
          .isInstanceOf(short_ ? SteadyState.Failed.class : Solved.class);
      List<Solved> solved = state instanceof Solved s ? List.of(s) : List.of();
      for (Solved s : solved) {
        allFinite(s, circuit);
        powerBalances(s);
      }
    }
    assertThat(shorted).isLessThan(COUNT / 20);
  }

  private static Element[] meter(
      SplittableRandom random, RandomCircuits circuits, Part part, Part capacitance) {
    Point[] points = Point.values();
    // PLASMA and PROBE, the last two, join nothing here; EMF may be touched as well
    Point from = points[random.nextInt(points.length)];
    Point to = points[random.nextInt(points.length)];
    double ohms = circuits.chance(0.05) ? 0 : circuits.spread(1, 1e8);
    List<Element> meter = new ArrayList<>();
    meter.add(new Resistor(part, from, to, ohms));
    if (circuits.chance(0.7)) {
      meter.add(new Capacitor(capacitance, from, to, circuits.spread(1e-12, 1e-8)));
    }
    return meter.toArray(new Element[0]);
  }

  /** A probe in the flame with a meter to the rod; the rod may float, the probe too. */
  @Test
  void threeElectrodesInOnePlasma() {
    RandomCircuits circuits = circuits(6);
    for (int k = 0; k < COUNT / 10; k++) {
      Circuit circuit = threeElectrodes(circuits);
      Solved s = OracleCircuits.solved(circuit);
      allFinite(s, circuit);
      powerBalances(s);
      double[] rod = s.currentAmps(Part.ROD_SHEATH);
      double[] probe = s.currentAmps(Part.PROBE_SHEATH);
      double[] burner = s.currentAmps(Part.BURNER_SHEATH);
      for (int n = 0; n < rod.length; n++) {
        // Newton closes the currents at the plasma to 1e-11 of the source over 10 megohm
        assertThat(rod[n] + probe[n] - burner[n]).as("%s", circuit).isCloseTo(0, within(1e-14));
      }
    }
  }

  static Circuit threeElectrodes(RandomCircuits circuits) {
    LumpedCircuit c = circuits.any();
    double floating = Double.POSITIVE_INFINITY;
    Circuit base =
        new LumpedCircuit(
                c.source(),
                new Lead(circuits.chance(0.2) ? floating : 10, 2e8, c.lead().capacitanceFarads()),
                c.rodFilm(),
                null,
                c.burnerFilm(),
                c.ground())
            .circuit();
    Circuit three =
        base.with(
            new Conductor(Part.ROD_SHEATH, Point.ROD_SURFACE, Point.PLASMA, sheath(circuits)),
            new Conductor(Part.PROBE_SHEATH, Point.PROBE, Point.PLASMA, sheath(circuits)),
            new Conductor(
                Part.BURNER_SHEATH, Point.PLASMA, Point.BURNER_SURFACE, sheath(circuits)));
    return circuits.chance(0.8)
        ? three.with(
            new Resistor(Part.METER, Point.PROBE, Point.ROD, circuits.spread(1e6, 1e8)),
            new Capacitor(Part.METER_CAPACITANCE, Point.PROBE, Point.ROD, 1e-10))
        : three;
  }

  /** One way nearly free contact, the other way ions. */
  private static SquareRootLaw sheath(RandomCircuits circuits) {
    return new SquareRootLaw(
        circuits.spread(2e-8, 1e-6), circuits.spread(1e-6, 1e-5), circuits.spread(1e3, 1e5));
  }

  /** Coupling, cable and source without resistance: a loop of capacitors alone. */
  @Test
  void capacitorLoops() {
    RandomCircuits circuits = circuits(7);
    for (int k = 0; k < COUNT / 10; k++) {
      LumpedCircuit c = circuits.any();
      Source s = c.source();
      LumpedCircuit loop =
          new LumpedCircuit(
              new Source(
                  s.openCircuitRmsVolts(),
                  s.frequencyHertz(),
                  0,
                  circuits.spread(1e-9, 1e-6),
                  s.returnOhms()),
              new Lead(circuits.chance(0.5) ? 0 : 10, 1e9, circuits.spread(1e-11, 1e-8)),
              new LumpedCircuit.Film(1e6, circuits.spread(1e-11, 1e-8)),
              c.flame(),
              new LumpedCircuit.Film(0, 1e-9),
              new Ground(circuits.chance(0.5) ? 0 : 1e-3));
      Solved solved = OracleCircuits.solved(loop.circuit());
      allFinite(solved, loop.circuit());
      powerBalances(solved);
    }
  }
}
