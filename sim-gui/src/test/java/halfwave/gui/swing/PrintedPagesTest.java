package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.paper.PaperSize;
import halfwave.picture.Picture;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A printer gets every page once, and nothing beyond its reach. */
class PrintedPagesTest {

  private static Picture black(double width, double height) {
    return Picture.of(
        width,
        height,
        g -> {
          g.setColor(Color.BLACK);
          g.fill(new java.awt.geom.Rectangle2D.Double(0, 0, width, height));
        });
  }

  private static Rectangle inked(Picture picture, PageFormat sheet) {
    BufferedImage image =
        new BufferedImage(
            (int) sheet.getWidth(), (int) sheet.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    PrintedPages pages = new PrintedPages(List.of(picture));
    assertThat(pages.print(g, sheet, 0)).isEqualTo(Printable.PAGE_EXISTS);
    assertThat(pages.print(g, sheet, 1)).isEqualTo(Printable.NO_SUCH_PAGE);
    Rectangle found = new Rectangle(-1, -1);
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        if ((image.getRGB(x, y) & 0xFF) < 0x80) {
          found.add(x, y);
        }
      }
    }
    return found;
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void aPictureFillsASheetOnItsSide(PaperSize size) {
    PageFormat sheet = Printing.sheet(size, true);
    Rectangle found = inked(black(1920, 1200), sheet);

    assertThat(sheet.getWidth()).isGreaterThan(sheet.getHeight());
    assertThat(found.getMinX()).isGreaterThanOrEqualTo(sheet.getImageableX() - 1);
    assertThat(found.getMaxX())
        .isLessThanOrEqualTo(sheet.getImageableX() + sheet.getImageableWidth() + 1);
    // one of the two directions is used up
    assertThat(
            Math.max(
                found.getWidth() / sheet.getImageableWidth(),
                found.getHeight() / sheet.getImageableHeight()))
        .isGreaterThan(0.98);
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void aPageThatWasMadeForTheSheetIsPrintedInItsSize(PaperSize size) {
    PageFormat sheet = Printing.sheet(size, false);
    Rectangle found = inked(black(size.widthPoints(), size.heightPoints()), sheet);

    assertThat(found.getWidth()).isGreaterThan(sheet.getWidth() - 3);
    assertThat(found.getHeight()).isGreaterThan(sheet.getHeight() - 3);
  }
}
