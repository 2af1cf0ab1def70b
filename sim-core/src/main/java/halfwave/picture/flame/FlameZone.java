package halfwave.picture.flame;

import halfwave.bench.Bench;
import halfwave.flame.Place;
import halfwave.picture.scene.DrawnView;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * The part of the sheet that is to scale: places of the model to places of the sheet and back. The
 * model does not say which side of the burner x runs to; here it runs to the left for somebody who
 * looks at the burner's face, so that all views fit together.
 */
public final class FlameZone {

  private final DrawnView view;
  private final Point2D face;
  private final double unitsPerMeter;
  private final Rectangle2D window;

  /**
   * Makes a zone.
   *
   * @param view from where it is seen
   * @param face where the middle of the burner's face is
   * @param unitsPerMeter how long a metre is
   * @param window what of it the sheet has room for
   */
  public FlameZone(DrawnView view, Point2D face, double unitsPerMeter, Rectangle2D window) {
    this.view = view;
    this.face = face;
    this.unitsPerMeter = unitsPerMeter;
    this.window = window;
  }

  /** Where a place of the model is on the sheet. */
  public Point2D at(Place place) {
    return at(place.zMeters(), view == DrawnView.ABOVE ? place.xMeters() : -place.yMeters());
  }

  /** A place by its distance from the face and its distance below the axis on the sheet (m). */
  public Point2D at(double zMeters, double downMeters) {
    return new Point2D.Double(
        face.getX() + zMeters * unitsPerMeter, face.getY() + downMeters * unitsPerMeter);
  }

  /** How long something is on the sheet. */
  public double length(double meters) {
    return meters * unitsPerMeter;
  }

  /** How long something on the sheet is in truth (m). */
  public double meters(double length) {
    return length / unitsPerMeter;
  }

  /** What of it the sheet has room for. */
  public Rectangle2D window() {
    return window;
  }

  /** From where it is seen. */
  public DrawnView view() {
    return view;
  }

  /**
   * Height of the cut that is drawn: of the rod's tip, or of the burner's axis from the side (m).
   */
  public double cutMeters(Bench bench) {
    return view == DrawnView.ABOVE ? bench.rod().tip().yMeters() : 0;
  }
}
