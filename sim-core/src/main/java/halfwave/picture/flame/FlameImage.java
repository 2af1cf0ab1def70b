package halfwave.picture.flame;

import halfwave.flame.FlameSheets;
import halfwave.flame.IonField;
import halfwave.picture.Palette;
import halfwave.picture.PaperLook;
import halfwave.picture.scene.DrawnView;
import java.awt.Color;
import java.awt.image.BufferedImage;

/**
 * The flame in the plane of the cut, one pixel at a time: blue where it burns, violet where ions
 * are, more of it for every decade of their density. The pixels are the engine's; only the length
 * is the drawing's.
 */
public final class FlameImage {

  /** Densities at which the violet begins and is full, as powers of ten (1/m³). */
  private static final double FAINTEST_POWER = 14;

  private static final double FULL_POWER = 17;

  /** Hot soot. */
  private static final Color SOOT = new Color(0xF3B93C);

  private static final double MOST_VIOLET = 0.86;

  /**
   * Everything the pixels depend on.
   *
   * @param sheets the flame
   * @param view the plane of the cut
   * @param cutMeters its height (m)
   * @param palette the colours
   * @param columns pixels along the axis
   * @param rows pixels across it
   * @param pixelMeters size of a pixel (m)
   */
  public record Key(
      FlameSheets sheets,
      DrawnView view,
      double cutMeters,
      Palette palette,
      int columns,
      int rows,
      double pixelMeters) {}

  private final Key key;
  private final IonField field;
  private final FlameBody body;
  private final double[] sum = new double[4];

  private FlameImage(Key key) {
    this.key = key;
    field = IonField.of(key.sheets());
    body = new FlameBody(key.sheets());
  }

  /** The picture; the middle of its left edge is the middle of the burner's face. */
  static BufferedImage of(Key key) {
    return new FlameImage(key).painted();
  }

  private BufferedImage painted() {
    BufferedImage image =
        new BufferedImage(key.columns(), key.rows(), BufferedImage.TYPE_INT_ARGB_PRE);
    int[] pixels = new int[key.columns() * key.rows()];
    // seen from above both halves are the same
    boolean mirrored = key.view() == DrawnView.ABOVE;
    int half = (key.rows() + 1) / 2;
    for (int row = 0; row < (mirrored ? half : key.rows()); row++) {
      double across = (row + 0.5 - 0.5 * key.rows()) * key.pixelMeters();
      for (int column = 0; column < key.columns(); column++) {
        int argb = pixel((column + 0.5) * key.pixelMeters(), across, row);
        pixels[row * key.columns() + column] = argb;
        if (mirrored) {
          pixels[(key.rows() - 1 - row) * key.columns() + column] = argb;
        }
      }
    }
    image.getRaster().setDataElements(0, 0, key.columns(), key.rows(), pixels);
    return image;
  }

  private int pixel(double z, double down, int row) {
    FlameSheets s = key.sheets();
    double y = key.view() == DrawnView.ABOVE ? key.cutMeters() : -down;
    double x = key.view() == DrawnView.ABOVE ? down : 0;
    double rise = s.axisRiseMeters(z);
    double inCut = Math.sqrt(x * x + (y - rise) * (y - rise));
    // what lies behind the cut is seen through it, faintly
    double seen = key.view() == DrawnView.ABOVE ? Math.abs(x) : inCut;
    double edge = body.radiusMeters(z);
    if (seen > Math.max(edge, s.mantleRadiusMeters(z)) + 0.006 * body.softnessRatio() + 0.002) {
      return 0;
    }
    double t = z / body.lengthMeters();
    double fade = 1 - 0.9 * FlameBody.smooth((t - 0.1) / 0.9);
    double soft = (0.6e-3 + 0.045 * z) * body.softnessRatio();
    double rim = s.portRadiusMeters();
    double offRim = Math.sqrt(z * z + (seen - rim) * (seen - rim));
    double attached = body.attachedRatio(z, offRim);
    double mantle = FlameBody.smooth((edge - inCut) / (2 * soft) + 0.5);
    double behind = FlameBody.smooth((edge - seen) / (2 * soft) + 0.5);
    sum[0] = 0;
    sum[1] = 0;
    sum[2] = 0;
    sum[3] = 0;
    double bright = body.strengthRatio() * attached;
    lay(key.palette().flameMantle(), veil() * bright * (0.34 * behind + 0.2 * mantle) * fade);
    cone(view() ? x : 0, view() ? rise : y, z, bright);
    double yellow = body.yellowRatio(z);
    if (yellow > 0) {
      double core = FlameBody.smooth((0.9 * edge - seen) / (0.6 * edge + 1e-9));
      double end = 1 - FlameBody.smooth((t - 0.82) / 0.18);
      lay(SOOT, 0.85 * yellow * core * end);
    }
    ions(x, y, z, attached);
    return packed((int) (z / key.pixelMeters()), row);
  }

  /** On slate pale blue needs more of itself to be seen. */
  private double veil() {
    return key.palette().dark() ? 1.25 : 1;
  }

  private boolean view() {
    return key.view() == DrawnView.ABOVE;
  }

  /** The inner cone: deepest at the port, with a bright edge. */
  private void cone(double x, double y, double z, double bright) {
    FlameSheets s = key.sheets();
    double h = s.coneHeightMeters();
    if (!(h > 0) || z > 1.05 * h) {
      return;
    }
    double off = field.coneDistanceMeters(x, y, z);
    double soft = (0.25e-3 + 0.006 * z) * body.softnessRatio();
    double inside = FlameBody.smooth(0.5 - off / (2 * soft));
    double depth = 0.62 - 0.34 * z / h;
    double edge = Math.exp(-off * off / (2 * soft * soft));
    double ending = 1 - FlameBody.smooth((z / h - 0.8) / 0.25);
    lay(key.palette().flameCone(), bright * (depth * inside + 0.24 * edge * ending));
  }

  private void ions(double x, double y, double z, double attached) {
    double n = field.ionDensityPerCubicMeter(x, y, z);
    if (n <= 1e14) {
      return;
    }
    double share =
        PaperLook.share((Math.log10(n) - FAINTEST_POWER) / (FULL_POWER - FAINTEST_POWER));
    lay(key.palette().ions(), opacity(share) * body.sheetsRatio(z) * attached);
  }

  /** Opacity of the violet for a share of the way from faintest to full (1). */
  public static double opacity(double share) {
    // steeper than straight, so that the sheets stand out from the burnt gas between them
    return MOST_VIOLET * share * share * share;
  }

  /** Lays a colour over what is there, all of it premultiplied. */
  private void lay(Color colour, double alpha) {
    double a = PaperLook.share(alpha);
    double keep = 1 - a;
    sum[0] = sum[0] * keep + a * colour.getRed();
    sum[1] = sum[1] * keep + a * colour.getGreen();
    sum[2] = sum[2] * keep + a * colour.getBlue();
    sum[3] = sum[3] * keep + a;
  }

  /** Rounded with a fixed grain, since faint slopes would show steps otherwise. */
  private int packed(int column, int row) {
    double wave = 52.9829189 * ((0.06711056 * column + 0.00583715 * row) % 1);
    double grain = wave - Math.floor(wave) - 0.5;
    int a = (int) Math.max(0, Math.min(255, Math.round(255 * sum[3] + grain)));
    return (a << 24) | (channel(sum[0], a) << 16) | (channel(sum[1], a) << 8) | channel(sum[2], a);
  }

  private static int channel(double value, int most) {
    return Math.max(0, Math.min(most, (int) Math.round(value)));
  }
}
