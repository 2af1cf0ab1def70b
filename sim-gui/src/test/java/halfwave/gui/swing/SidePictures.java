package halfwave.gui.swing;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.JDialog;

/** Paints windows beside the main one into target/screens. */
final class SidePictures {

  private final OpenWindow open;
  private final Path folder = Path.of("target", "screens");

  SidePictures(OpenWindow open) throws IOException {
    this.open = open;
    Files.createDirectories(folder);
  }

  /**
   * Paints one.
   *
   * @param window its name
   * @param name of the picture, without its ending
   */
  void paint(String window, String name) throws IOException {
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
    ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
  }
}
