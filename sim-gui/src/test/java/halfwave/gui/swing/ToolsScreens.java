package halfwave.gui.swing;

import halfwave.gui.presentation.Settings;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.JDialog;
import org.junit.jupiter.api.Test;

/** Paints the windows of the menu Tools into target/screens. No test: asked for by name only. */
final class ToolsScreens {

  private final Path folder = Path.of("target", "screens");

  @Test
  void paint() throws Exception {
    Files.createDirectories(folder);
    shoot("en", false);
    shoot("es", true);
  }

  private void shoot(String language, boolean dark) throws Exception {
    Path own = Files.createTempDirectory("tools");
    Settings settings = OpenWindow.PLAIN.withLanguage(language).withDark(dark);
    try (OpenWindow open = OpenWindow.with(own, settings)) {
      Hand hand = new Hand(open);
      String name = language + (dark ? "-dark" : "-light");
      ToolHands tools = new ToolHands(hand);
      tools.match();
      picture(open, "match", name);
      tools.forecast();
      picture(open, "forecast", name);
    }
  }

  private void picture(OpenWindow open, String dialog, String name) throws Exception {
    open.settle();
    BufferedImage image =
        OpenWindow.onScreen(
            () -> {
              JDialog found =
                  Hand.look(JDialog.class, d -> dialog.equals(d.getName())).orElseThrow();
              var all = found.getRootPane();
              BufferedImage made =
                  new BufferedImage(all.getWidth(), all.getHeight(), BufferedImage.TYPE_INT_RGB);
              Graphics2D g = made.createGraphics();
              all.printAll(g);
              g.dispose();
              return made;
            });
    ImageIO.write(image, "png", folder.resolve(dialog + "-" + name + ".png").toFile());
  }
}
