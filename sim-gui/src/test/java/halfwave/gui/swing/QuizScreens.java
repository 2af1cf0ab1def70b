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
    Settings settings = OpenWindow.PLAIN.withLanguage(language).withDark(dark).withTextRatio(text);
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
      practice(open, hands, name);
    }
  }

  private void practice(OpenWindow open, QuizHands hands, String name) throws Exception {
    hands.practise();
    picture(open, "practice", "choice", name);
    hands.choose("practice.help", 1);
    hands.first();
    for (int k = 0; k < 5; k++) {
      hands.press("practice.follow");
      hands.idle();
    }
    picture(open, "practice", "worked", name);
    hands.follow();
    picture(open, "practice", "marks", name);
    hands.press("practice.leave");
    hands.choose("practice.help", 3);
    hands.first();
    hands.front("visit.offers", 0);
    hands.act(0, "");
    picture(open, "practice", "asking", name);
    hands.press("practice.answer");
    hands.idle();
    picture(open, "practice", "answered", name);
  }

  private void picture(OpenWindow open, String what, String name) throws Exception {
    picture(open, "quiz", what, name);
  }

  private void picture(OpenWindow open, String window, String what, String name) throws Exception {
    open.settle();
    open.settle();
    BufferedImage image =
        OpenWindow.onScreen(
            () -> {
              JDialog found =
                  Hand.look(JDialog.class, d -> window.equals(d.getName())).orElseThrow();
              var all = found.getRootPane();
              BufferedImage made =
                  new BufferedImage(all.getWidth(), all.getHeight(), BufferedImage.TYPE_INT_RGB);
              Graphics2D g = made.createGraphics();
              all.printAll(g);
              g.dispose();
              return made;
            });
    ImageIO.write(image, "png", folder.resolve(window + "-" + what + "-" + name + ".png").toFile());
  }
}
