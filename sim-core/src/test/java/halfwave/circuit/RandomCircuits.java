package halfwave.circuit;

import halfwave.circuit.LumpedCircuit.Film;
import halfwave.circuit.LumpedCircuit.Ground;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import java.util.random.RandomGenerator;

/** Seeded random circuits: the domain of the model with its corners, opens and shorts. */
public final class RandomCircuits {

  private final RandomGenerator random;

  /** Draws from that generator. */
  public RandomCircuits(RandomGenerator random) {
    this.random = random;
  }

  /** A number whose logarithm is evenly spread. */
  public double spread(double low, double high) {
    return low * StrictMath.exp(random.nextDouble() * StrictMath.log(high / low));
  }

  /** True with that chance. */
  public boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  /** Any circuit of the model, opens and shorts included. */
  public LumpedCircuit any() {
    return new LumpedCircuit(source(), lead(), film(), law(), film(), ground());
  }

  /** A source that does not feed a short circuit on its own account. */
  public Source source() {
    return new Source(
        40 + 190 * random.nextDouble(),
        chance(0.5) ? 50 : 60,
        spread(1e4, 8e6),
        chance(0.4) ? spread(1e-9, 2e-6) : null,
        chance(0.4) ? spread(2e5, 2e8) : null);
  }

  /** A lead, at times broken, shorted to the chassis, or perfect. */
  public Lead lead() {
    return new Lead(
        resistance(0.1, 5e6),
        chance(0.2) ? null : resistance(5e5, 2e9),
        chance(0.3) ? null : chance(0.1) ? 0 : spread(5e-12, 3e-9));
  }

  /** A film, or none; also one whose time constant is many periods. */
  public Film film() {
    if (chance(0.4)) {
      return null;
    }
    return new Film(resistance(1e3, 1e9), chance(0.2) ? 0 : spread(1e-11, 1e-7));
  }

  /** A flame; at times with equal electrodes, or without a column. */
  public SquareRootLaw law() {
    double rod = spread(2e-8, 1e-6);
    double burner = chance(0.1) ? rod : rod * spread(0.3, 10);
    return new SquareRootLaw(rod, burner, chance(0.1) ? 0 : spread(1e3, 1e6));
  }

  /** A ground, at times lost. */
  public Ground ground() {
    return new Ground(resistance(0.05, 2e6));
  }

  private double resistance(double low, double high) {
    if (chance(0.04)) {
      return 0;
    }
    return chance(0.04) ? Double.POSITIVE_INFINITY : spread(low, high);
  }
}
