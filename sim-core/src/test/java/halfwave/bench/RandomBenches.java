package halfwave.bench;

import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.flame.BurnerDesign;
import halfwave.flame.FlameCalibration;
import halfwave.flame.Fuel;
import java.util.List;
import java.util.random.RandomGenerator;

/** Seeded random benches: every shipped design, bent and broken in every way the records allow. */
final class RandomBenches {

  private final RandomGenerator random;
  private final List<Bench> simple;
  private final List<Bench> star;

  RandomBenches(RandomGenerator random) {
    this.random = random;
    simple = ShippedBenches.all().stream().filter(b -> b.design().spark() == null).toList();
    star = ShippedBenches.all().stream().filter(b -> b.design().spark() != null).toList();
  }

  /** Where the rod may be is decided by the bench itself: this may throw. */
  Bench any() {
    return of(simple);
  }

  /** The same with a spark electrode in the flame. */
  Bench withSpark() {
    return of(star);
  }

  private Bench of(List<Bench> shipped) {
    Bench bench = shipped.get(random.nextInt(shipped.size()));
    return bench.with(design(bench.design())).with(condition());
  }

  private Design design(Design d) {
    Fuel fuel = chance(0.7) ? d.fuel() : Fuel.values()[random.nextInt(2)];
    BurnerDesign burner = fuel == d.fuel() ? d.burner() : BurnerDesign.inshot(fuel);
    double pressure = fuel == d.fuel() ? d.manifoldPascals() : fuel.manifoldPascals();
    return new Design(
        d.ignition(),
        fuel,
        burner,
        d.burnerCount(),
        pressure,
        calibration(),
        d.rod(),
        d.spark(),
        source(d.source()),
        lead(d.lead()),
        chance(0.5) ? d.groundOhms() : spread(0.05, 1e3),
        // only time shows it
        0);
  }

  private FlameCalibration calibration() {
    return new FlameCalibration(
        chance(0.05) ? 0 : spread(0.1, 2),
        spread(0.5, 4),
        spread(0.2e-3, 4e-3),
        chance(0.1) ? 0 : spread(1e4, 1e6),
        spread(0.2, 1),
        400 + 400 * random.nextDouble());
  }

  private Source source(Source s) {
    return chance(0.4)
        ? s
        : new Source(
            40 + 190 * random.nextDouble(),
            chance(0.5) ? 50 : 60,
            spread(1e4, 8e6),
            chance(0.4) ? spread(1e-9, 2e-6) : null,
            chance(0.4) ? spread(2e5, 2e8) : null);
  }

  private Lead lead(Lead lead) {
    return chance(0.6)
        ? lead
        : new Lead(
            resistance(0.1, 5e6),
            chance(0.2) ? null : resistance(5e5, 2e9),
            chance(0.3) ? null : chance(0.1) ? 0 : spread(5e-12, 3e-9));
  }

  private Condition condition() {
    return new Condition(
        chance(0.05) ? 0 : chance(0.5) ? 1 : 4 * random.nextDouble(),
        chance(0.5) ? 0.95 : 0.1 + 1.9 * random.nextDouble(),
        chance(0.6) ? 1 : spread(0.01, 1),
        position(),
        280 + 1320 * random.nextDouble(),
        chance(0.5)
            ? Coat.CLEAN
            : new Coat(
                spread(1e-7, 1e-3),
                spread(1, 1e6),
                chance(0.6) ? Double.POSITIVE_INFINITY : spread(1e4, 1e9)),
        chance(0.7) ? 0 : resistance(1e2, 1e10),
        chance(0.5) ? 0 : spread(1e-12, 1e-7),
        chance(0.7) ? 0 : resistance(1, 1e9),
        chance(0.8) ? 0 : resistance(1, 1e9),
        chance(0.7) ? Double.POSITIVE_INFINITY : resistance(1e3, 1e10),
        chance(0.8) ? Double.POSITIVE_INFINITY : resistance(1, 1e9),
        chance(0.9) ? Double.POSITIVE_INFINITY : spread(1e4, 1e9),
        chance(0.7) ? 0 : resistance(0.1, 1e9),
        ApplianceCondition.HEALTHY);
  }

  private RodPosition position() {
    double far = chance(0.8) ? 15e-3 : 0.1;
    double turned = chance(0.7) ? 0 : chance(0.7) ? 0.4 : 1.6;
    return new RodPosition(
        either(far), either(far), either(far), either(turned), either(turned), either(turned));
  }

  private double either(double most) {
    return most * (2 * random.nextDouble() - 1);
  }

  private double resistance(double low, double high) {
    return chance(0.1) ? 0 : chance(0.1) ? Double.POSITIVE_INFINITY : spread(low, high);
  }

  /** A number whose logarithm is evenly spread. */
  private double spread(double low, double high) {
    return low * StrictMath.exp(random.nextDouble() * StrictMath.log(high / low));
  }

  private boolean chance(double probability) {
    return random.nextDouble() < probability;
  }
}
