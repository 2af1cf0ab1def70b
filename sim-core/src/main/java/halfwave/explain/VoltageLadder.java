package halfwave.explain;

import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.Solved;
import halfwave.flame.FlameDrops;
import halfwave.flame.FlamePath;
import java.util.EnumMap;
import java.util.Map;

/**
 * Where the source's voltage goes, part by part, at one instant: the crest of the flame current in
 * one half-cycle. The rungs add up to the source's voltage at that instant.
 *
 * @param timeSeconds the instant, from where the source rises through zero (s)
 * @param sourceVolts the source's voltage then (V)
 * @param flameAmps the flame current then, its sign positive from rod to burner (A)
 * @param rungVolts drop across each part, in the order of the path (V)
 */
public record VoltageLadder(
    double timeSeconds, double sourceVolts, double flameAmps, Map<Rung, Double> rungVolts) {

  /** Keeps the order of the path. */
  public VoltageLadder {
    rungVolts = new EnumMap<>(rungVolts);
  }

  /** The half-cycle in which the rod is positive: the burner collects the ions. */
  public static VoltageLadder rodPositive(Solved solved, FlamePath path) {
    return atCrest(solved, path, 1);
  }

  /** The half-cycle in which the rod is negative: the rod collects the ions. */
  public static VoltageLadder rodNegative(Solved solved, FlamePath path) {
    return atCrest(solved, path, -1);
  }

  private static VoltageLadder atCrest(Solved solved, FlamePath path, int sign) {
    boolean star = isStar(solved);
    double[] amps = solved.currentAmps(star ? Part.ROD_SHEATH : Part.FLAME);
    double[] emf = solved.voltageVolts(Point.EMF, Point.COMMON);
    int crest = 0;
    for (int n = 1; n < amps.length; n++) {
      // where no flame current flows at all, the crest of the source stands in
      double more = sign * (amps[n] - amps[crest]);
      if (more > 0 || (more == 0 && sign * (emf[n] - emf[crest]) > 0)) {
        crest = n;
      }
    }
    Map<Rung, Double> rungs = new EnumMap<>(Rung.class);
    rungs.put(Rung.SOURCE, at(solved, Point.EMF, Point.FEED, crest));
    rungs.put(Rung.COUPLING, at(solved, Point.FEED, Point.TERMINAL, crest));
    rungs.put(Rung.LEAD, at(solved, Point.TERMINAL, Point.ROD, crest));
    rungs.put(Rung.ROD_FILM, at(solved, Point.ROD, Point.ROD_SURFACE, crest));
    if (star) {
      putStar(rungs, solved, path, crest, amps[crest]);
    } else {
      putPath(rungs, solved, path, crest, amps[crest]);
    }
    rungs.put(Rung.BURNER_FILM, at(solved, Point.BURNER_SURFACE, Point.CHASSIS, crest));
    rungs.put(Rung.GROUND, at(solved, Point.CHASSIS, Point.COMMON, crest));
    return new VoltageLadder(crest * solved.stepSeconds(), emf[crest], amps[crest], rungs);
  }

  /** Rod, column and burner: shares from the electrodes' own tables, the sum from the circuit. */
  private static void putPath(
      Map<Rung, Double> rungs, Solved solved, FlamePath path, int sample, double amps) {
    FlameDrops drops = path.dropsAt(amps);
    double flame = at(solved, Point.ROD_SURFACE, Point.BURNER_SURFACE, sample);
    double scale = drops.totalVolts() == 0 ? 0 : flame / drops.totalVolts();
    rungs.put(Rung.ROD_SHEATH, scale == 0 ? flame : scale * drops.rodVolts());
    rungs.put(Rung.COLUMN, scale * drops.columnVolts());
    rungs.put(Rung.BURNER_SHEATH, scale * drops.burnerVolts());
  }

  /**
   * With a third electrode half of the column belongs to the rod's branch, half to the burner's.
   */
  private static void putStar(
      Map<Rung, Double> rungs, Solved solved, FlamePath path, int sample, double rodAmps) {
    double half = 0.5 * path.columnOhms();
    double rodColumn = half * rodAmps;
    double burnerColumn = -half * solved.currentAmps(Part.BURNER_SHEATH)[sample];
    rungs.put(Rung.ROD_SHEATH, at(solved, Point.ROD_SURFACE, Point.PLASMA, sample) - rodColumn);
    rungs.put(Rung.COLUMN, rodColumn + burnerColumn);
    rungs.put(
        Rung.BURNER_SHEATH, at(solved, Point.PLASMA, Point.BURNER_SURFACE, sample) - burnerColumn);
  }

  private static boolean isStar(Solved solved) {
    return solved.circuit().elements().stream().anyMatch(e -> e.part() == Part.ROD_SHEATH);
  }

  private static double at(Solved solved, Point from, Point to, int sample) {
    return solved.voltageVolts(from, to)[sample];
  }

  /** The rung with the largest drop against the current: what limits it. */
  public Rung largest() {
    Rung largest = Rung.SOURCE;
    double most = Double.NEGATIVE_INFINITY;
    for (Map.Entry<Rung, Double> e : rungVolts.entrySet()) {
      double drop = e.getValue() * Math.signum(sourceVolts);
      if (drop > most) {
        most = drop;
        largest = e.getKey();
      }
    }
    return largest;
  }
}
