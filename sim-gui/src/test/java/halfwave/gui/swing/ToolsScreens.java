package halfwave.gui.swing;

import halfwave.gui.presentation.Settings;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Paints the windows of the menu Tools into target/screens. No test: asked for by name only. */
final class ToolsScreens {

  @Test
  void paint() throws Exception {
    shoot("en", false);
    shoot("es", true);
  }

  private void shoot(String language, boolean dark) throws Exception {
    Path own = Files.createTempDirectory("tools");
    Settings settings = OpenWindow.PLAIN.withLanguage(language).withDark(dark);
    try (OpenWindow open = OpenWindow.with(own, settings)) {
      Shots pictures = Shots.seen(open);
      Hand hand = new Hand(open);
      String name = language + (dark ? "-dark" : "-light");
      ToolHands tools = new ToolHands(hand);
      tools.match();
      pictures.beside("match", "match-" + name);
      tools.forecast();
      pictures.beside("forecast", "forecast-" + name);
    }
  }
}
