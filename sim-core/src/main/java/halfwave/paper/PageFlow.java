package halfwave.paper;

import halfwave.picture.Picture;
import halfwave.picture.Typeface;
import java.awt.Color;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;

/**
 * Text and pictures one below the other, on as many pages as they need. Every page has a line at
 * its foot that says what it is of, and its number.
 */
final class PageFlow {

  static final Font TITLE = Typeface.STRONG.font(20);
  static final Font HEADING = Typeface.STRONG.font(12.5);
  static final Font BODY = Typeface.PLAIN.font(10);
  static final Font STRONG = Typeface.STRONG.font(10);
  static final Font NOTE = Typeface.PLAIN.font(8.5);
  static final Font NOTE_STRONG = Typeface.STRONG.font(8.5);

  /** From one base line to the next, in sizes of the type. */
  private static final double LEADING = 1.38;

  /** Where the base line stands in its line, in sizes of the type. */
  private static final double ASCENT = 1.03;

  private static final double SIDE = 54;
  private static final double TOP = 44;
  private static final double BOTTOM = 54;

  /** Of a paragraph at least so many lines stand together, at the foot and at the top of a page. */
  private static final int FEWEST = 2;

  private final PaperSize size;
  private final List<List<Item>> sections = new ArrayList<>();

  PageFlow(PaperSize size) {
    this.size = size;
    sections.add(new ArrayList<>());
  }

  /** The left edge of everything. */
  double left() {
    return SIDE;
  }

  /** The right edge. */
  double right() {
    return size.widthPoints() - SIDE;
  }

  double width() {
    return right() - left();
  }

  static double line(Font font) {
    return LEADING * font.getSize2D();
  }

  /** What follows begins a new page. */
  void section() {
    sections.add(new ArrayList<>());
  }

  private List<Item> items() {
    return sections.get(sections.size() - 1);
  }

  void add(Item item) {
    items().add(item);
  }

  /** All that is added meanwhile stays on one page, as far as a page has room. */
  void together(Runnable adding) {
    List<Item> items = items();
    int from = items.size();
    adding.run();
    for (int k = from; k < items.size() - 1; k++) {
      items.set(k, items.get(k).keeping());
    }
  }

  /** The last item stays with the next one. */
  void keepWithNext() {
    List<Item> items = items();
    if (!items.isEmpty()) {
      items.set(items.size() - 1, items.get(items.size() - 1).keeping());
    }
  }

  void gap(double height) {
    add(new Item(height, 0, false, (pen, top) -> {}));
  }

  /** A heading stays with what it stands over. */
  void heading(String text) {
    text(text, HEADING, Pen.INK, 14, left(), width());
    keepWithNext();
    add(new Item(1.5, 0.8, true, (pen, top) -> pen.line(left(), top, right(), top, Pen.INK, 0.8)));
  }

  void paragraph(String text, double before) {
    text(text, BODY, Pen.INK, before, left(), width());
  }

  /** Lines of text. */
  void text(String text, Font font, Color colour, double before, double x, double width) {
    List<String> lines = Lines.of(text, font, width);
    for (int k = 0; k < lines.size(); k++) {
      String line = lines.get(k);
      int last = lines.size() - 1;
      boolean keep = k < FEWEST - 1 ? k < last : k < last && last - k < FEWEST;
      add(
          new Item(
              k == 0 ? before : 0,
              line(font),
              keep,
              (pen, top) -> pen.text(line, font, colour, x, base(font, top))));
    }
  }

  /** Where words stand in a line that begins there. */
  static double base(Font font, double top) {
    return top + ASCENT * font.getSize2D();
  }

  /** Lines of text behind a sign. */
  void bullet(String sign, String text, Font font, double before, double indent) {
    List<Item> items = items();
    int at = items.size();
    text(text, font, Pen.INK, before, left() + indent, width() - indent);
    Item first = items.get(at);
    items.set(
        at,
        new Item(
            first.before,
            first.height,
            first.keep,
            (pen, top) -> {
              pen.text(sign, font, Pen.INK, left(), base(font, top));
              first.painter.paint(pen, top);
            }));
  }

  /** A picture as wide as the page, in a fine frame. */
  void picture(Picture picture, double before) {
    double scale = width() / picture.width();
    double height = scale * picture.height();
    add(
        new Item(
            before,
            height,
            false,
            (pen, top) -> {
              var g = (java.awt.Graphics2D) pen.g.create();
              g.translate(left(), top);
              g.scale(scale, scale);
              picture.paint(g);
              g.dispose();
              pen.draw(
                  new java.awt.geom.Rectangle2D.Double(left(), top, width(), height),
                  Pen.HAIRLINE,
                  0.6);
            }));
  }

  /**
   * The pages.
   *
   * @param foot what stands at the foot of each
   * @param words says which page it is
   */
  List<Picture> pages(String foot, PaperWords words) {
    List<List<Pagination.Placed>> pages =
        Pagination.of(sections, size.heightPoints() - TOP - BOTTOM);
    List<Picture> made = new ArrayList<>();
    for (int k = 0; k < pages.size(); k++) {
      String number = words.text("page.number", k + 1, pages.size());
      List<Pagination.Placed> page = pages.get(k);
      made.add(
          Picture.of(
              size.widthPoints(),
              size.heightPoints(),
              g -> {
                Pen pen = new Pen(g);
                double base = size.heightPoints() - 32;
                page.forEach(p -> p.item.painter.paint(pen, TOP + p.top));
                pen.line(left(), base - 13, right(), base - 13, Pen.HAIRLINE, 0.6);
                pen.text(foot, NOTE, Pen.SOFT_INK, left(), base);
                pen.textTo(number, NOTE, Pen.SOFT_INK, right(), base);
              }));
    }
    return made;
  }
}
