package halfwave.gui.swing;

import halfwave.gui.presentation.Settings;
import halfwave.quiz.Rules;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.JDialog;
import org.junit.jupiter.api.Test;

/** Paints the windows of the menu Quiz into target/screens. No test: asked for by name only. */
final class QuizScreens {

  private final Path folder = Path.of("target", "screens");

  @Test
  void paint() throws Exception {
    Files.createDirectories(folder);
    shoot("en", false, 1);
    shoot("es", true, 1);
    shoot("es", false, 2);
  }

  private void shoot(String language, boolean dark, double text) throws Exception {
    Path own = Files.createTempDirectory("quiz");
    Settings settings =
        OpenWindow.PLAIN.withLanguage(language).withDark(dark).withTextRatio(text);
    try (OpenWindow open = OpenWindow.with(own, settings)) {
      String name = language + (dark ? "-dark-" : "-light-") + Math.round(100 * text);
      QuizHands hands = new QuizHands(open, new Hand(open), own);
      hands.window();
      hands.fill(new Rules(45, true), "A-17");
      picture(open, "start", name);
      hands.begin();
      boolean spanish = language.equals("es");
      hands.act(0, spanish ? "termostato" : "thermostat");
      hands.act(0, spanish ? "desde cuándo" : "since when");
      hands.offer(1, "");
      picture(open, "repairs", name);
      hands.front("visit.tabs", 1);
      hands.front("visit.offers", 2);
      picture(open, "furnace", name);
      hands.front("visit.tabs", 2);
      hands.choose("visit.cause", 4);
      hands.offer(0, spanish ? "varilla" : "rod");
      picture(open, "conclude", name);
      hands.act(0, spanish ? "separación" : "gap");
      hands.front("visit.tabs", 0);
      picture(open, "danger", name);
    }
  }

  private void picture(OpenWindow open, String what, String name) throws Exception {
    open.settle();
    open.settle();
    BufferedImage image =
        OpenWindow.onScreen(
            () -> {
              JDialog found =
                  Hand.look(JDialog.class, d -> "quiz".equals(d.getName())).orElseThrow();
              var all = found.getRootPane();
              BufferedImage made =
                  new BufferedImage(all.getWidth(), all.getHeight(), BufferedImage.TYPE_INT_RGB);
              Graphics2D g = made.createGraphics();
              all.printAll(g);
              g.dispose();
              return made;
            });
    ImageIO.write(image, "png", folder.resolve("quiz-" + what + "-" + name + ".png").toFile());
  }
}
