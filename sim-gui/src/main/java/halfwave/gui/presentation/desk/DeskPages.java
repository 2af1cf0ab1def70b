package halfwave.gui.presentation.desk;

import halfwave.exchange.GradebookCsv;
import halfwave.exchange.QtiPackage;
import halfwave.exchange.XapiStatements;
import halfwave.grading.ClassReport;
import halfwave.grading.Grader;
import halfwave.grading.SheetMarks;
import halfwave.gui.presentation.Wording;
import halfwave.io.quiz.MarksJson;
import halfwave.paper.PaperSize;
import halfwave.paper.QuizPages;
import halfwave.quiz.Appearances;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;

/**
 * Makes the files that leave the instructor's desk.
 *
 * @param size sheets of paper
 * @param words language and units
 * @param number which furnace of each call, from zero
 * @param home where learners' codes belong to, for statements
 * @param time when it is written
 */
record DeskPages(PaperSize size, Wording words, int number, String home, Instant time) {

  private QuizPages pages() {
    return new QuizPages(size, words.sentences(), words.locale());
  }

  /** A file about a quiz. */
  byte[] quiz(DeskOutput output, Grader grader) {
    return switch (output) {
      case BLANK -> pages().blank(grader.quiz()).pdf();
      case WORKSHEET -> pages().worksheet(grader.quiz(), number, new Appearances()).pdf();
      case KEY -> pages().key(grader, number, new Appearances()).pdf();
      case QTI ->
          QtiPackage.of(grader, number, new Appearances(), words.sentences(), words.locale());
      default -> throw new IllegalArgumentException("output = " + output + ": of a quiz");
    };
  }

  /** A file about a class. */
  byte[] ofClass(DeskOutput output, Grader grader, ClassReport report) {
    return switch (output) {
      case GRADEBOOK -> bytes(GradebookCsv.learners(report));
      case ITEMS -> bytes(GradebookCsv.items(report));
      case OBJECTIVES -> bytes(GradebookCsv.objectives(report));
      case REPORT -> pages().report(report).pdf();
      case MARKS -> bytes(MarksJson.text(report.sheets(), words.sentences()));
      case XAPI ->
          bytes(
              new XapiStatements(report.quiz(), address(home).orElseThrow(), time)
                  .of(report.sheets()));
      default -> quiz(output, grader);
    };
  }

  /** All marks of one learner. */
  byte[] record(ClassReport report, SheetMarks marks) {
    return pages().marks(report.quiz(), marks).pdf();
  }

  /** An absolute address with a path, if it is one. */
  static Optional<URI> address(String typed) {
    try {
      URI uri = URI.create(typed.strip());
      return uri.isAbsolute() && !uri.isOpaque() && uri.getHost() != null
          ? Optional.of(uri)
          : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
