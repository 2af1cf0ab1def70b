package halfwave.gui.swing;

import halfwave.gui.presentation.Settings;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.JDialog;
import org.junit.jupiter.api.Test;

/** Paints the instructor's desk into target/screens. No test: asked for by name only. */
final class DeskScreens {

  private final Path folder = Path.of("target", "screens");

  @Test
  void paint() throws Exception {
    Files.createDirectories(folder);
    shoot("en", false, 1);
    shoot("es", true, 1);
    shoot("es", false, 2);
  }

  private void shoot(String language, boolean dark, double text) throws Exception {
    Path own = Files.createTempDirectory("desk");
    Settings settings = OpenWindow.PLAIN.withLanguage(language).withDark(dark).withTextRatio(text);
    try (OpenWindow open = OpenWindow.with(own, settings)) {
      String name = language + (dark ? "-dark-" : "-light-") + Math.round(100 * text);
      DeskHands hands = new DeskHands(open, new Hand(open), own);
      hands.window();
      picture(open, "empty", name);
      hands.quiz();
      hands.row("desk.bank", 2);
      hands.press("desk.add");
      picture(open, "quiz", name);
      hands.form(1);
      hands.press("desk.add-row");
      picture(open, "blueprint", name);
      hands.row("desk.calls", 0);
      hands.form(2);
      picture(open, "call", name);
      hands.row("desk.calls", 2);
      hands.press("desk.remove");
      hands.form(1);
      hands.row("desk.blueprint", 0);
      hands.press("desk.remove-row");
      hands.press("desk.try");
      hands.idle();
      picture(open, "tried", name);
      hands.sheets();
      picture(open, "class", name);
      hands.row("desk.learners", 2);
      hands.tab(2);
      hands.row("desk.moves", 3);
      picture(open, "marks", name);
    }
  }

  private void picture(OpenWindow open, String what, String name) throws Exception {
    open.settle();
    open.settle();
    BufferedImage image =
        OpenWindow.onScreen(
            () -> {
              JDialog found =
                  Hand.look(JDialog.class, d -> "desk".equals(d.getName())).orElseThrow();
              var all = found.getRootPane();
              BufferedImage made =
                  new BufferedImage(all.getWidth(), all.getHeight(), BufferedImage.TYPE_INT_RGB);
              Graphics2D g = made.createGraphics();
              all.printAll(g);
              g.dispose();
              return made;
            });
    ImageIO.write(image, "png", folder.resolve("desk-" + what + "-" + name + ".png").toFile());
  }
}
