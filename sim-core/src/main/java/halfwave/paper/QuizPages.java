package halfwave.paper;

import halfwave.display.Sentences;
import halfwave.explain.Caution;
import halfwave.grading.ClassReport;
import halfwave.grading.ExpertPath;
import halfwave.grading.Grader;
import halfwave.grading.SheetMarks;
import halfwave.quiz.Appearances;
import halfwave.quiz.AsFound;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import java.util.Locale;

/**
 * A quiz on paper: sheets to fill in, worksheets with readings, the key, the marks of a learner and
 * the report of a class.
 *
 * <pre>{@code
 * QuizPages pages = new QuizPages(PaperSize.LETTER, sentences, locale);
 * byte[] sheets = pages.blank(quiz).pdf();
 * }</pre>
 */
public final class QuizPages {

  private final PaperSize size;
  private final PaperWords words;

  /**
   * Prepares it.
   *
   * @param size the sheets
   * @param sentences language and units
   * @param reader the same language
   */
  public QuizPages(PaperSize size, Sentences sentences, Locale reader) {
    this.size = size;
    words = new PaperWords(sentences, reader);
  }

  private String title(Quiz quiz) {
    return quiz.title().in(words.reader());
  }

  /** A sheet for each call, to fill in at the furnace or at the window. */
  public Document blank(Quiz quiz) {
    PageFlow flow = new PageFlow(size);
    for (int k = 0; k < quiz.calls().size(); k++) {
      flow.section();
      ServiceCall call = quiz.calls().get(k);
      sheet(flow, quiz, call, words.text("quiz.kind", k + 1, quiz.calls().size(), title(quiz)));
    }
    return document(flow, words.text("quiz.blank-title", title(quiz)));
  }

  private void sheet(PageFlow flow, Quiz quiz, ServiceCall call, String kind) {
    CallRows rows = new CallRows(flow, words);
    rows.told(call, kind, quiz.rules());
    rows.steps();
    cautions(flow);
  }

  /**
   * The same with what there is to read, in fields to be cut out or covered.
   *
   * @param quiz the quiz
   * @param number which furnace of each call, from zero up to {@link Variant#COUNT}
   * @param appearances what is remembered of benches
   */
  public Document worksheet(Quiz quiz, int number, Appearances appearances) {
    PageFlow flow = new PageFlow(size);
    for (int k = 0; k < quiz.calls().size(); k++) {
      flow.section();
      ServiceCall call = quiz.calls().get(k);
      String kind =
          words.text("quiz.kind-furnace", k + 1, quiz.calls().size(), title(quiz), number + 1);
      sheet(flow, quiz, call, kind);
      flow.section();
      String head = words.text("handout.step", k + 1, call.title().in(words.reader()));
      flow.heading(words.text("quiz.readings", head, number + 1));
      note(flow, words.text("quiz.readings-about"));
      flow.gap(6);
      Variant variant = Variant.numbered(call, quiz.seed(), number);
      new ReadingGrid(flow, words).put(AsFound.of(variant, appearances));
    }
    return document(flow, words.text("quiz.worksheet-title", title(quiz), number + 1));
  }

  /**
   * What is wrong with those furnaces, how an expert finds it, and what earns marks.
   *
   * @param grader of the quiz
   * @param number which furnace of each call, from zero up to {@link Variant#COUNT}
   * @param appearances what is remembered of benches
   */
  public Document key(Grader grader, int number, Appearances appearances) {
    Quiz quiz = grader.quiz();
    PageFlow flow = new PageFlow(size);
    String title = words.text("quiz.key-title", title(quiz), number + 1);
    head(flow, title, words.text("key.about"));
    KeyPages pages = new KeyPages(flow, words);
    for (int k = 0; k < quiz.calls().size(); k++) {
      Variant variant = Variant.numbered(quiz.calls().get(k), quiz.seed(), number);
      ExpertPath path = ExpertPath.of(grader.assessor(variant.call()), variant, appearances);
      pages.call(variant, path, Integer.toString(k + 1));
    }
    pages.scheme(quiz);
    cautions(flow);
    return document(flow, title);
  }

  /** All marks of one learner, with reasons. */
  public Document marks(Quiz quiz, SheetMarks marks) {
    PageFlow flow = new PageFlow(size);
    String learner = QuizNames.oneLine(marks.sheet().learner());
    String title = words.text("quiz.marks-title", title(quiz), learner);
    head(flow, title, words.text("marks.about"));
    MarkedPages pages = new MarkedPages(flow, words);
    pages.result(marks);
    for (int k = 0; k < marks.calls().size(); k++) {
      pages.call(marks.calls().get(k), Integer.toString(k + 1));
    }
    cautions(flow);
    return document(flow, title);
  }

  /** What the marks of a class say. */
  public Document report(ClassReport report) {
    PageFlow flow = new PageFlow(size);
    String title = words.text("quiz.report-title", title(report.quiz()));
    head(flow, title, words.text("class.about"));
    new ReportPages(flow, words).put(report);
    cautions(flow);
    return document(flow, title);
  }

  private void head(PageFlow flow, String title, String about) {
    flow.text(title, PageFlow.TITLE, Pen.INK, 0, flow.left(), flow.width());
    note(flow, about);
    flow.gap(4);
  }

  private static void note(PageFlow flow, String text) {
    flow.text(text, PageFlow.NOTE, Pen.SOFT_INK, 3, flow.left(), flow.width());
  }

  private void cautions(PageFlow flow) {
    CautionPlate.put(flow, words, Caution.all());
  }

  private Document document(PageFlow flow, String title) {
    return new Document(title, words.reader(), flow.pages(words.text("page.foot", title), words));
  }
}
