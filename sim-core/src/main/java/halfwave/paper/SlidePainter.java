package halfwave.paper;

import halfwave.board.StatusCode;
import halfwave.picture.Palette;
import halfwave.picture.Picture;
import halfwave.picture.Typeface;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnBench;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Paints a slide: the drawing, the reading, what the board does, and the words of the step. All of
 * it can be read from the back of a class: capitals of 1/40 of the height, lines of 1/300, no soft
 * ink.
 */
final class SlidePainter {

  static final int WIDTH = 1920;
  static final int HEIGHT = 1080;

  private static final int MARGIN = 44;
  private static final double LEAST_LINE = HEIGHT / 300.0;

  /** The drawing's smallest type is 11 units of its own; this makes it as large as the rest. */
  private static final double DRAWING_SCALE = 3.45;

  private static final int TOP = 106;
  private static final Dimension DRAWING = new Dimension(1050, 636);
  private static final double PLATES = TOP + DRAWING.height + 18;
  private static final double PLATE_HEIGHT = HEIGHT - PLATES - 84;
  private static final double PAD = 22;
  private static final double BETWEEN = 20;
  private static final double METER_WIDTH = 480;
  private static final double BOARD_WIDTH = DRAWING.width - BETWEEN - METER_WIDTH;
  private static final double TEXT_LEFT = MARGIN + DRAWING.width + 44;

  static final double TEXT_WIDTH = WIDTH - MARGIN - TEXT_LEFT;
  static final double TEXT_HEIGHT = HEIGHT - TOP - 84;

  private static final Font HEADING = Typeface.STRONG.font(54);
  private static final Font READING = Typeface.STRONG.font(92);
  private static final Font SECOND = Typeface.STRONG.font(50);

  private final PaperWords words;
  private final Palette palette = Palette.LIGHT.projected();
  private final DrawingStyle style;

  SlidePainter(PaperWords words) {
    this.words = words;
    style = DrawingStyle.still(palette, words.sentences()).withScale(DRAWING_SCALE);
  }

  /**
   * A slide.
   *
   * @param heading of its step
   * @param place which step of how many
   * @param drawn what the drawing shows
   * @param lines the words
   */
  Picture slide(String heading, String place, DrawnBench drawn, List<SlideText.Line> lines) {
    return Picture.of(WIDTH, HEIGHT, g -> paint(g, heading, place, drawn, lines));
  }

  private void paint(
      Graphics2D g, String heading, String place, DrawnBench drawn, List<SlideText.Line> lines) {
    Pen pen = new Pen(g);
    pen.fill(new Rectangle2D.Double(0, 0, WIDTH, HEIGHT), palette.ground());
    double base = 76;
    double room = WIDTH - 2 * MARGIN - Lines.width(place, SlideText.BODY) - 40;
    pen.text(heading, fitting(heading, HEADING, room), palette.ink(), MARGIN, base);
    pen.textTo(place, SlideText.BODY, palette.ink(), WIDTH - MARGIN, base);
    drawing(g, pen, drawn);
    meter(pen, drawn);
    board(pen, drawn);
    for (SlideText.Line line : lines) {
      double y = TOP + line.base;
      pen.text(line.sign, SlideText.STRONG, line.colour, TEXT_LEFT, y);
      pen.text(line.text, line.font, line.colour, TEXT_LEFT + line.indent, y);
    }
    String caution = words.text("slide.caution");
    pen.text(
        caution,
        fitting(caution, SlideText.BODY, WIDTH - 2.0 * MARGIN),
        palette.ink(),
        MARGIN,
        HEIGHT - 27);
  }

  /** The font, smaller where the words would not fit, but never too small to be read. */
  private static Font fitting(String text, Font font, double room) {
    double size = font.getSize2D() * Math.min(1, room / Lines.width(text, font));
    return font.deriveFont((float) Math.max(SlideText.BODY.getSize2D(), size));
  }

  private void drawing(Graphics2D g, Pen pen, DrawnBench drawn) {
    Graphics2D inside = (Graphics2D) g.create();
    inside.translate(MARGIN, TOP);
    BenchDrawing.picture(DRAWING, drawn, style, LEAST_LINE).paint(inside);
    inside.dispose();
    pen.draw(
        new Rectangle2D.Double(MARGIN, TOP, DRAWING.width, DRAWING.height),
        palette.hairline(),
        LEAST_LINE);
  }

  private void plate(Pen pen, String name, double left, double width) {
    pen.fill(Pen.plate(left, PLATES, width, PLATE_HEIGHT), palette.sheet());
    pen.draw(Pen.plate(left, PLATES, width, PLATE_HEIGHT), palette.hairline(), LEAST_LINE);
    pen.text(name, SlideText.BODY, palette.ink(), left + PAD, PLATES + 48);
  }

  private void meter(Pen pen, DrawnBench drawn) {
    plate(pen, words.text("slide.meter"), MARGIN, METER_WIDTH);
    String shown = drawn.reading().isEmpty() ? words.text("slide.no-meter") : drawn.reading();
    Font font = fitting(shown, READING, METER_WIDTH - 2 * PAD);
    List<String> lines = Lines.of(shown, font, METER_WIDTH - 2 * PAD);
    for (int k = 0; k < lines.size(); k++) {
      double base = PLATES + (lines.size() == 1 ? 158 : 118 + SlideText.LINE * k);
      pen.text(lines.get(k), font, palette.ink(), MARGIN + PAD, base);
    }
  }

  private void board(Pen pen, DrawnBench drawn) {
    double left = MARGIN + METER_WIDTH + BETWEEN;
    plate(pen, words.text("slide.board"), left, BOARD_WIDTH);
    String stage = PaperWords.capital(words.sentences().name(drawn.moment().board().stage()));
    Font font = fitting(stage, SECOND, BOARD_WIDTH - 2 * PAD);
    pen.text(stage, font, palette.ink(), left + PAD, PLATES + 108);
    List<String> lines = light(drawn.code(), words);
    for (int k = 0; k < lines.size(); k++) {
      pen.text(lines.get(k), SlideText.BODY, palette.ink(), left + PAD, PLATES + 162 + 48 * k);
    }
  }

  /** What the light says, in the two lines there are: the flashes are the first to go. */
  static List<String> light(StatusCode code, PaperWords words) {
    String name = words.sentences().name(code);
    for (String text :
        List.of(words.text("slide.light", words.light(code)), words.text("slide.light", name))) {
      List<String> lines = Lines.of(text, SlideText.BODY, BOARD_WIDTH - 2 * PAD);
      if (lines.size() <= 2) {
        return lines;
      }
    }
    return Lines.of(PaperWords.capital(name), SlideText.BODY, BOARD_WIDTH - 2 * PAD);
  }
}
