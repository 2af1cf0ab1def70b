package halfwave.flame;

import static halfwave.quantity.Constants.ELEMENTARY_CHARGE_COULOMBS;

import org.apache.commons.math3.util.FastMath;

/**
 * Ion source, ion density and temperature as pure functions of place, around one burner.
 *
 * <p>Behind the burner's face (z &lt; 0) there is no flame: source and density fall as {@code
 * exp(z/0.4 mm)} from their values at the face.
 */
public final class IonField {

  private static final double GAUSS = 2.77;
  private static final double GAUSS_PEAK = 0.939;
  private static final double OUTSIDE_DECAY_METERS = 1e-3;
  private static final double INSIDE_DECAY_METERS = 0.4e-3;
  private static final double AMBIENT_KELVIN = 300;
  private static final double FAR = 28;

  private final FlameSheets sheets;
  private final boolean burning;
  private final double mantleSlope;
  private final double coneHeight;
  private final double coneLength;
  private final double radius;
  private final double conePeak;
  private final double coneAlpha;
  private final double coneSpeed;
  private final double mantleAlpha;
  private final double mantleSpeed;
  private final double burntKelvin;

  private IonField(FlameSheets sheets) {
    this.sheets = sheets;
    burning = sheets.state().burning();
    double m = FlameSheets.MANTLE_SPREAD_RATIO;
    mantleSlope = 1 / Math.sqrt(1 + m * m);
    radius = sheets.portRadiusMeters();
    coneHeight = sheets.coneHeightMeters();
    coneLength = Math.sqrt(radius * radius + coneHeight * coneHeight);
    FlameTable table = sheets.mixture().fuel().table();
    FlameRow cone = table.at(sheets.mixture().equivalenceRatio());
    FlameRow mantle = table.at(1);
    conePeak = burning ? cone.peakIonsPerCubicMeter() : 0;
    coneAlpha = IonGas.recombinationCubicMetersPerSecond(0.95 * cone.hottestKelvin());
    coneSpeed = 0.93 * cone.burntGasMetersPerSecond();
    mantleAlpha = IonGas.recombinationCubicMetersPerSecond(0.95 * mantle.hottestKelvin());
    mantleSpeed = 0.93 * mantle.burntGasMetersPerSecond();
    burntKelvin = 0.95 * mantle.hottestKelvin();
  }

  /** The field of a flame. */
  public static IonField of(FlameSheets sheets) {
    return new IonField(sheets);
  }

  /** The sheets this field belongs to. */
  public FlameSheets sheets() {
    return sheets;
  }

  /** Temperature of the burnt gas between the sheets (K). */
  public double burntKelvin() {
    return burntKelvin;
  }

  /**
   * Signed normal distance to the mantle: below zero inside (m). Behind the face: distance to the
   * flame's foot for places outside it.
   */
  public double mantleDistanceMeters(double xMeters, double yMeters, double zMeters) {
    double d = mantle(radiusAt(xMeters, yMeters, zMeters), Math.max(0, zMeters));
    if (zMeters < 0) {
      double side = Math.max(0, d);
      return Math.sqrt(side * side + zMeters * zMeters);
    }
    return d;
  }

  /** Signed distance to the inner cone: below zero in unburnt gas (m). */
  public double coneDistanceMeters(double xMeters, double yMeters, double zMeters) {
    return cone(radiusAt(xMeters, yMeters, zMeters), Math.max(0, zMeters));
  }

  /**
   * Ion-pair source of the two brushes, {@code q(d) = 0.939·j/(e·w)·exp(−2.77·d²/w²)} each.
   *
   * @return q (1/m³s), zero or above
   */
  public double sourcePerCubicMeterSecond(double xMeters, double yMeters, double zMeters) {
    if (!burning) {
      return 0;
    }
    double z = Math.max(0, zMeters);
    double rho = radiusAt(xMeters, yMeters, zMeters);
    double w = sheets.brushWidthMeters(z);
    double q = brush(sheets.mantleAmpsPerSquareMeter(), mantle(rho, z), w);
    if (sheets.coneAmpsPerSquareMeter() > 0) {
      q += brush(sheets.coneAmpsPerSquareMeter(), cone(rho, z), w);
    }
    return zMeters < 0 ? q * FastMath.exp(zMeters / INSIDE_DECAY_METERS) : q;
  }

