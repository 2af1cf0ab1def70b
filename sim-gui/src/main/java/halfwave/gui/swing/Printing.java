package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import halfwave.paper.PaperSize;
import halfwave.picture.Picture;
import java.awt.print.PageFormat;
import java.awt.print.Paper;
import java.awt.print.PrinterJob;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JFrame;
import javax.swing.JOptionPane;

/** Hands pictures to a printer that somebody chooses. */
final class Printing {

  /** What no printer reaches, at every edge (points). */
  private static final double EDGE = 18;

  private final JFrame over;
  private final Wording words;
  private final LongWork work;

  Printing(JFrame over, Wording words, LongWork work) {
    this.over = over;
    this.words = words;
    this.work = work;
  }

  /**
   * Asks for a printer and prints.
   *
   * @param name what the printer calls it
   * @param size the sheets
   * @param wide whether the sheet lies on its side
   * @param pages makes the pages, away from the event thread
   */
  void print(String name, PaperSize size, boolean wide, Supplier<List<Picture>> pages) {
    if (PrinterJob.lookupPrintServices().length == 0) {
      say(words.text("paper.no-printer"));
      return;
    }
    PrinterJob job = PrinterJob.getPrinterJob();
    job.setJobName(name);
    if (!job.printDialog()) {
      return;
    }
    work.begin(
        watch -> {
          job.setPrintable(new PrintedPages(pages.get()), sheet(size, wide));
          job.print();
          return words.text("paper.printed");
        });
  }

  /** A sheet of that size, with the edge that no printer reaches. */
  static PageFormat sheet(PaperSize size, boolean wide) {
    Paper paper = new Paper();
    paper.setSize(size.widthPoints(), size.heightPoints());
    paper.setImageableArea(
        EDGE, EDGE, size.widthPoints() - 2 * EDGE, size.heightPoints() - 2 * EDGE);
    PageFormat format = new PageFormat();
    format.setPaper(paper);
    format.setOrientation(wide ? PageFormat.LANDSCAPE : PageFormat.PORTRAIT);
    return format;
  }

  /** Says why nothing comes of it. */
  void say(String text) {
    JOptionPane.showMessageDialog(over, text, over.getTitle(), JOptionPane.INFORMATION_MESSAGE);
  }
}
