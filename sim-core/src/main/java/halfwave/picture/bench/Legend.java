package halfwave.picture.bench;

import halfwave.message.MessageKey;
import halfwave.picture.Ink;
import halfwave.picture.LabelPlacer;
import halfwave.picture.LabelPlacer.Spot;
import halfwave.picture.flame.FlameImage;
import halfwave.picture.flame.FlameZone;
import java.awt.Color;
import java.awt.Font;
import java.awt.LinearGradientPaint;
import java.awt.geom.Rectangle2D;

/** What the violet means, and how long a centimetre or an inch is. */
final class Legend {

  private final BenchSheet sheet;
  private static final double METERS_PER_INCH = 0.0254;

  /** A ruler that is longer takes a shorter length, if there is one (px). */
  private static final double LONGEST = 100;

  private final Rectangle2D bar;
  private final double rulerMeters;
  private final double ruler;
  final boolean shown;

  Legend(BenchSheet sheet) {
    this.sheet = sheet;
    SheetPlan plan = sheet.plan;
    double width = 92;
    double right = plan.sheet.getMaxX() - plan.margin;
    bar = new Rectangle2D.Double(right - width, plan.board.getMaxY() - 24, width, 8);
    boolean inches = SheetWords.inches(sheet.style.sentences());
    rulerMeters = inches ? inches(plan.zone) : meters(plan.zone);
    ruler = plan.zone.length(rulerMeters);
    shown = plan.roomy && bar.getX() > plan.supply.getMaxX() + 24;
  }

  /** A round length that is neither a dot nor half of the sheet. */
  private static double meters(FlameZone zone) {
    return zone.length(10e-3) < LONGEST ? 10e-3 : 5e-3;
  }

  /** The same on a ruler in inches: two, one, or half of one. */
  private static double inches(FlameZone zone) {
    double inches = 2;
    while (inches > 0.5 && zone.length(inches * METERS_PER_INCH) >= LONGEST) {
      inches /= 2;
    }
    return inches * METERS_PER_INCH;
  }

  void paint(Ink ink) {
    if (!shown) {
      return;
    }
    float[] at = new float[9];
    Color[] colours = new Color[9];
    for (int k = 0; k < 9; k++) {
      at[k] = k / 8f;
      colours[k] = Ink.faint(ink.palette().ions(), FlameImage.opacity(k / 8.0));
    }
    ink.graphics()
        .setPaint(
            new LinearGradientPaint((float) bar.getX(), 0, (float) bar.getMaxX(), 0, at, colours));
    ink.graphics().fill(bar);
    ink.line(bar, ink.palette().hairline(), 0.8);
    double x = bar.getMaxX() - ruler;
    double y = bar.getY() - 30;
    ink.dimension(x, y, bar.getMaxX(), y);
  }

  void words(LabelPlacer placer, SheetWords words, Font font) {
    Color soft = sheet.style.palette().softInk();
    placer.place(
        words.text(MessageKey.DRAWING_IONS),
        font,
        soft,
        false,
        Spot.of(bar.getMaxX(), bar.getY() - 2, -1, -1));
    placer.place("10¹⁴", font, soft, false, Spot.of(bar.getX(), bar.getMaxY() + 1, 1, 1));
    placer.place("10¹⁷", font, soft, false, Spot.of(bar.getMaxX(), bar.getMaxY() + 1, -1, 1));
    placer.place(
        words.ruler(rulerMeters),
        font,
        soft,
        false,
        Spot.of(bar.getMaxX() - ruler - 8, bar.getY() - 30, -1, 0));
  }
}
