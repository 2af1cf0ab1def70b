package halfwave.gui.swing;

import halfwave.gui.swing.lesson.OnWall;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.swing.JDialog;

/** Paints windows into files. */
final class Shots {

  private static final int COLORS = 256;

  private final OpenWindow open;
  private final Path folder;

  /** Into that folder. */
  Shots(OpenWindow open, Path folder) throws IOException {
    this.open = open;
    this.folder = Files.createDirectories(folder);
  }

  /** For a critical eye only. */
  static Shots seen(OpenWindow open) throws IOException {
    return new Shots(open, Path.of("target", "screens"));
  }

  /** The main window; a name is without its ending. */
  void window(String name) throws IOException {
    of(open.frame().getRootPane(), name);
  }

  /** A window beside it. */
  void beside(String window, String name) throws IOException {
    of(
        OpenWindow.onScreen(
            () ->
                Hand.look(JDialog.class, d -> window.equals(d.getName()))
                    .orElseThrow()
                    .getRootPane()),
        name);
  }

  /** The picture for a wall of that size (px), as it stands or one step on. */
  void wall(int width, int height, boolean on, String name) throws Exception {
    project(width, height);
    open.await("the wall", () -> OnWall.picture(open.window().projector()) != null);
    if (on) {
      open.run(() -> OnWall.forward(open.window().projector()));
    }
    open.settle();
    write(
        OpenWindow.onScreen(
            () -> painted(OnWall.picture(open.window().projector()), width, height)),
        name);
    project(width, height);
  }

  private void project(int width, int height) {
    open.run(() -> open.window().project(new Rectangle(0, 0, width, height)));
  }

  /** Anything that is shown. */
  void of(Component all, String name) throws IOException {
    open.settle();
    open.settle();
    write(OpenWindow.onScreen(() -> painted(all, all.getWidth(), all.getHeight())), name);
  }

  private static BufferedImage painted(Component all, int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    // on paper nothing is chosen, and these show what is
    all.paint(g);
    g.dispose();
    return image;
  }

  private void write(BufferedImage image, String name) throws IOException {
    ImageIO.write(reduced(image), "png", folder.resolve(name + ".png").toFile());
  }

  /** With a palette of the picture's commonest colours a file has half the size. */
  private static BufferedImage reduced(BufferedImage full) {
    Map<Integer, Integer> counts = new HashMap<>();
    for (int y = 0; y < full.getHeight(); y++) {
      for (int x = 0; x < full.getWidth(); x++) {
        counts.merge(coarse(full.getRGB(x, y)), 1, Integer::sum);
      }
    }
    List<Integer> common = new ArrayList<>(counts.keySet());
    common.sort((a, b) -> counts.get(b) - counts.get(a));
    int[] palette = common.stream().limit(COLORS).mapToInt(Integer::intValue).toArray();
    IndexColorModel colors =
        new IndexColorModel(
            8, palette.length, palette, 0, false, -1, java.awt.image.DataBuffer.TYPE_BYTE);
    BufferedImage small =
        new BufferedImage(
            full.getWidth(), full.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, colors);
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int y = 0; y < full.getHeight(); y++) {
      for (int x = 0; x < full.getWidth(); x++) {
        int rgb = coarse(full.getRGB(x, y));
        small
            .getRaster()
            .setSample(x, y, 0, nearest.computeIfAbsent(rgb, c -> nearest(c, palette)));
      }
    }
    return small;
  }

  /** Colours that no eye tells apart count as one. */
  private static int coarse(int rgb) {
    return rgb & 0xFCFCFC;
  }

  private static int nearest(int rgb, int[] palette) {
    int best = 0;
    int least = Integer.MAX_VALUE;
    for (int k = 0; k < palette.length; k++) {
      int away = 0;
      for (int shift = 0; shift <= 16; shift += 8) {
        int d = (rgb >> shift & 0xFF) - (palette[k] >> shift & 0xFF);
        away += d * d;
      }
      if (away < least) {
        least = away;
        best = k;
      }
    }
    return best;
  }
}
