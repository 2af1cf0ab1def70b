package halfwave.flame;

import halfwave.quantity.Guard;
import org.apache.commons.math3.util.FastMath;

/**
 * The burner as cathode: one sheet of flame, seen across the wedge of ion-free gas that opens from
 * its foot on the metal.
 *
 * <p>{@code j = min(j_root, C/y³)}, {@code C = (9/8)·ε₀·μ·V²}, {@code y = g + m·s}. With {@code y_s
 * = (C/j_root)^(1/3)}: {@code I = (P/m)·[j_root·(y_s − g) + C/(2·y_s²)]} if {@code y_s > g}, else
 * {@code P·C/(2·m·g²)}. Closed form (Mott and Gurney's law along a wedge).
 *
 * @param gapMeters g (m); above zero
 * @param rootAmpsPerSquareMeter j_root, what the sheet supplies (A/m²); zero or above
 * @param attachmentLengthMeters P (m); above zero
 * @param openingRatio m, how the gap widens along the sheet (1): 1.0 mantle, 0.6 cone [practice];
 *     above zero
 * @param mobilitySquareMetersPerVoltSecond ion mobility μ in the gap (m²/Vs); above zero
 */
public record GapLaw(
    double gapMeters,
    double rootAmpsPerSquareMeter,
    double attachmentLengthMeters,
    double openingRatio,
    double mobilitySquareMetersPerVoltSecond)
    implements ElectrodeLaw {

  /** m of the outer mantle (1) [practice]. */
  public static final double MANTLE_OPENING_RATIO = 1.0;

  /** m of the inner cone (1) [practice]. */
  public static final double CONE_OPENING_RATIO = 0.6;

  /** Checks the domain. */
  public GapLaw {
    Guard.positive("gapMeters", gapMeters);
    Guard.notNegative("rootAmpsPerSquareMeter", rootAmpsPerSquareMeter);
    Guard.positive("attachmentLengthMeters", attachmentLengthMeters);
    Guard.positive("openingRatio", openingRatio);
    Guard.positive("mobilitySquareMetersPerVoltSecond", mobilitySquareMetersPerVoltSecond);
  }

  @Override
  public double currentAmps(double volts) {
    double v = ElectrodeLaw.checked(volts);
    double j = rootAmpsPerSquareMeter;
    double g = gapMeters;
    double c = IonGas.SPACE_CHARGE_FARADS_PER_METER * mobilitySquareMetersPerVoltSecond * v * v;
    if (j == 0 || c == 0) {
      return 0;
    }
    double length = attachmentLengthMeters / openingRatio;
    double ys = FastMath.cbrt(c / j);
    return ys > g ? length * (j * (ys - g) + c / (2 * ys * ys)) : length * c / (2 * g * g);
  }

  /**
   * Current density across a plane gap that the sheet could supply without limit, {@code C/y³}.
   *
   * @param mobilitySquareMetersPerVoltSecond μ (m²/Vs)
   * @param volts V (V); zero or above
   * @param gapMeters y (m); above zero
   * @return current density (A/m²)
   */
  public static double unsaturatedAmpsPerSquareMeter(
      double mobilitySquareMetersPerVoltSecond, double volts, double gapMeters) {
    double v = ElectrodeLaw.checked(volts);
    double y = Guard.positive("gapMeters", gapMeters);
    return IonGas.SPACE_CHARGE_FARADS_PER_METER
        * mobilitySquareMetersPerVoltSecond
        * v
        * v
        / (y * y * y);
  }
}
