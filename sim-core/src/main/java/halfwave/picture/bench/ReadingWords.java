package halfwave.picture.bench;

import halfwave.picture.LabelPlacer;
import halfwave.picture.LabelPlacer.Spot;
import halfwave.picture.Palette;
import java.awt.Font;
import java.awt.geom.Rectangle2D;

/** Puts a meter's reading on its plate, as large as it fits, on one line or on two. */
final class ReadingWords {

  private final LabelPlacer placer;
  private final Rectangle2D plate;
  private final Palette palette;

  ReadingWords(LabelPlacer placer, Rectangle2D plate, Palette palette) {
    this.placer = placer;
    this.plate = plate;
    this.palette = palette;
  }

  void put(String reading) {
    for (int size : new int[] {20, 18, 16, 15, 14, 13}) {
      if (oneLine(reading, LabelPlacer.READING.deriveFont((float) size))) {
        return;
      }
    }
    for (int size : new int[] {15, 14, 13, 12, 11}) {
      if (twoLines(reading, LabelPlacer.READING.deriveFont((float) size))) {
        return;
      }
    }
    if (oneLine(reading, LabelPlacer.READING.deriveFont(11f))) {
      return;
    }
    // no room even for the smallest type: a plate never shows half a figure
    twoLines(reading, LabelPlacer.NOTE);
  }

  private boolean oneLine(String text, Font font) {
    return fits(text, font)
        && placer.inside(
            plate,
            text,
            font,
            palette.ink(),
            Spot.of(plate.getCenterX(), plate.getCenterY(), 0, 0));
  }

  private boolean twoLines(String text, Font font) {
    int best = -1;
    double least = Double.MAX_VALUE;
    for (int k = text.indexOf(' '); k >= 0; k = text.indexOf(' ', k + 1)) {
      double longer =
          Math.max(
              LabelPlacer.width(text.substring(0, k), font),
              LabelPlacer.width(text.substring(k + 1), font));
      if (longer < least) {
        least = longer;
        best = k;
      }
    }
    double high = 1.25 * font.getSize();
    if (best < 0 || least > plate.getWidth() - 4 || 2 * high > plate.getHeight() - 1) {
      return false;
    }
    double x = plate.getCenterX();
    double y = plate.getCenterY();
    placer.inside(plate, text.substring(0, best), font, palette.ink(), Spot.of(x, y - 1.1, 0, -1));
    placer.inside(plate, text.substring(best + 1), font, palette.ink(), Spot.of(x, y + 1.1, 0, 1));
    return true;
  }

  private boolean fits(String text, Font font) {
    return LabelPlacer.width(text, font) <= plate.getWidth() - 4;
  }
}
