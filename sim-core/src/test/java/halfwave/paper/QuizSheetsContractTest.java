package halfwave.paper;

import halfwave.display.Sentences;
import halfwave.grading.Grader;
import halfwave.quiz.InventedClass;
import halfwave.quiz.Quiz;
import java.util.Locale;
import org.junit.jupiter.api.Nested;

/** Worksheets, which hold the blank sheets, and the key, in both languages and on both sheets. */
class QuizSheetsContractTest {

  /** One call: more of them are more pages of the same. */
  private static final Quiz QUIZ = InventedClass.only(1);

  private static final Grader GRADER = InventedClass.grader(QUIZ);

  @Nested
  class Worksheet extends PagesContract {
    @Override
    Document document(PaperSize size, Sentences sentences, Locale reader) {
      return new QuizPages(size, sentences, reader).worksheet(QUIZ, 1, InventedClass.appearances());
    }

    @Override
    String expected(Locale reader) {
      return QUIZ.calls().get(0).title().in(reader);
    }
  }

  @Nested
  class Key extends PagesContract {
    @Override
    Document document(PaperSize size, Sentences sentences, Locale reader) {
      return new QuizPages(size, sentences, reader).key(GRADER, 1, InventedClass.appearances());
    }

    @Override
    String expected(Locale reader) {
      return QUIZ.calls().get(0).title().in(reader);
    }
  }
}
