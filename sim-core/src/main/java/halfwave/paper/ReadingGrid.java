package halfwave.paper;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.picture.Typeface;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What each check finds, each in a field of its own to be cut out or covered. */
final class ReadingGrid {

  private static final int COLUMNS = 3;
  private static final double PAD = 2.8;
  private static final Font NAME = Typeface.PLAIN.font(7);
  private static final Font FOUND = Typeface.STRONG.font(8);

  private final PageFlow flow;
  private final PaperWords words;
  private final QuizNames names;

  /** A field: what was asked, and what is found. */
  private record Field(List<String> asked, List<String> found) {

    double height() {
      return asked.size() * PageFlow.line(NAME) + found.size() * PageFlow.line(FOUND) + 2 * PAD;
    }
  }

  ReadingGrid(PageFlow flow, PaperWords words) {
    this.flow = flow;
    this.words = words;
    names = new QuizNames(words);
  }

  /** The fields, numbered from one in the order of the checks, row by row. */
  void put(Map<Check, Outcome> found) {
    double width = flow.width() / COLUMNS;
    double room = width - 3 * PAD;
    List<Field> fields = new ArrayList<>();
    for (Map.Entry<Check, Outcome> e : found.entrySet()) {
      String asked = (fields.size() + 1) + " · " + CallRows.name(e.getKey(), words);
      String said = names.outcome(e.getValue());
      fields.add(new Field(Lines.of(asked, NAME, room), Lines.of(said, FOUND, room)));
    }
    for (int k = 0; k < fields.size(); k += COLUMNS) {
      List<Field> row = fields.subList(k, Math.min(fields.size(), k + COLUMNS));
      double height = row.stream().mapToDouble(Field::height).max().orElse(0);
      flow.add(new Item(0, height, false, (pen, top) -> row(pen, top, row, width, height)));
    }
  }

  private void row(Pen pen, double top, List<Field> row, double width, double height) {
    for (int k = 0; k < row.size(); k++) {
      Field field = row.get(k);
      double x = flow.left() + k * width;
      pen.dashed(new Rectangle2D.Double(x, top, width, height), Pen.SOFT_INK, 0.5);
      double y = top + PAD;
      for (String line : field.asked()) {
        pen.text(line, NAME, Pen.SOFT_INK, x + PAD, PageFlow.base(NAME, y));
        y += PageFlow.line(NAME);
      }
      for (String line : field.found()) {
        pen.text(line, FOUND, Pen.INK, x + PAD, PageFlow.base(FOUND, y));
        y += PageFlow.line(FOUND);
      }
    }
  }
}
