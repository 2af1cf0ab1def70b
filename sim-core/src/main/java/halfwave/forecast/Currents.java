package halfwave.forecast;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Stages;
import halfwave.circuit.Circuit;
import halfwave.circuit.Element.Resistor;
import halfwave.circuit.Part;
import halfwave.circuit.SteadyState;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Microammeter;
import halfwave.quantity.RejectedValueException;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.interpolation.PiecewiseBicubicSplineInterpolatingFunction;
import org.apache.commons.math3.util.FastMath;

/**
 * What the meter in series shows of one rod, the more worn the less. Thousands of lives differ
 * little, so some hundred benches are solved and the rest lies between them (Akima splines): one
 * grid holds films, by the logarithms of thickness and of resistance over thickness; the other the
 * share that thinning and drooping leave of a clean rod's reading. A test holds it within 0.1 µA of
 * the bench itself, and within 0.005 µA on the mean.
 */
final class Currents {

  /** Of a rod that gives none, or the wrong sign: less than any meter shows (A). */
  static final double NOTHING_AMPS = 1e-9;

  /** Films from the thinnest that covers to the thickest that can be said (m). */
  private static final double[] THICKNESS =
      even(FastMath.log(0.151e-6), FastMath.log(0.999e-3), 17);

  /** From films that hardly resist to films that pass nothing (Ω/m). */
  private static final double[] PER_METER = even(FastMath.log(1e8), FastMath.log(1e14), 17);

  private static final int WEAR_NODES = 7;

  /** A film for which resistance over thickness and porosity is looked up. */
  private static final Coat SAMPLE = Coat.even(100e-6, 1000);

  /** So porous that what a film in the grid conducts is its cracks alone. */
  private static final double POROUS_RATIO = 1e6;

  private final Rods rods;
  private final boolean renewed;
  private final Stages stages = new Stages();
  private final double densePerMeter;
  private final double cleanAmps;
  private final double mostThinned;
  private final double mostDrooped;
  private final PiecewiseBicubicSplineInterpolatingFunction films;
  private final PiecewiseBicubicSplineInterpolatingFunction shares;

  /** A circuit had no steady state. */
  static final class UnsolvedException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient SteadyState.Failed reason;

    private UnsolvedException(SteadyState.Failed reason) {
      this.reason = reason;
    }

    SteadyState.Failed reason() {
      return reason;
    }
  }

  private interface Node {
    double value(double x, double y);
  }

  /**
   * Solves the grids.
   *
   * @param rods the benches
   * @param renewed which of the two rods
   * @param mostThinnedMeters radius that any life loses (m)
   * @param mostDroopedRadians bend of any life (rad)
   */
  Currents(Rods rods, boolean renewed, double mostThinnedMeters, double mostDroopedRadians) {
    this.rods = rods;
    this.renewed = renewed;
    densePerMeter = densePerMeter();
    // an axis needs a length
    mostThinned = Math.max(1e-9, mostThinnedMeters);
    mostDrooped = Math.max(1e-9, mostDroopedRadians);
    cleanAmps = amps(Coat.CLEAN, 0, 0);
    films = grid(THICKNESS, PER_METER, (t, per) -> amps(coat(t, per), 0, 0));
    shares = grid(even(0, 1, WEAR_NODES), even(0, 1, WEAR_NODES), this::share);
  }

  private static double[] even(double from, double to, int count) {
    return IntStream.range(0, count)
        .mapToDouble(k -> from + (to - from) * k / (count - 1))
        .toArray();
  }

  private static PiecewiseBicubicSplineInterpolatingFunction grid(
      double[] xs, double[] ys, Node node) {
    double[][] values = new double[xs.length][ys.length];
    for (int i = 0; i < xs.length; i++) {
      for (int j = 0; j < ys.length; j++) {
        values[i][j] = node.value(xs[i], ys[j]);
      }
    }
    return new PiecewiseBicubicSplineInterpolatingFunction(xs, ys, values);
  }

  /** Resistance over thickness of dense silica on this rod, hot as it is (Ω/m). */
  private double densePerMeter() {
    Circuit filmed = stages.circuit(rods.bench(new Worn(renewed, SAMPLE, 0, 0)));
    double ohms =
        filmed.elements().stream()
            .filter(e -> e instanceof Resistor && e.part() == Part.ROD_FILM)
            .mapToDouble(e -> ((Resistor) e).resistanceOhms())
            .findFirst()
            .orElseThrow();
    return ohms / (SAMPLE.thicknessMeters() * SAMPLE.porosityRatio());
  }

  private Coat coat(double logThickness, double logPerMeter) {
    double thickness = FastMath.exp(logThickness);
    double film = 1 / (densePerMeter * POROUS_RATIO);
    double cracks = Math.max(0, FastMath.exp(-logPerMeter) - film);
    return new Coat(thickness, POROUS_RATIO, thickness / cracks);
  }

  /** Ends of both axes are where a square of the node leads: most lives wear little. */
  private double share(double thinned, double drooped) {
    return cleanAmps <= NOTHING_AMPS
        ? 1
        : amps(Coat.CLEAN, thinned * thinned * mostThinned, drooped * drooped * mostDrooped)
            / cleanAmps;
  }

  private double amps(Coat coat, double thinnedMeters, double droopedRadians) {
    MeterReading reading;
    try {
      Bench bench = rods.bench(new Worn(renewed, coat, thinnedMeters, droopedRadians));
      reading = Microammeter.SERVICE.read(stages.circuit(bench));
    } catch (RejectedValueException onMetal) {
      // the rod has drooped onto the burner
      return NOTHING_AMPS;
    }
    if (reading instanceof MeterReading.None none) {
      throw new UnsolvedException(none.reason());
    }
    return ((MeterReading.Amps) reading).meanAmps();
  }

  /** The reading of such a rod (A), no less than {@link #NOTHING_AMPS}. */
  double amps(Worn worn) {
    Coat coat = worn.coat();
    double filmed = cleanAmps;
    if (coat.covers()) {
      double film = 1 / (densePerMeter * coat.porosityRatio());
      double cracks = coat.thicknessMeters() / coat.crackOhms();
      filmed =
          films.value(
              inside(THICKNESS, FastMath.log(coat.thicknessMeters())),
              inside(PER_METER, -FastMath.log(film + cracks)));
    }
    double share =
        shares.value(
            Math.sqrt(Math.min(1, worn.thinnedMeters() / mostThinned)),
            Math.sqrt(Math.min(1, worn.droopedRadians() / mostDrooped)));
    return Math.max(NOTHING_AMPS, filmed * share);
  }

  private static double inside(double[] axis, double value) {
    return Math.max(axis[0], Math.min(axis[axis.length - 1], value));
  }
}
