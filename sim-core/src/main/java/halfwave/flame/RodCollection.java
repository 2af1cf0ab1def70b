package halfwave.flame;

import static halfwave.quantity.Constants.ELEMENTARY_CHARGE_COULOMBS;
import static halfwave.quantity.Constants.VACUUM_PERMITTIVITY_FARADS_PER_METER;

import halfwave.quantity.Guard;
import java.util.Arrays;

/**
 * A rod-like electrode in the field of a flame: {@link FlowingSourceSheath} with the local values
 * at every half millimetre, the air outside the mantle by {@link OutsideLaw}, the electron contact.
 *
 * <p>Under each station the sheath's edge r_s is the parameter, not the voltage: for a row of r_s
 * the source is averaged over the disc of that radius perpendicular to the rod, then voltage and
 * current follow without iteration, and the current is read off at the voltages of the table.
 */
public final class RodCollection {

  /** Rod temperature in service (K) [practice: 1000 to 1300]. */
  public static final double IN_SERVICE_KELVIN = 1150;

  private static final double STATION_METERS = 0.5e-3;
  private static final double LARGEST_SHEATH_METERS = 24e-3;
  private static final double FINEST_STEP_METERS = 0.1e-3;
  private static final double BRUSH_STEP_METERS = 0.6e-3;
  private static final double BRUSH_REACH_METERS = 8e-3;
  private static final double FAR_METERS = 30e-3;

  /** Thicknesses of sheath worked out at each station: fine where it may reach across a brush. */
  private static final double[] THICKNESS_METERS = thicknesses();

  private static final int EDGES = THICKNESS_METERS.length;
  private static final int DISC_POINTS = 9;
  private static final double LARGEST_ROOT = Math.sqrt(CurrentCurve.LARGEST_VOLTS);
  private static final int VOLTAGES = CurrentCurve.INTERVALS + 1;

  private final IonField field;
  private final FlameSheets sheets;
  private final double a;
  private final double flow;
  private final double electronFactor;
  private final double em;
  private final boolean withOutside;

  private final double[] edge = new double[EDGES];
  private final SheathShape[] shape = new SheathShape[EDGES];
  private final double[] discAt = new double[DISC_POINTS];
  private final double[] discWeight = new double[DISC_POINTS];

  private final double[] root = new double[EDGES + 1];
  private final double[] perMeter = new double[EDGES + 1];
  private final double[] slope = new double[EDGES + 1];

  private final double[] ions = new double[VOLTAGES];
  private final double[] outside = new double[VOLTAGES];
  private double contact;
  private int used;

  private RodCollection(
      IonField field,
      Rod rod,
      double rodKelvin,
      double flowMetersPerSecond,
      boolean withOutside,
      FlameCalibration calibration) {
    this.field = field;
    this.sheets = field.sheets();
    this.a = rod.radiusMeters();
    this.flow = flowMetersPerSecond;
    this.withOutside = withOutside;
    double film = 0.5 * (Guard.positive("rodKelvin", rodKelvin) + field.burntKelvin());
    this.em = VACUUM_PERMITTIVITY_FARADS_PER_METER * IonGas.mobilitySquareMetersPerVoltSecond(film);
    this.electronFactor =
        ElectronContact.siemensPerDensityMeter(
            calibration.electronMobilitySquareMetersPerVoltSecond());
    for (int j = 0; j < EDGES; j++) {
      edge[j] = a + THICKNESS_METERS[j];
      shape[j] = new SheathShape(edge[j] / a);
    }
    // second-kind Chebyshev rule: mean over a disc of what varies along one diameter
    for (int i = 0; i < DISC_POINTS; i++) {
      double angle = (i + 1) * Math.PI / (DISC_POINTS + 1);
      double sine = StrictMath.sin(angle);
      discAt[i] = StrictMath.cos(angle);
      discWeight[i] = 2.0 / (DISC_POINTS + 1) * sine * sine;
    }
  }

  private static double[] thicknesses() {
    double[] row = new double[200];
    int count = 0;
    double step = FINEST_STEP_METERS;
    for (double x = step; x < LARGEST_SHEATH_METERS; x += step) {
      row[count] = x;
      count++;
      boolean fine = x >= 3 * BRUSH_STEP_METERS && x < BRUSH_REACH_METERS;
      step = fine ? BRUSH_STEP_METERS : Math.min(1.3 * step, x < 1e-3 ? BRUSH_STEP_METERS : 1);
    }
    return Arrays.copyOf(row, count);
  }

  /**
   * The rod against the plasma.
   *
   * @param field ion field of the flame
   * @param rod the rod
   * @param rodKelvin its surface temperature (K), {@link #IN_SERVICE_KELVIN} in service
   * @param calibration free numbers
   * @return its characteristic
   */
  public static ElectrodeCharacteristic characteristic(
      IonField field, Rod rod, double rodKelvin, FlameCalibration calibration) {
    double flow = field.sheets().electrodeMetersPerSecond();
    return characteristic(field, rod, rodKelvin, flow, true, calibration);
  }

  /** With the gas speed given and, for comparisons, without the law for the rod outside. */
  static ElectrodeCharacteristic characteristic(
      IonField field,
      Rod rod,
      double rodKelvin,
      double flowMetersPerSecond,
      boolean withOutside,
      FlameCalibration calibration) {
    if (!field.sheets().state().burning()) {
      return ElectrodeCharacteristic.outOfFlame();
    }
    return new RodCollection(field, rod, rodKelvin, flowMetersPerSecond, withOutside, calibration)
        .along(rod);
  }

