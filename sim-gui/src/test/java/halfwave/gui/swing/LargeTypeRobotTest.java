package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.Settings;
import halfwave.gui.swing.editor.EditorParts;
import java.awt.Component;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** In large type on a small screen a tab that is chosen is seen, and so is every button. */
class LargeTypeRobotTest {

  @TempDir private Path folder;

  /**
   * A window.
   *
   * @param language its language
   * @param text size of type over the usual (1)
   * @param width its width (px)
   * @param height its height (px)
   */
  record Case(String language, double text, int width, int height) {}

  static Stream<Case> cases() {
    return Stream.of("en", "es")
        .flatMap(l -> Stream.of(new Case(l, 1.5, 1600, 1000), new Case(l, 2, 1440, 900)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void nothingIsOutOfReach(Case window) throws Exception {
    Settings settings =
        OpenWindow.PLAIN.withLanguage(window.language()).withTextRatio(window.text());
    try (OpenWindow open = OpenWindow.sized(folder, settings, window.width(), window.height())) {
      Hand hand = new Hand(open);
      JTabbedPane tabs = hand.find(JTabbedPane.class, "tabs");
      JComponent charts = hand.find(JTabbedPane.class, "charts");
      assertThat(charts.getWidth())
          .as("the picture is not crushed")
          .isGreaterThan((int) (440 * window.text()));
      OpenWindow.onScreen(
          () -> {
            // that of demonstrations stands before the last one
            tabs.setSelectedIndex(tabs.getTabCount() - 2);
            return null;
          });
      open.settle();
      assertThat(hidden(List.of(tabs))).as("a tab that was chosen").isEmpty();

      OpenWindow.onScreen(
          () -> {
            hand.now(AbstractButton.class, "lesson.copy.a-dirty-rod").doClick(0);
            return null;
          });
      Component steps = hand.find(Component.class, "editor.steps");
      open.size(SwingUtilities.getWindowAncestor(steps), window.width(), window.height());
      assertThat(hidden(buttons("editor."))).as("buttons of the editor").isEmpty();
      assertThat(buttons("editor.")).hasSizeGreaterThan(9);
    }
  }

  /** Those outside of the form, which is scrolled. */
  private static List<JComponent> buttons(String prefix) {
    return OpenWindow.onScreen(
        () ->
            Hand.seen().stream()
                .filter(c -> c instanceof AbstractButton && c.getName() != null)
                .filter(c -> c.getName().startsWith(prefix) || c.getName().startsWith("bar."))
                .filter(c -> !EditorParts.inForm(c))
                .map(JComponent.class::cast)
                .toList());
  }

  private static List<String> hidden(List<? extends JComponent> all) {
    return OpenWindow.onScreen(
        () -> {
          List<String> hidden = new ArrayList<>();
          for (JComponent c : all) {
            Rectangle seen = c.getVisibleRect();
            if (!seen.equals(new Rectangle(c.getSize()))) {
              hidden.add(c.getName() + " " + seen + " of " + c.getSize());
            }
          }
          return hidden;
        });
  }
}
