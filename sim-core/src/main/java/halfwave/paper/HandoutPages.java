package halfwave.paper;

import halfwave.display.Sentences;
import halfwave.explain.Caution;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Playthrough;
import halfwave.lesson.Question;
import halfwave.lesson.Step;
import halfwave.lesson.Words;
import halfwave.picture.Palette;
import halfwave.picture.Typeface;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.scene.DrawingStyle;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;

/**
 * A demonstration as a handout: what is said, the questions with boxes to tick, and lines for what
 * is expected and what was seen. What the class is to find out stands on pages of its own at the
 * end, and only where they are asked for.
 *
 * <pre>{@code
 * Document handout = HandoutPages.of(demonstration, PaperSize.A4, sentences, locale, true);
 * }</pre>
 */
public final class HandoutPages {

  private static final double BOX = 9;
  private static final double INDENT = 34;

  /** Smaller, since it is read at a desk: it should fit one sheet. */
  private static final Font KEY = Typeface.PLAIN.font(8.5);

  private static final Font KEY_STRONG = Typeface.STRONG.font(8.5);

  private final Demonstration demonstration;
  private final PaperWords words;
  private final PageFlow flow;
  private final Blanks blanks;

  private HandoutPages(Demonstration demonstration, PaperSize size, PaperWords words) {
    this.demonstration = demonstration;
    this.words = words;
    flow = new PageFlow(size);
    blanks = new Blanks(flow, words);
  }

  /**
   * The handout; plays what comes before the first step.
   *
   * @param demonstration what it is of
   * @param size the sheets
   * @param sentences language and units
   * @param reader the same language
   * @param key whether answers and explanations stand at its end
   */
  public static Document of(
      Demonstration demonstration,
      PaperSize size,
      Sentences sentences,
      Locale reader,
      boolean key) {
    PaperWords words = new PaperWords(sentences, reader);
    HandoutPages handout = new HandoutPages(demonstration, size, words);
    handout.head();
    List<Step> steps = demonstration.steps();
    for (int k = 0; k < steps.size(); k++) {
      handout.step(k, steps.get(k));
    }
    if (key) {
      handout.key();
    }
    String title = words.text("handout.title", handout.in(demonstration.title()));
    return new Document(title, reader, handout.flow.pages(words.text("page.foot", title), words));
  }

  private String in(Words text) {
    return text.in(words.reader());
  }

  private void head() {
    flow.text(
        words.text("handout.kind"), PageFlow.NOTE, Pen.SOFT_INK, 0, flow.left(), flow.width());
    flow.text(in(demonstration.title()), PageFlow.TITLE, Pen.INK, 0, flow.left(), flow.width());
    flow.paragraph(in(demonstration.about()), 4);
    blanks.who(words.text("handout.name"));
    DrawingStyle style = DrawingStyle.still(Palette.PAPER, words.sentences());
    var drawn = new DrawnMoments(words.sentences()).of(Playthrough.begin(demonstration).moment());
    flow.text(words.text("handout.start"), PageFlow.STRONG, Pen.INK, 14, flow.left(), flow.width());
    flow.keepWithNext();
    flow.picture(BenchDrawing.picture(BenchPages.DRAWING, drawn, style), 4);
    CautionPlate.put(flow, words, Caution.all());
  }

  /** A step stands on one page: nobody turns the sheet between what is said and what is asked. */
  private void step(int index, Step step) {
    flow.together(
        () -> {
          flow.heading(words.text("handout.step", index + 1, in(step.heading())));
          flow.paragraph(in(step.say()), 4);
          Question question = step.question();
          if (question != null) {
            ask(question);
            blanks.lines(4, words.text("handout.prediction"), words.text("handout.seen"));
          } else {
            blanks.lines(2, words.text(step.play().lasts() ? "handout.seen" : "handout.notes"));
          }
        });
  }

  private void ask(Question question) {
    flow.text(in(question.ask()), PageFlow.STRONG, Pen.INK, 8, flow.left(), flow.width());
    for (int k = 0; k < question.answers().size(); k++) {
      answer(letter(k), in(question.answers().get(k).text()));
    }
  }

  /** The name of an answer, as the window and the picture sequence have it. */
  static String letter(int answer) {
    return String.valueOf((char) ('A' + answer));
  }

  private void answer(String letter, String text) {
    List<String> lines = Lines.of(text, PageFlow.BODY, flow.width() - INDENT);
    double line = PageFlow.line(PageFlow.BODY);
    flow.add(
        new Item(
            4,
            lines.size() * line,
            false,
            (pen, top) -> {
              double base = PageFlow.base(PageFlow.BODY, top);
              pen.draw(
                  new Rectangle2D.Double(flow.left() + 2, base - BOX + 1, BOX, BOX), Pen.INK, 0.8);
              pen.text(letter, PageFlow.STRONG, Pen.INK, flow.left() + 18, base);
              for (int k = 0; k < lines.size(); k++) {
                pen.text(
                    lines.get(k), PageFlow.BODY, Pen.INK, flow.left() + INDENT, base + k * line);
              }
            }));
  }

  private void key() {
    flow.section();
    flow.text(words.text("handout.key"), PageFlow.TITLE, Pen.INK, 0, flow.left(), flow.width());
    flow.text(
        words.text("handout.key-about"), PageFlow.NOTE, Pen.SOFT_INK, 2, flow.left(), flow.width());
    List<Step> steps = demonstration.steps();
    for (int k = 0; k < steps.size(); k++) {
      Step step = steps.get(k);
      if (step.question() != null || step.explanation() != null) {
        key(k, step);
      }
    }
  }

  private void key(int index, Step step) {
    Question question = step.question();
    Words explanation = step.explanation();
    keyText(words.text("handout.step", index + 1, in(step.heading())), PageFlow.STRONG, 6);
    flow.keepWithNext();
    if (question != null) {
      String answer = in(question.answers().get(question.right()).text());
      String right = words.text("handout.answer", letter(question.right()), answer);
      keyText(right, KEY_STRONG, 1);
      flow.keepWithNext();
    }
    if (explanation != null) {
      keyText(in(explanation), KEY, 1);
    }
  }

  private void keyText(String text, Font font, double before) {
    flow.text(text, font, Pen.INK, before, flow.left(), flow.width());
  }
}
