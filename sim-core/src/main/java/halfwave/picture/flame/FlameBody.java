package halfwave.picture.flame;

import halfwave.flame.FlameSheets;
import halfwave.flame.FlameState;
import halfwave.picture.PaperLook;

/**
 * What the drawing adds to the flame's sheets. The model's mantle has no end and no light of its
 * own, a drawn flame needs both: its length and its yellow are conventions of this drawing.
 */
public final class FlameBody {

  /** Length that the gas left over by the inner cone burns along at the full inshot flame (m). */
  private static final double TAIL_METERS = 0.093;

  private static final double TAIL_WATTS = 6700;

  private final FlameSheets sheets;
  private final double length;
  private final double yellow;
  private final double softness;
  private final double strength;
  private final double standOff;

  /** What it adds to these sheets. */
  public FlameBody(FlameSheets sheets) {
    this.sheets = sheets;
    double phi = sheets.mixture().equivalenceRatio();
    double left = Math.max(0.12, 1 - 1 / phi);
    double size = Math.sqrt(sheets.mixture().firingWatts() / TAIL_WATTS);
    length = sheets.coneHeightMeters() + TAIL_METERS * left * size;
    // the model calls it rich from 2.5 on; the first yellow is seen a little before
    yellow = PaperLook.share((phi - 2.2) / 1.6);
    boolean lazy = sheets.state() == FlameState.LAZY || sheets.state() == FlameState.RICH;
    softness = lazy ? 2.2 : sheets.state() == FlameState.LEAN ? 0.6 : 1;
    strength = sheets.state() == FlameState.LEAN ? 1.12 : lazy ? 0.85 : 1;
    standOff = sheets.state() == FlameState.LIFTED ? sheets.gapMeters() : 0;
  }

  /** Where its tip is seen (m). */
  public double lengthMeters() {
    return length;
  }

  /** How blurred its edges are, over those of a healthy one (1). */
  double softnessRatio() {
    return softness;
  }

  /** How bright it is, over a healthy one (1). */
  double strengthRatio() {
    return strength;
  }

  /** Radius within which it is seen: the mantle's, which closes towards the tip (m). */
  public double radiusMeters(double zMeters) {
    return sheets.mantleRadiusMeters(zMeters) * closing(zMeters);
  }

  private double closing(double z) {
    double t = z / length;
    if (t >= 1) {
      return 0;
    }
    double late = Math.max(0, (t - 0.38) / 0.62);
    return Math.sqrt(1 - late) * Math.sqrt(1 - late * late);
  }

  /** How much of the sheets is left at a distance: they fade before the flame ends (1). */
  public double sheetsRatio(double zMeters) {
    double t = zMeters / length;
    return 1 - smooth((t - 0.28) / 0.4);
  }

  /** How much is seen near the metal: a flame that has lifted leaves it (1). */
  double attachedRatio(double zMeters, double offRimMeters) {
    if (standOff > 0) {
      return smooth((zMeters / standOff - 0.45) / 0.9);
    }
    return smooth((offRimMeters / sheets.gapMeters() - 0.5) / 0.8);
  }

  /** How yellow it glows (1). */
  double yellowRatio(double zMeters) {
    return yellow * smooth((zMeters / length - 0.22) / 0.4);
  }

  static double smooth(double x) {
    double t = PaperLook.share(x);
    return t * t * (3 - 2 * t);
  }
}
