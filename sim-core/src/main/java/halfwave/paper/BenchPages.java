package halfwave.paper;

import halfwave.bench.Bench;
import halfwave.display.Sentences;
import halfwave.explain.Caution;
import halfwave.explain.MomentAccount;
import halfwave.explain.MomentAnswer;
import halfwave.explain.VoltageLadder;
import halfwave.message.Message;
import halfwave.picture.Palette;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.scene.DrawingStyle;
import halfwave.sequence.Moment;
import java.awt.Dimension;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/**
 * The bench report: a moment of a bench on paper. The drawing, what the board does, what meters
 * show, where the volts go, what is not as it should be, and why; and the cautions.
 *
 * <pre>{@code
 * BenchSubject subject = BenchSubject.of(moment, causes);
 * Document report = BenchPages.of(subject, PaperSize.A4, sentences, locale, date);
 * byte[] file = report.pdf();
 * }</pre>
 */
public final class BenchPages {

  /** Size of the drawing in its own units: small enough for its type to be read on paper. */
  static final Dimension DRAWING = new Dimension(740, 408);

  private final BenchSubject subject;
  private final PaperWords words;
  private final PageFlow flow;

  private BenchPages(BenchSubject subject, PaperSize size, PaperWords words) {
    this.subject = subject;
    this.words = words;
    flow = new PageFlow(size);
  }

  /**
   * The report.
   *
   * @param subject what it is about
   * @param size the sheets
   * @param sentences language and units
   * @param reader the same language
   * @param date what stands on it as its date
   */
  public static Document of(
      BenchSubject subject, PaperSize size, Sentences sentences, Locale reader, LocalDate date) {
    PaperWords words = new PaperWords(sentences, reader);
    BenchPages report = new BenchPages(subject, size, words);
    String title = words.text("report.title", subject.answer().bench().name());
    report.head(title, date);
    report.drawing();
    new BoardRows(report.flow, words, subject.answer().moment()).put();
    new ReadingRows(report.flow, words, subject.answer()).put();
    report.ladder();
    new ConditionRows(report.flow, words, subject.answer().moment().benchNow()).put();
    report.why();
    report.cautions();
    String foot = words.text("page.foot", title);
    return new Document(title, reader, report.flow.pages(foot, words));
  }

  private void head(String title, LocalDate date) {
    flow.text(title, PageFlow.TITLE, Pen.INK, 0, flow.left(), flow.width());
    flow.gap(4);
    Moment moment = subject.answer().moment();
    Bench bench = moment.bench();
    Sentences s = words.sentences();
    Table table = new Table(flow, 0.2, 0.8);
    s.bench(bench.name()).ifPresent(about -> table.row(words.text("report.bench"), about));
    String board = moment.settings().name();
    table.row(
        words.text("report.board"),
        s.board(board).map(about -> words.text("report.named", board, about)).orElse(board));
    table.row(
        words.text("report.date"),
        words.text(
            "report.when", words.date(date), s.quantities().time(tenths(moment.timeMillis()))));
  }

  private static long tenths(long millis) {
    return Math.round(millis / 100.0) * 100;
  }

  private void drawing() {
    DrawingStyle style = DrawingStyle.still(Palette.PAPER, words.sentences());
    var drawn = new DrawnMoments(words.sentences()).of(subject.answer().moment());
    flow.picture(BenchDrawing.picture(DRAWING, drawn, style), 10);
  }

  private void ladder() {
    MomentAnswer answer = subject.answer();
    VoltageLadder positive = answer.rodPositive();
    VoltageLadder negative = answer.rodNegative();
    if (positive == null || negative == null || !answer.powered()) {
      return;
    }
    flow.heading(words.text(answer.lit() ? "report.ladder" : "report.ladder-if-lit"));
    new LadderRows(flow, words, positive, negative).put();
  }

  private void why() {
    MomentAccount account = MomentAccount.of(subject.answer(), subject.causes());
    flow.heading(words.text("report.why"));
    told("", account.verdict());
    told("why.half-cycles", account.halfCycles());
    told("why.findings", account.findings());
    told("why.depends", account.depends());
    told("why.meter", account.meter());
    told("why.board", account.board());
  }

  private void told(String heading, List<Message> messages) {
    if (messages.isEmpty()) {
      return;
    }
    if (!heading.isEmpty()) {
      flow.text(words.text(heading), PageFlow.STRONG, Pen.INK, 7, flow.left(), flow.width());
      flow.keepWithNext();
    }
    for (Message message : messages) {
      flow.bullet("–", words.sentences().sentence(message), PageFlow.BODY, 2, 11);
    }
  }

  private void cautions() {
    CautionPlate.put(flow, words, Caution.all());
  }
}
