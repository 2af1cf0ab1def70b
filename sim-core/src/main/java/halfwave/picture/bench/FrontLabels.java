package halfwave.picture.bench;

import static halfwave.picture.LabelPlacer.NOTE;

import halfwave.board.Ignition;
import halfwave.message.MessageKey;
import halfwave.picture.LabelPlacer;
import halfwave.picture.LabelPlacer.Spot;
import halfwave.picture.Palette;
import java.awt.Shape;
import java.util.List;

/** Words in the view from the front. */
final class FrontLabels {

  private final BenchSheet sheet;
  private final Palette palette;
  private final SheetWords words;
  private final LabelPlacer placer;

  FrontLabels(LabelPen pen) {
    sheet = pen.sheet;
    palette = sheet.style.palette();
    words = pen.words;
    placer = pen.placer;
  }

  void front() {
    if (!sheet.front.shown) {
      return;
    }
    FrontView f = sheet.front;
    List<Shape> bars = f.bars(sheet.bench);
    double x = f.middle.getX();
    double above = f.middle.getY() - f.reach();
    double below = f.middle.getY() + f.reach();
    double edge = f.frame.getMaxX() - 4;
    double off = Math.abs(sheet.bench.rod().tip().yMeters());
    placer.inside(
        f.frame,
        words.length(MessageKey.DRAWING_OFF_CENTER, off),
        NOTE,
        palette.ink(),
        bars,
        Spot.of(x, above, 0, -1),
        Spot.of(edge, above, -1, -1),
        Spot.of(x - 6, above, -1, -1),
        Spot.of(edge, f.middle.getY() - 6, -1, -1));
    placer.inside(
        f.frame,
        words.text(MessageKey.DRAWING_FRONT),
        NOTE,
        palette.softInk(),
        bars,
        Spot.of(x, below, 0, 1),
        Spot.of(edge, below, -1, 1),
        Spot.of(x - 6, below, -1, 1));
    Ignition ignition = sheet.bench.design().ignition();
    if (sheet.bench.design().spark() == null && ignition != Ignition.SPARK_AND_SENSE) {
      MessageKey key =
          ignition.hotSurface() ? MessageKey.DRAWING_IGNITER : MessageKey.DRAWING_SPARK;
      placer.inside(
          f.frame,
          words.text(key),
          NOTE,
          palette.softInk(),
          Spot.of(
              Math.max(
                  f.igniter.getX() - 4,
                  f.frame.getX() + 2 + 0.5 * LabelPlacer.width(words.text(key), NOTE)),
              f.igniter.getY() + 14,
              0,
              1));
    }
  }
}
