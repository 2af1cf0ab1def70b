package halfwave.gui.swing;

import halfwave.picture.Picture;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.util.List;

/** Pictures on a printer, one to a sheet: painted by what paints them for screen and file. */
final class PrintedPages implements Printable {

  /** Pages made for a sheet differ from it by less than this (points). */
  private static final double SAME = 12;

  private final List<Picture> pages;

  PrintedPages(List<Picture> pages) {
    this.pages = List.copyOf(pages);
  }

  @Override
  public int print(Graphics graphics, PageFormat sheet, int index) {
    if (index >= pages.size()) {
      return NO_SUCH_PAGE;
    }
    Picture page = pages.get(index);
    Graphics2D g = (Graphics2D) graphics.create();
    boolean made =
        Math.abs(page.width() - sheet.getWidth()) < SAME
            && Math.abs(page.height() - sheet.getHeight()) < SAME;
    if (!made) {
      // a page brings its margins, a picture has to stay off those of the printer
      double scale =
          Math.min(
              sheet.getImageableWidth() / page.width(), sheet.getImageableHeight() / page.height());
      g.translate(
          sheet.getImageableX() + (sheet.getImageableWidth() - scale * page.width()) / 2,
          sheet.getImageableY());
      g.scale(scale, scale);
    }
    page.paint(g);
    g.dispose();
    return PAGE_EXISTS;
  }
}
