package halfwave.paper;

import java.awt.geom.Rectangle2D;

/** Places on a sheet where somebody writes. */
final class Blanks {

  /** From line to line for a hand that writes. */
  private static final double PITCH = 22;

  /** Height of a box in which somebody writes. */
  private static final double BOX = 25;

  private static final double GAP = 18;
  private static final double PAD = 4;

  private final PageFlow flow;
  private final PaperWords words;

  Blanks(PageFlow flow, PaperWords words) {
    this.flow = flow;
    this.words = words;
  }

  /** Whose sheet it is, and when; what the first line is for stands before it. */
  void who(String name) {
    String[] names = {name, words.text("handout.group"), words.text("handout.date")};
    double[] from = {0, 0.5, 0.75};
    double[] to = {0.47, 0.72, 1};
    flow.add(
        new Item(
            10,
            PITCH,
            false,
            (pen, top) -> {
              double base = top + PITCH - 4;
              for (int k = 0; k < names.length; k++) {
                double x = flow.left() + from[k] * flow.width();
                pen.text(names[k], PageFlow.NOTE, Pen.INK, x, base);
                double start = x + Lines.width(names[k], PageFlow.NOTE) + 5;
                double end = flow.left() + to[k] * flow.width();
                pen.line(start, base + 2, end, base + 2, Pen.SOFT_INK, 0.5);
              }
            }));
  }

  /** Lines to write on, in columns side by side under their names. */
  void lines(int count, String... names) {
    double column = (flow.width() - GAP * (names.length - 1)) / names.length;
    double head = PageFlow.line(PageFlow.NOTE_STRONG);
    flow.add(
        new Item(
            9,
            head + count * PITCH,
            false,
            (pen, top) -> {
              for (int k = 0; k < names.length; k++) {
                double x = flow.left() + k * (column + GAP);
                double base = PageFlow.base(PageFlow.NOTE_STRONG, top);
                pen.text(names[k], PageFlow.NOTE_STRONG, Pen.INK, x, base);
                for (int line = 1; line <= count; line++) {
                  double y = top + head + line * PITCH;
                  pen.line(x, y, x + column, y, Pen.SOFT_INK, 0.5);
                }
              }
            }));
  }

  /**
   * A table of empty boxes under the names of its columns.
   *
   * @param rows how many
   * @param shares width of each column as a share of the whole
   * @param names of the columns
   */
  void boxes(int rows, double[] shares, String... names) {
    double head = PageFlow.line(PageFlow.NOTE) + 2;
    flow.add(
        new Item(
            4,
            head,
            true,
            (pen, top) -> {
              double x = flow.left();
              for (int k = 0; k < names.length; k++) {
                double base = PageFlow.base(PageFlow.NOTE, top);
                pen.text(names[k], PageFlow.NOTE, Pen.INK, x + PAD, base);
                x += shares[k] * flow.width();
              }
            }));
    for (int row = 0; row < rows; row++) {
      flow.add(new Item(0, BOX, row < rows - 1, (pen, top) -> row(pen, top, shares)));
    }
  }

  private void row(Pen pen, double top, double[] shares) {
    double x = flow.left();
    for (double share : shares) {
      double width = share * flow.width();
      pen.draw(new Rectangle2D.Double(x, top, width, BOX), Pen.SOFT_INK, 0.5);
      x += width;
    }
  }
}