  private ElectrodeCharacteristic along(Rod rod) {
    for (int p = 1; p < rod.path().size(); p++) {
      Place from = rod.path().get(p - 1);
      Place to = rod.path().get(p);
      double length = from.distanceMeters(to);
      int count = Math.max(1, (int) Math.ceil(length / STATION_METERS));
      double tx = (to.xMeters() - from.xMeters()) / length;
      double ty = (to.yMeters() - from.yMeters()) / length;
      double tz = (to.zMeters() - from.zMeters()) / length;
      for (int k = 0; k < count; k++) {
        double way = (k + 0.5) / count * length;
        station(
            from.xMeters() + way * tx,
            from.yMeters() + way * ty,
            from.zMeters() + way * tz,
            tx,
            ty,
            tz,
            length / count);
      }
    }
    return new ElectrodeCharacteristic(
        CurrentCurve.of(ions, 0, 0), CurrentCurve.of(outside, contact, 0));
  }

  private void station(
      double x, double y, double z, double tx, double ty, double tz, double length) {
    double distance = field.mantleDistanceMeters(x, y, z);
    if (distance > FAR_METERS) {
      return;
    }
    double n = field.ionDensityPerCubicMeter(x, y, z);
    contact += electronFactor * n * length;
    sheath(x, y, z, tx, ty, tz, n);
    double air = 0;
    double supply = 0;
    if (withOutside && distance > 0) {
      double clear =
          Math.max(OutsideLaw.LEAST_CLEAR_METERS, distance - a - 0.5 * sheets.brushWidthMeters(z));
      OutsideLaw law =
          new OutsideLaw(
              clear,
              sheets.mantleAmpsPerSquareMeter(),
              OutsideLaw.AIR_SQUARE_METERS_PER_VOLT_SECOND,
              a,
              1);
      air = law.coefficient();
      supply = law.supplyAmps();
    }
    int j = 0;
    for (int k = 1; k < VOLTAGES; k++) {
      double v = CurrentCurve.tableVolts(k);
      double s = Math.sqrt(v);
      while (j < used - 1 && root[j + 1] < s) {
        j++;
      }
      double through = Math.min(air * v * v, supply);
      ions[k] += length * Math.max(interpolated(j, s), through);
      outside[k] += length * through;
    }
  }

  /** Fills root of voltage against current per length for this station, rising in both. */
  private void sheath(double x, double y, double z, double tx, double ty, double tz, double n) {
    double[] e = acrossSheet(x, y, z, tx, ty, tz);
    double onto = 2 * ELEMENTARY_CHARGE_COULOMBS * n * flow;
    double reach = field.sourceFreeMeters(x, y, z);
    used = 0;
    while (used < EDGES && root[used] < LARGEST_ROOT) {
      int j = used;
      double rs = edge[j];
      double q = rs > reach ? meanSource(x, y, z, e, rs) : 0;
      double eq = ELEMENTARY_CHARGE_COULOMBS * q;
      double volts = shape[j].volts(eq / (4 * em), onto * rs / (2 * Math.PI * em), rs);
      root[j + 1] = Math.max(Math.sqrt(volts), root[j] * (1 + 1e-9) + 1e-30);
      perMeter[j + 1] = Math.max(Math.PI * eq * (rs * rs - a * a) + onto * rs, perMeter[j]);
      used++;
    }
    slopes();
  }

  /** Mean of the source over the disc of radius r_s perpendicular to the rod. */
  private double meanSource(double x, double y, double z, double[] e, double rs) {
    double q = 0;
    for (int i = 0; i < DISC_POINTS; i++) {
      double d = discAt[i] * rs;
      q +=
          discWeight[i] * field.sourcePerCubicMeterSecond(x + d * e[0], y + d * e[1], z + d * e[2]);
    }
    return q;
  }

  /** Unit vector perpendicular to the rod along which the distance to the mantle changes most. */
  private double[] acrossSheet(double x, double y, double z, double tx, double ty, double tz) {
    double rise = y - sheets.axisRiseMeters(z);
    double rho = Math.max(1e-9, Math.sqrt(x * x + rise * rise));
    double gx = x / rho;
    double gy = rise / rho;
    double gz = -FlameSheets.MANTLE_SPREAD_RATIO;
    double along = gx * tx + gy * ty + gz * tz;
    gx -= along * tx;
    gy -= along * ty;
    gz -= along * tz;
    double size = Math.sqrt(gx * gx + gy * gy + gz * gz);
    if (size > 1e-6) {
      return new double[] {gx / size, gy / size, gz / size};
    }
    // the rod stands straight on the sheet: any perpendicular serves
    double flat = Math.sqrt(tx * tx + ty * ty);
    return flat > 0.1 ? new double[] {-ty / flat, tx / flat, 0} : new double[] {1, 0, 0};
  }

  private void slopes() {
    for (int j = 1; j < used; j++) {
      double left = (perMeter[j] - perMeter[j - 1]) / (root[j] - root[j - 1]);
      double right = (perMeter[j + 1] - perMeter[j]) / (root[j + 1] - root[j]);
      slope[j] = left > 0 && right > 0 ? 2 * left * right / (left + right) : 0;
    }
    slope[0] = perMeter[1] / root[1];
    slope[used] = (perMeter[used] - perMeter[used - 1]) / (root[used] - root[used - 1]);
  }

  private double interpolated(int j, double s) {
    if (s >= root[used]) {
      return perMeter[used];
    }
    double h = root[j + 1] - root[j];
    double t = (s - root[j]) / h;
    double rise = perMeter[j + 1] - perMeter[j];
    double m0 = h * slope[j];
    double m1 = h * slope[j + 1];
    return perMeter[j] + t * (m0 + t * (3 * rise - 2 * m0 - m1 + t * (m0 + m1 - 2 * rise)));
  }
}
