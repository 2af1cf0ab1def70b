package halfwave.paper;

import halfwave.display.Sentences;
import halfwave.grading.ClassReport;
import halfwave.grading.Grader;
import halfwave.quiz.InventedClass;
import halfwave.quiz.Quiz;
import java.util.Locale;
import org.junit.jupiter.api.Nested;

/** Every document of a quiz, in both languages and on both sheets. */
class QuizPagesContractTest {

  /** One call: more of them are more pages of the same. */
  private static final Quiz QUIZ = InventedClass.only(1);

  private static final Grader GRADER = InventedClass.grader(QUIZ);

  private static String call(Locale reader) {
    return QUIZ.calls().get(0).title().in(reader);
  }

  @Nested
  class Blank extends PagesContract {
    @Override
    Document document(PaperSize size, Sentences sentences, Locale reader) {
      return new QuizPages(size, sentences, reader).blank(QUIZ);
    }

    @Override
    String expected(Locale reader) {
      return call(reader);
    }
  }

  @Nested
  class Worksheet extends PagesContract {
    @Override
    Document document(PaperSize size, Sentences sentences, Locale reader) {
      return new QuizPages(size, sentences, reader).worksheet(QUIZ, 1, InventedClass.appearances());
    }

    @Override
    String expected(Locale reader) {
      return call(reader);
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
      return call(reader);
    }
  }

  @Nested
  class Marks extends PagesContract {
    @Override
    Document document(PaperSize size, Sentences sentences, Locale reader) {
      return new QuizPages(size, sentences, reader)
          .marks(QUIZ, GRADER.grade(InventedClass.sheets().get(0)));
    }

    @Override
    String expected(Locale reader) {
      return "A-01";
    }
  }

  @Nested
  class Report extends PagesContract {
    @Override
    Document document(PaperSize size, Sentences sentences, Locale reader) {
      return new QuizPages(size, sentences, reader)
          .report(ClassReport.of(InventedClass.quiz(), InventedClass.marks()));
    }

    @Override
    String expected(Locale reader) {
      return InventedClass.quiz().title().in(reader);
    }
  }
}
