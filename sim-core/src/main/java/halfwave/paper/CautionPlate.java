package halfwave.paper;

import halfwave.message.Message;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** The cautions, on a plate with a sign and a word: never by colour alone, never cut in two. */
final class CautionPlate {

  private static final double PAD = 9;
  private static final double INDENT = 11;

  private CautionPlate() {}

  static void put(PageFlow flow, PaperWords words, List<Message> cautions) {
    double line = PageFlow.line(PageFlow.BODY);
    List<List<String>> told = new ArrayList<>();
    double room = flow.width() - 2 * PAD - INDENT;
    cautions.forEach(c -> told.add(Lines.of(words.sentences().sentence(c), PageFlow.BODY, room)));
    double height = 2 * PAD + 18;
    for (List<String> lines : told) {
      height += lines.size() * line + 1.5;
    }
    double whole = height;
    flow.add(
        new Item(
            14,
            whole,
            false,
            (pen, top) -> {
              pen.draw(Pen.plate(flow.left(), top, flow.width(), whole), Pen.DANGER, 1);
              double x = flow.left() + PAD;
              sign(pen, x, top + PAD);
              pen.text(
                  words.text("caution.title"),
                  PageFlow.HEADING,
                  Pen.DANGER,
                  x + 20,
                  top + PAD + 12);
              double y = top + PAD + 18;
              for (List<String> lines : told) {
                pen.text("–", PageFlow.BODY, Pen.INK, x, PageFlow.base(PageFlow.BODY, y));
                for (String text : lines) {
                  pen.text(
                      text, PageFlow.BODY, Pen.INK, x + INDENT, PageFlow.base(PageFlow.BODY, y));
                  y += line;
                }
                y += 1.5;
              }
            }));
  }

  private static void sign(Pen pen, double x, double y) {
    Path2D triangle = new Path2D.Double();
    triangle.moveTo(x + 7, y);
    triangle.lineTo(x + 14, y + 12.5);
    triangle.lineTo(x, y + 12.5);
    triangle.closePath();
    pen.draw(triangle, Pen.DANGER, 1.2);
    pen.line(x + 7, y + 4, x + 7, y + 8.2, Pen.DANGER, 1.4);
    pen.line(x + 7, y + 9.4, x + 7, y + 10.9, Pen.DANGER, 1.4);
  }
}
