package halfwave.bench;

import halfwave.board.Ignition;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.flame.BurnerDesign;
import halfwave.flame.FlameCalibration;
import halfwave.flame.Fuel;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import java.util.List;
import java.util.Optional;

/** The healthy benches that come with the program. All of them are invented; none is a product. */
public final class ShippedBenches {

  /** A lead of about a metre along metal, 80 pF; insulation as new [practice]. */
  private static final Lead LEAD = new Lead(1, 200e6, 80e-12);

  /** The ignition cable that also carries the sense current: suppressor and winding in series. */
  private static final Lead SPARK_LEAD = new Lead(15e3, 200e6, 60e-12);

  private static final double GROUND_OHMS = 0.3;

  private static final Bench DEFAULT =
      bench(
          "hot-surface-natural-gas",
          Ignition.HOT_SURFACE,
          Fuel.NATURAL_GAS,
          new Source(110, 60, 2.2e6, null, null));

  private static final List<Bench> ALL =
      List.of(
          DEFAULT,
          propane(),
          bench(
              "low-voltage-sense",
              Ignition.HOT_SURFACE_NITRIDE,
              Fuel.NATURAL_GAS,
              new Source(90, 60, 1e6, null, null)),
          highVoltage(),
          bench(
              "capacitor-coupled-board",
              Ignition.HOT_SURFACE,
              Fuel.NATURAL_GAS,
              new Source(115, 60, 0.47e6, 4.7e-9, 2.2e6)),
          spark(),
          sparkAndSense(),
          pilot());

  private ShippedBenches() {}

  /** All of them, the standard one first. */
  public static List<Bench> all() {
    return ALL;
  }

  /** The one that the program starts with: hot-surface ignition, inshot burner, natural gas. */
  public static Bench standard() {
    return DEFAULT;
  }

  /** The one of that name. */
  public static Optional<Bench> named(String name) {
    return ALL.stream().filter(b -> b.name().equals(name)).findFirst();
  }

  private static Bench bench(String name, Ignition ignition, Fuel fuel, Source source) {
    Design design =
        new Design(
            ignition,
            fuel,
            BurnerDesign.inshot(fuel),
            3,
            fuel.manifoldPascals(),
            FlameCalibration.DEFAULT,
            Rod.standard(),
            null,
            source,
            LEAD,
            GROUND_OHMS,
            0);
    return new Bench(name, design, Condition.HEALTHY);
  }

  /** Propane makes more ions; its k_ion is set lower, inside its range, to read like the others. */
  private static Bench propane() {
    Bench like =
        bench(
            "hot-surface-propane",
            Ignition.HOT_SURFACE,
            Fuel.PROPANE,
            new Source(110, 60, 2.2e6, null, null));
    return like.with(like.design().withFlame(FlameCalibration.DEFAULT.withIonMultiplier(0.35)));
  }

  private static Bench highVoltage() {
    Bench like =
        bench(
            "high-voltage-sense",
            Ignition.HOT_SURFACE,
            Fuel.NATURAL_GAS,
            new Source(150, 50, 5.6e6, null, null));
    return like.with(like.design().withFlame(FlameCalibration.DEFAULT.withIonMultiplier(0.6)));
  }

  private static Bench spark() {
    Bench like =
        bench(
            "direct-spark-separate-rod",
            Ignition.DIRECT_SPARK,
            Fuel.NATURAL_GAS,
            new Source(105, 60, 2.2e6, null, null));
    Rod electrode =
        new Rod(List.of(new Place(-2e-3, -40e-3, 6e-3), new Place(-2e-3, -12e-3, 6e-3)), 1e-3);
    return like.with(like.design().withSpark(new SparkElectrode(electrode, 8e3)));
  }

  private static Bench sparkAndSense() {
    Bench like =
        bench(
            "spark-and-sense-rod",
            Ignition.SPARK_AND_SENSE,
            Fuel.NATURAL_GAS,
            new Source(115, 60, 2.2e6, null, null));
    Rod electrode =
        new Rod(
            List.of(
                new Place(-40e-3, 6e-3, 12e-3),
                new Place(8e-3, 6e-3, 12e-3),
                new Place(8e-3, 6e-3, 8e-3)),
            1.2e-3);
    return like.with(like.design().withRod(electrode).withLead(SPARK_LEAD));
  }

  private static Bench pilot() {
    Design design =
        new Design(
            Ignition.INTERMITTENT_PILOT,
            Fuel.NATURAL_GAS,
            BurnerDesign.pilot(Fuel.NATURAL_GAS),
            1,
            Fuel.NATURAL_GAS.manifoldPascals(),
            FlameCalibration.DEFAULT,
            Rod.across(8e-3, 2e-3, -30e-3, -3e-3, 1.2e-3),
            null,
            new Source(115, 60, 2.7e6, null, null),
            LEAD,
            GROUND_OHMS,
            0);
    return new Bench("intermittent-pilot", design, Condition.HEALTHY);
  }
}
