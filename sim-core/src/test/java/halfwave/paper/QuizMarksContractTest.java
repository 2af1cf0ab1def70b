package halfwave.paper;

import halfwave.display.Sentences;
import halfwave.grading.ClassReport;
import halfwave.quiz.InventedClass;
import java.util.Locale;
import org.junit.jupiter.api.Nested;

/** Marks of a learner and of a class, in both languages and on both sheets. */
class QuizMarksContractTest {

  @Nested
  class Marks extends PagesContract {
    @Override
    Document document(PaperSize size, Sentences sentences, Locale reader) {
      return new QuizPages(size, sentences, reader)
          .marks(InventedClass.quiz(), InventedClass.marks().get(3));
    }

    @Override
    String expected(Locale reader) {
      return InventedClass.quiz().title().in(reader);
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
