package halfwave.gui.swing;

import halfwave.gui.presentation.Settings;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Paints the instructor's desk into target/screens. No test: asked for by name only. */
final class DeskScreens {

  @Test
  void paint() throws Exception {
    shoot("en", false, 1);
    shoot("es", true, 1);
    shoot("es", false, 2);
  }

  private void shoot(String language, boolean dark, double text) throws Exception {
    Path own = Files.createTempDirectory("desk");
    Settings settings = OpenWindow.PLAIN.withLanguage(language).withDark(dark).withTextRatio(text);
    try (OpenWindow open = OpenWindow.with(own, settings)) {
      String name = language + (dark ? "-dark-" : "-light-") + Math.round(100 * text);
      Shots pictures = Shots.seen(open);
      DeskHands hands = new DeskHands(open, new Hand(open), own);
      hands.window();
      pictures.beside("desk", "desk-empty-" + name);
      hands.quiz();
      hands.row("desk.bank", 2);
      hands.press("desk.add");
      pictures.beside("desk", "desk-quiz-" + name);
      hands.form(1);
      hands.press("desk.add-row");
      pictures.beside("desk", "desk-blueprint-" + name);
      hands.row("desk.calls", 0);
      hands.form(2);
      pictures.beside("desk", "desk-call-" + name);
      hands.row("desk.calls", 2);
      hands.press("desk.remove");
      hands.form(1);
      hands.row("desk.blueprint", 0);
      hands.press("desk.remove-row");
      hands.press("desk.try");
      hands.idle();
      pictures.beside("desk", "desk-tried-" + name);
      hands.sheets();
      pictures.beside("desk", "desk-class-" + name);
      hands.row("desk.learners", 2);
      hands.tab(2);
      hands.idle();
      hands.row("desk.moves", 0);
      pictures.beside("desk", "desk-marks-" + name);
    }
  }
}
