package halfwave.diagnosis;

import halfwave.fault.FaultKind;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.util.FastMath;

/**
 * Benches that are alike and not the same, and how severe a fault is on each: points that fill the
 * space of all unknowns evenly (Sobol's sequence). Every cause meets the same benches, so that a
 * repair leads from one case to another on the very same bench.
 */
public final class Draws {

  /** How many there are of each cause. */
  static final int COUNT = 64;

  /** So many of a kind with a severity are played through a heating call. */
  private static final int PLAYED = 8;

  /** Of one without. */
  private static final int PLAYED_PLAIN = 4;

  /** The severities of different kinds must not go up and down together. */
  private static final double GOLDEN = 0.6180339887498949;

  /** An open path: below infinity a kind that can be open spans so many decades. */
  private static final double NEARLY_OPEN_RATIO = 100;

  /** Below this a resistance is a contact like any other (Ω). */
  private static final double CONTACT_OHMS = 1;

  private static final double CONTACT_SHARE = 0.2;

  private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);

  private static final List<double[]> POINTS = points();

  private Draws() {}

  private static List<double[]> points() {
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(10);
    // its first point is a corner
    sobol.nextVector();
    List<double[]> points = new ArrayList<>();
    for (int k = 0; k < COUNT; k++) {
      points.add(sobol.nextVector());
    }
    return points;
  }

  /** How many draws of a cause are played; the others take what they are like from those. */
  static int played(Cause cause) {
    boolean plain = cause.kinds().stream().allMatch(k -> k.dimension().isEmpty());
    return plain ? PLAYED_PLAIN : PLAYED;
  }

  /** Which bench. */
  static Variation variation(int draw) {
    return variation(POINTS.get(draw));
  }

  /**
   * A bench from ten numbers between zero and one; the first is not its own but the severity's.
   *
   * @param u ten numbers above zero and below one
   */
  public static Variation variation(double[] u) {
    return new Variation(
        FastMath.exp(0.15 * normal(u[1])),
        1 + 0.04 * normal(u[2]),
        FastMath.exp(0.05 * normal(u[3])),
        1 + 0.04 * normal(u[4]),
        1 + 0.03 * normal(u[5]),
        1 - 0.04 * u[6],
        FastMath.exp(0.5 * normal(u[7])),
        0.7e-3 * normal(u[8]),
        0.7e-3 * normal(u[9]));
  }

  /** Within two standard deviations: what is further off is a fault. */
  private static double normal(double u) {
    return Math.max(-2, Math.min(2, NORMAL.inverseCumulativeProbability(u)));
  }

  /** How severe a fault of a kind is in a draw, in SI. */
  static double severity(FaultKind kind, int draw) {
    return severity(kind, rank(kind, draw));
  }

  /** Where that stands among all severities of the kind, from zero up to one. */
  static double rank(FaultKind kind, int draw) {
    double turned = POINTS.get(draw)[0] + GOLDEN * kind.ordinal();
    return turned - Math.floor(turned);
  }

  /**
   * Half of the faults of a kind are on either side of what is typical, spread evenly in ratio.
   *
   * @param u from zero up to one
   */
  public static double severity(FaultKind kind, double u) {
    if (kind.dimension().isEmpty()) {
      return 0;
    }
    return u < 0.5
        ? between(kind.least(), kind.typical(), 2 * u)
        : between(kind.typical(), kind.most(), 2 * u - 1);
  }

  private static double between(double from, double to, double share) {
    if (from == to) {
      return from;
    } else if (to == Double.POSITIVE_INFINITY) {
      return from == 0 ? to : from * FastMath.pow(NEARLY_OPEN_RATIO, share);
    } else if (from == 0) {
      return share < CONTACT_SHARE ? 0 : between(Math.min(CONTACT_OHMS, to), to, share);
    }
    double middle = from * FastMath.pow(to / from, share);
    // rounding must not lead out of the range
    return Math.max(Math.min(from, to), Math.min(Math.max(from, to), middle));
  }
}
