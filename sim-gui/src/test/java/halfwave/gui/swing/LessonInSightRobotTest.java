package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.Settings;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** On a small window a class sees the question of a demonstration with all its answers. */
class LessonInSightRobotTest {

  @TempDir private Path folder;

  /**
   * A window.
   *
   * @param language its language
   * @param width its width (px)
   * @param height its height (px)
   * @param offered so many demonstrations of the list are seen at once, at least
   */
  record Case(String language, int width, int height, int offered) {}

  static Stream<Case> cases() {
    return Stream.of("en", "es")
        .flatMap(l -> Stream.of(new Case(l, 1440, 900, 3), new Case(l, 1024, 700, 2)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theQuestionIsSeenWithAllItsAnswers(Case window) throws Exception {
    Settings settings = OpenWindow.PLAIN.withLanguage(window.language());
    try (OpenWindow open = OpenWindow.sized(folder, settings, window.width(), window.height())) {
      Hand hand = new Hand(open);
      JTabbedPane tabs = hand.find(JTabbedPane.class, "tabs");
      OpenWindow.onScreen(
          () -> {
            // that of demonstrations stands before the last one
            tabs.setSelectedIndex(tabs.getTabCount() - 2);
            return null;
          });
      open.settle();
      assertThat(offered(hand)).isGreaterThanOrEqualTo(window.offered());
      press(hand, "lesson.a-dirty-rod");
      int questions = 0;
      for (int step = 0; step < 4; step++) {
        open.await("a step", () -> ready(hand));
        if (hand.there("vote.A")) {
          open.settle();
          open.settle();
          assertThat(hidden(hand)).as("step %s", step).isEmpty();
          assertThat(linesSaid(step, window.language())).as("step %s", step).isGreaterThan(2.9);
          questions++;
          press(hand, "lesson.forward");
          open.await("the answer", () -> ready(hand));
          open.settle();
          open.settle();
          assertThat(rightAnswerIsWhole()).as("answer of step %s", step).isTrue();
        }
        press(hand, "lesson.forward");
      }
      assertThat(questions).isEqualTo(3);
      open.await("the last step", () -> ready(hand));
      open.settle();
    }
  }

  private static boolean ready(Hand hand) {
    return hand.there("lesson.forward")
        && hand.now(AbstractButton.class, "lesson.forward").isEnabled();
  }

  private static void press(Hand hand, String name) {
    OpenWindow.onScreen(
        () -> {
          hand.now(AbstractButton.class, name).doClick(0);
          return null;
        });
  }

  /** Demonstrations of the list that can be begun without scrolling. */
  private static long offered(Hand hand) {
    return ShippedDemonstrations.all().stream()
        .map(d -> hand.now(AbstractButton.class, "lesson." + d.name()))
        .filter(b -> OpenWindow.onScreen(() -> b.getVisibleRect().height == b.getHeight()))
        .count();
  }

  /** Lines that are seen of the text to read aloud. */
  private static double linesSaid(int step, String language) {
    Demonstration d = ShippedDemonstrations.named("a-dirty-rod").orElseThrow();
    String said = d.steps().get(step).say().in(Locale.forLanguageTag(language));
    JTextArea text = Hand.look(JTextArea.class, a -> said.equals(a.getText())).orElseThrow();
    return OpenWindow.onScreen(
        () ->
            text.getVisibleRect().height
                / (double) text.getFontMetrics(text.getFont()).getHeight());
  }

  private static boolean rightAnswerIsWhole() {
    JTextArea text = Hand.look(JTextArea.class, a -> a.getText().startsWith("✓ ")).orElseThrow();
    return OpenWindow.onScreen(
        () -> {
          JComponent row = (JComponent) text.getParent();
          return row.getVisibleRect().height == row.getHeight();
        });
  }

  /** Answers of which not all is seen, and the button that shows the right one. */
  private static List<String> hidden(Hand hand) {
    return OpenWindow.onScreen(
        () -> {
          List<String> hidden = new ArrayList<>();
          for (String name : List.of("vote.A", "vote.B", "vote.C", "vote.D", "lesson.forward")) {
            if (hand.there(name)) {
              AbstractButton button = hand.now(AbstractButton.class, name);
              JComponent whole = name.startsWith("vote") ? (JComponent) button.getParent() : button;
              Rectangle seen = whole.getVisibleRect();
              if (!seen.equals(new Rectangle(0, 0, whole.getWidth(), whole.getHeight()))) {
                hidden.add(name + " " + seen + " of " + whole.getSize());
              }
            }
          }
          return hidden;
        });
  }
}
