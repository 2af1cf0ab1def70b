package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.ShippedBenches;
import halfwave.io.bench.BenchText;
import halfwave.io.lesson.DemonstrationText;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.io.quiz.QuizText;
import halfwave.io.quiz.ShippedQuizzes;
import java.awt.EventQueue;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JDialog;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that a desktop hands to the program is opened as what it is. */
class GivenFileRobotTest {

  @TempDir Path folder;

  private Path file(String text) throws Exception {
    return Files.writeString(folder.resolve("given.halfwave"), text);
  }

  @Test
  void aBench() throws Exception {
    var propane = ShippedBenches.named("hot-surface-propane").orElseThrow();
    try (OpenWindow open =
        OpenWindow.given(folder, OpenWindow.PLAIN, file(BenchText.of(propane)))) {
      open.await("the bench", () -> open.shown().moment().bench().name().equals(propane.name()));
      assertThat(OpenWindow.onScreen(open.frame()::getTitle)).contains("given").doesNotContain(".");
    }
  }

  @Test
  void aDemonstration() throws Exception {
    var shown = ShippedDemonstrations.all().get(0);
    try (OpenWindow open =
        OpenWindow.given(folder, OpenWindow.PLAIN, file(DemonstrationText.of(shown)))) {
      open.await("the demonstration", () -> open.window().lesson().at() != null);
    }
  }

  @Test
  void aQuiz() throws Exception {
    try (OpenWindow open =
        OpenWindow.given(folder, OpenWindow.PLAIN, file(QuizText.of(ShippedQuizzes.bank())))) {
      Hand hand = new Hand(open);
      JTextArea path = hand.find(JTextArea.class, "quiz.file-path");
      open.await("the quiz", () -> path.getText().contains("given.halfwave"));
    }
  }

  @Test
  void whatIsNoneOfTheseIsRefusedInOneLine() throws Exception {
    try (OpenWindow open = OpenWindow.given(folder, OpenWindow.PLAIN, file("{\"format\": 7}"))) {
      JDialog refusal = new Hand(open).dialog();
      assertThat(OpenWindow.onScreen(refusal::getTitle)).contains("Halfwave");
      EventQueue.invokeLater(refusal::dispose);
      open.await("its end", () -> !refusal.isShowing());
    }
  }
}
