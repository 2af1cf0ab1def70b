package halfwave.paper;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;

/** Rows of a table in a flow; a cell that is too long goes on in a line below. */
final class Table {

  private static final double PAD = 1.7;
  private static final double GAP = 12;

  private final PageFlow flow;
  private final double[] shares;
  private final boolean[] figures;
  private int rows;

  /**
   * An empty table.
   *
   * @param shares width of each column as a share of the whole; below zero: its cells are figures,
   *     and end at its right edge
   */
  Table(PageFlow flow, double... shares) {
    this.flow = flow;
    this.shares = new double[shares.length];
    figures = new boolean[shares.length];
    for (int k = 0; k < shares.length; k++) {
      this.shares[k] = Math.abs(shares[k]);
      figures[k] = shares[k] < 0;
    }
  }

  /** What the columns are; stays with the first row. */
  void head(String... cells) {
    row(PageFlow.NOTE_STRONG, true, cells);
  }

  void row(String... cells) {
    row(PageFlow.BODY, false, cells);
  }

  /** A row that sums up. */
  void strong(String... cells) {
    row(PageFlow.STRONG, false, cells);
  }

  private void row(Font font, boolean head, String... cells) {
    List<List<String>> lines = new ArrayList<>();
    int most = 1;
    for (int k = 0; k < cells.length; k++) {
      List<String> cell = Lines.of(cells[k], font, width(k));
      lines.add(cell);
      most = Math.max(most, cell.size());
    }
    double height = most * PageFlow.line(font) + 2 * PAD;
    boolean ruled = rows > 0 && !head;
    rows++;
    flow.add(
        new Item(
            head ? 2 : 0,
            height,
            head,
            (pen, top) -> {
              if (ruled) {
                pen.line(flow.left(), top, flow.right(), top, Pen.HAIRLINE, 0.5);
              }
              for (int k = 0; k < lines.size(); k++) {
                cell(pen, lines.get(k), font, k, top + PAD);
              }
            }));
  }

  private void cell(Pen pen, List<String> lines, Font font, int column, double top) {
    for (int k = 0; k < lines.size(); k++) {
      double base = PageFlow.base(font, top + k * PageFlow.line(font));
      if (figures[column]) {
        pen.textTo(lines.get(k), font, Pen.INK, from(column) + width(column), base);
      } else {
        pen.text(lines.get(k), font, Pen.INK, from(column), base);
      }
    }
  }

  private double from(int column) {
    double from = flow.left();
    for (int k = 0; k < column; k++) {
      from += shares[k] * flow.width();
    }
    return from;
  }

  private double width(int column) {
    boolean last = column == shares.length - 1;
    return shares[column] * flow.width() - (last ? 0 : GAP);
  }
}
