package halfwave.bench;

import halfwave.circuit.Circuit;
import halfwave.circuit.ConductionLaw;
import halfwave.circuit.Element.Conductor;
import halfwave.circuit.Element.Resistor;
import halfwave.circuit.LumpedCircuit;
import halfwave.circuit.LumpedCircuit.Film;
import halfwave.circuit.LumpedCircuit.Ground;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.flame.ElectrodeCharacteristic;
import halfwave.flame.FlameStar;
import halfwave.flame.IonField;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.surface.ContaminationFilm;
import halfwave.surface.RectifyingDeposit;
import org.jspecify.annotations.Nullable;

/** Builds the sense circuit of a bench from its wiring, its films and its flame. */
public final class BenchCircuit {

  /** Distance between the places at which the rod's length in flame is counted (m). */
  private static final double PACE_METERS = 0.25e-3;

  /**
   * Never less rod than this carries a film (m): a rod clear of the flame has no current anyway.
   */
  private static final double LEAST_LENGTH_METERS = 1e-3;

  private BenchCircuit() {}

  /** The circuit with the flame burning. */
  public static Circuit of(Bench bench, BenchFlame flame) {
    Circuit circuit = wiring(bench, flame.field(), flame.burning() ? flame.path() : null);
    ElectrodeCharacteristic spark = flame.spark();
    if (spark == null || !flame.burning()) {
      return circuit;
    }
    double winding = bench.design().spark() == null ? 0 : bench.design().spark().windingOhms();
    return FlameStar.with(circuit, Part.PROBE_SHEATH, Point.PROBE, spark)
        .with(new Resistor(Part.SPARK_WINDING, Point.PROBE, Point.CHASSIS, winding));
  }

  /** The circuit without a flame: gas off, or a trial that did not light. */
  public static Circuit withoutFlame(Bench bench, BenchFlame flame) {
    return wiring(bench, flame.field(), null);
  }

  private static Circuit wiring(Bench bench, IonField field, @Nullable ConductionLaw path) {
    Design design = bench.design();
    Condition condition = bench.condition();
    Lead lead = design.lead();
    Lead leaking =
        new Lead(
            lead.resistanceOhms() + condition.leadExtraOhms(),
            parallel(lead.insulationOhms(), condition.leakageOhms()),
            lead.capacitanceFarads());
    Film scale =
        condition.burnerScaleOhms() == 0
            ? null
            : new Film(condition.burnerScaleOhms(), condition.burnerScaleFarads());
    LumpedCircuit lumped =
        new LumpedCircuit(
            source(bench),
            leaking,
            rodFilm(bench, field),
            path,
            scale,
            new Ground(design.groundOhms() + condition.groundExtraOhms()));
    Circuit circuit =
        lumped
            .circuit()
            .without(Part.CONNECTOR)
            .with(
                new Resistor(
                    Part.CONNECTOR, Point.TERMINAL, Point.LEAD, condition.connectorOhms()));
    if (condition.depositOhms() < Double.POSITIVE_INFINITY) {
      circuit =
          circuit.with(
              new Conductor(
                  Part.DEPOSIT,
                  Point.ROD,
                  Point.CHASSIS,
                  new RectifyingDeposit(condition.depositOhms())));
    }
    double jumper = bench.rodClearanceMeters() == 0 ? 0 : condition.jumperOhms();
    return jumper < Double.POSITIVE_INFINITY
        ? circuit.with(new Resistor(Part.JUMPER, Point.ROD, Point.CHASSIS, jumper))
        : circuit;
  }

  /** A dead or weak supply: its resistance is still there. */
  private static Source source(Bench bench) {
    Source s = bench.design().source();
    ApplianceCondition appliance = bench.condition().appliance();
    double ratio = appliance.has(Disorder.LINE_REVERSED) ? 0 : appliance.senseSupplyRatio();
    return new Source(
        ratio * s.openCircuitRmsVolts(),
        s.frequencyHertz(),
        s.resistanceOhms(),
        s.couplingFarads(),
        s.returnOhms());
  }

  private static double parallel(@Nullable Double a, double b) {
    if (a == null || a == Double.POSITIVE_INFINITY) {
      return b;
    }
    if (b == Double.POSITIVE_INFINITY) {
      return a;
    }
    return a == 0 || b == 0 ? 0 : a * b / (a + b);
  }

  private static @Nullable Film rodFilm(Bench bench, IonField field) {
    Coat coat = bench.condition().rodCoat();
    if (!coat.covers()) {
      return null;
    }
    ContaminationFilm film = ContaminationFilm.silica(coat.thicknessMeters(), coat.porosityRatio());
    Rod rod = bench.rod();
    double length = Math.max(lengthInFlameMeters(rod, field), LEAST_LENGTH_METERS);
    double area = 2 * Math.PI * rod.radiusMeters() * length;
    return new Film(
        parallel(film.resistanceOhms(area, bench.condition().rodKelvin()), coat.crackOhms()),
        film.capacitanceFarads(area));
  }

  /** How much of the rod is inside the flame's mantle (m). */
  public static double lengthInFlameMeters(Rod rod, IonField field) {
    double inside = 0;
    for (int k = 1; k < rod.path().size(); k++) {
      Place from = rod.path().get(k - 1);
      Place to = rod.path().get(k);
      double length = to.distanceMeters(from);
      int paces = (int) Math.ceil(length / PACE_METERS);
      for (int n = 0; n < paces; n++) {
        Place p = from.towards(to, (n + 0.5) / paces);
        if (field.mantleDistanceMeters(p.xMeters(), p.yMeters(), p.zMeters()) <= 0) {
          inside += length / paces;
        }
      }
    }
    return inside;
  }
}
