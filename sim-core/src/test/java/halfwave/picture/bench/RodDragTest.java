package halfwave.picture.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.RodPosition;
import halfwave.display.Sentences;
import halfwave.picture.Palette;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnPart;
import halfwave.picture.scene.RodGrip;
import java.awt.Dimension;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hand on the drawn rod moves the rod of the bench, as far as it can. */
class RodDragTest {

  private static final Dimension USUAL = new Dimension(820, 560);
  private static final DrawingStyle STYLE =
      DrawingStyle.still(Palette.LIGHT, Sentences.in(Locale.ENGLISH));

  private static BenchDrawing drawing(Bench bench, DrawingStyle style) {
    return BenchDrawing.of(USUAL, DrawnScenes.running(bench), style);
  }

  private static Bench standardAt(RodPosition position) {
    Bench bench = DrawnScenes.standard();
    return bench.with(bench.condition().withRodPosition(position));
  }

  /** How many pixels a metre is: the standard rod is 52 mm long. */
  private static double pixelsPerMeter(BenchDrawing drawing) {
    return drawing.shape(DrawnPart.ROD).getBounds2D().getHeight() / 52e-3;
  }

  @ParameterizedTest
  @CsvSource({"3, 2, 1", "-4, 10, 1.5", "20, -12, 2", "0, 7, 1"})
  void draggingByMillimetresMovesTheRodByThem(double along, double across, double scale) {
    BenchDrawing drawing =
        BenchDrawing.of(USUAL, DrawnScenes.running(DrawnScenes.standard()), STYLE.withScale(scale));
    double per = pixelsPerMeter(drawing);
    Point2D start = new Point2D.Double(300, 200);
    Point2D now = new Point2D.Double(300 + along * 1e-3 * per, 200 + across * 1e-3 * per);

    RodPosition to = drawing.dragged(RodGrip.BODY, RodPosition.FITTED, start, now);

    assertThat(to.alongMeters()).isCloseTo(along * 1e-3, within(1e-9));
    assertThat(to.acrossMeters()).isCloseTo(across * 1e-3, within(1e-9));
    assertThat(to.upMeters()).isZero();
  }

  @Test
  void whatIsDrawnAfterADragIsUnderTheHand() {
    BenchDrawing before = drawing(DrawnScenes.standard(), STYLE);
    Rectangle2D box = before.shape(DrawnPart.ROD).getBounds2D();
    Point2D start = new Point2D.Double(box.getCenterX(), box.getCenterY());
    Point2D now = new Point2D.Double(start.getX() + 37, start.getY() + 21);

    RodPosition to = before.dragged(RodGrip.BODY, RodPosition.FITTED, start, now);
    Rectangle2D after = drawing(standardAt(to), STYLE).shape(DrawnPart.ROD).getBounds2D();

    assertThat(after.getCenterX()).isCloseTo(box.getCenterX() + 37, within(0.5));
    assertThat(after.getMaxY()).isCloseTo(box.getMaxY() + 21, within(0.5));
  }

  @Test
  void aTurnBringsTheTipUnderTheHand() {
    BenchDrawing before = drawing(DrawnScenes.standard(), STYLE);
    Rectangle2D box = before.shape(DrawnPart.ROD).getBounds2D();
    Point2D tip = new Point2D.Double(box.getCenterX(), box.getMaxY());
    Point2D now = new Point2D.Double(box.getCenterX() + 80, box.getMaxY());

    RodPosition to = before.dragged(RodGrip.TIP, RodPosition.FITTED, tip, now);

    assertThat(to.turnRadians()).isCloseTo(Math.atan2(80, box.getHeight()), within(1e-6));
    assertThat(standardAt(to).rod().tip().zMeters()).isGreaterThan(15e-3);
  }

  @Test
  void aDragStopsWhereTheRodTouchesTheBurner() {
    BenchDrawing drawing = drawing(DrawnScenes.standard(), STYLE);
    Point2D start = new Point2D.Double(350, 300);

    RodPosition to =
        drawing.dragged(RodGrip.BODY, RodPosition.FITTED, start, new Point2D.Double(150, 300));
    Bench touching = standardAt(to);

    assertThat(touching.rodClearanceMeters()).isLessThan(1e-6);
    assertThat(to.alongMeters()).isBetween(-15e-3, -13e-3);
    BenchDrawing after = drawing(touching, STYLE);
    Shape rod = after.shape(DrawnPart.ROD);
    assertThat(rod.intersects(after.shape(DrawnPart.BURNER).getBounds2D())).isTrue();
    assertThat(after.labels()).anyMatch(l -> l.text().contains("touches"));
    assertThat(after.description()).contains("touches the metal");
  }

  @Test
  void aDragStaysInsideWhatTheModelKnows() {
    BenchDrawing drawing = drawing(DrawnScenes.standard(), STYLE);
    Point2D start = new Point2D.Double(350, 100);

    RodPosition far =
        drawing.dragged(RodGrip.BODY, RodPosition.FITTED, start, new Point2D.Double(9999, -9999));

    assertThat(far.alongMeters()).isEqualTo(0.1);
    assertThat(far.acrossMeters()).isEqualTo(-0.1);
  }

  @Test
  void inTheFrontViewTheRodMovesAcrossAndUp() {
    BenchDrawing drawing = drawing(DrawnScenes.standard(), STYLE);
    Rectangle2D front = drawing.shape(DrawnPart.FRONT).getBounds2D();
    Point2D start = new Point2D.Double(front.getCenterX(), front.getCenterY());

    RodPosition up =
        drawing.dragged(
            RodGrip.BODY,
            RodPosition.FITTED,
            start,
            new Point2D.Double(start.getX() - 6, start.getY() - 9));

    // x runs to the left there
    assertThat(up.acrossMeters()).isPositive();
    assertThat(up.upMeters()).isCloseTo(1.5 * up.acrossMeters(), within(1e-9));
    assertThat(up.alongMeters()).isZero();
  }

  @Test
  void theHandFindsTheRodAndItsTip() {
    BenchDrawing drawing = drawing(DrawnScenes.standard(), STYLE);
    Rectangle2D rod = drawing.shape(DrawnPart.ROD).getBounds2D();

    assertThat(drawing.gripAt(new Point2D.Double(rod.getCenterX(), rod.getMaxY() - 2)))
        .contains(RodGrip.TIP);
    assertThat(drawing.gripAt(new Point2D.Double(rod.getCenterX(), rod.getCenterY())))
        .contains(RodGrip.BODY);
    assertThat(drawing.gripAt(new Point2D.Double(20, 540))).isEmpty();
  }
}
