package halfwave.sequence;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.BenchFlame;
import halfwave.bench.Stages;
import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.circuit.SteadyState.Failed;
import halfwave.flame.FlameCalibration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.math3.util.FastMath;
import org.jspecify.annotations.Nullable;

/**
 * The current at the board's end of a bench, for any temperature of the rod and any strength of the
 * flame: computed from the full model at the corners of a grid, once each, and interpolated in
 * between, because flicker asks for it fifty times a second.
 *
 * <p>The grid is 20 K in the rod's temperature and fine in the three-quarter power of the ion
 * source, in which currents are almost straight lines. One instance belongs to one thread.
 */
final class SenseCurrents {

  private static final int REMEMBERED = 64;
  private static final double LOWEST_KELVIN = 280;
  private static final double PACE_KELVIN = 20;
  private static final int TEMPERATURES = 67;

  /** u = strength^(3/4): zero is no flame, one a grown flame without flicker. */
  private static final double[] STRENGTH = {
    0, 0.1, 0.2, 0.3, 0.45, 0.65, 0.8, 0.9, 1, 1.1, 1.2, 1.4
  };

  private static final int GROWN = 8;

  private record Key(Bench bench, @Nullable Hooked load) {}

  private final Map<Key, Flame> known =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Flame> eldest) {
          return size() > REMEMBERED;
        }
      };

  private int solved;

  /** How many circuits were solved so far. */
  int solvedCount() {
    return solved;
  }

  /**
   * What a bench's flame does; the bench's own rod temperature does not matter.
   *
   * @param bench the bench
   * @param hooked a meter on it, or null
   */
  Flame of(Bench bench, @Nullable Hooked hooked) {
    Bench cold = bench.with(bench.condition().withRodKelvin(LOWEST_KELVIN));
    Hooked load = hooked == null ? null : hooked.load();
    return known.computeIfAbsent(new Key(cold, load), Flame::new);
  }

  /** The currents of one bench. */
  final class Flame {

    private final Bench bench;
    private final @Nullable Hooked load;
    private final boolean burning;
    private final boolean rodInFlame;
    private final SenseCurrent dark;
    private final SenseCurrent[][] grid = new SenseCurrent[TEMPERATURES][];
    private final Stages stages = new Stages();

    private Flame(Key key) {
      bench = key.bench();
      load = key.load();
      BenchFlame flame = stages.flame(bench);
      burning = flame.burning();
      rodInFlame = burning && BenchCircuit.lengthInFlameMeters(bench.rod(), flame.field()) > 0;
      dark = solved(BenchCircuit.withoutFlame(bench, flame));
    }

    /** Whether gas burns at this bench once it is lit. */
    boolean burning() {
      return burning;
    }

    /** Whether the rod then stands in the flame. */
    boolean rodInFlame() {
      return rodInFlame;
    }

    /** Without a flame. */
    SenseCurrent dark() {
      return dark;
    }

    /**
     * With a flame.
     *
     * @param rodKelvin temperature of the rod (K)
     * @param strengthRatio ion source over that of the grown, steady flame (1); zero or above
     */
    SenseCurrent at(double rodKelvin, double strengthRatio) {
      if (!burning || strengthRatio <= 0) {
        return dark;
      }
      double root = FastMath.sqrt(strengthRatio);
      double u = Math.min(root * FastMath.sqrt(root), STRENGTH[STRENGTH.length - 1]);
      int column = u < 1 ? 0 : GROWN;
      while (u > STRENGTH[column + 1]) {
        column++;
      }
      double along = (u - STRENGTH[column]) / (STRENGTH[column + 1] - STRENGTH[column]);
      double t = (rodKelvin - LOWEST_KELVIN) / PACE_KELVIN;
      int row = (int) Math.max(0, Math.min(TEMPERATURES - 2, Math.floor(t)));
      double down = Math.max(0, Math.min(1, t - row));
      return corner(row, column)
          .towards(corner(row, column + 1), along)
          .towards(corner(row + 1, column).towards(corner(row + 1, column + 1), along), down);
    }

    private SenseCurrent corner(int row, int column) {
      SenseCurrent[] line = grid[row];
      if (line == null) {
        line = new SenseCurrent[STRENGTH.length];
        grid[row] = line;
      }
      SenseCurrent there = line[column];
      if (there == null) {
        there = column == 0 ? dark : solved(circuit(row, STRENGTH[column]));
        line[column] = there;
      }
      return there;
    }

    private Circuit circuit(int row, double u) {
      double kelvin = LOWEST_KELVIN + PACE_KELVIN * row;
      FlameCalibration flame = bench.design().flame();
      double strength = FastMath.pow(u, 4.0 / 3);
      // beyond the range of the model's multiplier there is no more flame to be had
      double multiplier = Math.min(10, flame.ionMultiplierRatio() * strength);
      return stages.circuit(
          bench
              .with(bench.design().withFlame(flame.withIonMultiplier(multiplier)))
              .with(bench.condition().withRodKelvin(kelvin)));
    }

    private SenseCurrent solved(Circuit circuit) {
      solved++;
      SteadyState state = SteadyState.of(load == null ? circuit : load.on(circuit));
      return state instanceof Solved s
          ? new SenseCurrent(
              s.currentMeanAmps(Part.CONNECTOR), s.currentAlternatingRmsAmps(Part.CONNECTOR), null)
          : new SenseCurrent(0, 0, (Failed) state);
    }
  }
}