  /** Radius around a place within which the source vanishes for certain (m); zero near a brush. */
  double sourceFreeMeters(double xMeters, double yMeters, double zMeters) {
    double d = Math.abs(mantleDistanceMeters(xMeters, yMeters, zMeters));
    if (sheets.coneAmpsPerSquareMeter() > 0) {
      d = Math.min(d, Math.abs(coneDistanceMeters(xMeters, yMeters, zMeters)));
    }
    // at 3.2 widths the brush is 1e-12 of its middle; a quarter less for its widening with z
    return Math.max(0, 0.75 * (d - 3.2 * sheets.brushWidthMeters(zMeters)));
  }

  /**
   * Ion density, {@link IonGas#downstreamPerCubicMeter} from the sheet that gives more; outside the
   * mantle times {@code exp(−d/1 mm)}, inside the unburnt cone times {@code exp(−d/0.4 mm)}.
   *
   * @return n (1/m³), zero or above
   */
  public double ionDensityPerCubicMeter(double xMeters, double yMeters, double zMeters) {
    if (!burning) {
      return 0;
    }
    double z = Math.max(0, zMeters);
    double rho = radiusAt(xMeters, yMeters, zMeters);
    double dm = mantle(rho, z);
    double dc = cone(rho, z);
    double ofMantle =
        IonGas.downstreamPerCubicMeter(
            sheets.mantlePeakIonsPerCubicMeter(), mantleAlpha, mantleSpeed, Math.abs(dm));
    double ofCone = IonGas.downstreamPerCubicMeter(conePeak, coneAlpha, coneSpeed, Math.abs(dc));
    double n = Math.max(ofMantle, ofCone);
    double decay =
        Math.max(0, dm) / OUTSIDE_DECAY_METERS
            + Math.max(0, -dc) / INSIDE_DECAY_METERS
            + Math.max(0, -zMeters) / INSIDE_DECAY_METERS;
    return decay > 0 ? n * FastMath.exp(-decay) : n;
  }

  /**
   * Gas temperature: burnt gas between the sheets, falling to 300 K over 2 mm outside the mantle
   * and over 0.4 mm in the unburnt cone (K) [practice].
   */
  public double gasKelvin(double xMeters, double yMeters, double zMeters) {
    if (!burning) {
      return AMBIENT_KELVIN;
    }
    double z = Math.max(0, zMeters);
    double rho = radiusAt(xMeters, yMeters, zMeters);
    double decay =
        Math.max(0, mantle(rho, z)) / (2 * OUTSIDE_DECAY_METERS)
            + Math.max(0, -cone(rho, z)) / INSIDE_DECAY_METERS
            + Math.max(0, -zMeters) / INSIDE_DECAY_METERS;
    return AMBIENT_KELVIN + (burntKelvin - AMBIENT_KELVIN) * FastMath.exp(-decay);
  }

  private double radiusAt(double x, double y, double z) {
    double rise = y - sheets.axisRiseMeters(z);
    return Math.sqrt(x * x + rise * rise);
  }

  private double mantle(double rho, double z) {
    return (rho - sheets.mantleRadiusMeters(z)) * mantleSlope;
  }

  /** Normal distance to the cone's flank, or beyond the tip's normal the distance to the tip. */
  private double cone(double rho, double z) {
    double along = (radius * (radius - rho) + coneHeight * z) / coneLength;
    if (along > coneLength) {
      double over = z - coneHeight;
      return Math.sqrt(rho * rho + over * over);
    }
    return ((rho - radius) * coneHeight + z * radius) / coneLength;
  }

  private static double brush(double j, double d, double w) {
    double x = GAUSS * d * d / (w * w);
    return x > FAR ? 0 : GAUSS_PEAK * j / (ELEMENTARY_CHARGE_COULOMBS * w) * FastMath.exp(-x);
  }
}
