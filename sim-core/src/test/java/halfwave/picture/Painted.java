package halfwave.picture;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;

/** A picture as pixels, for tests to look at. */
public final class Painted {

  private Painted() {}

  /** The picture, so many times as large. */
  public static BufferedImage image(Picture picture, double scale) {
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(picture.width() * scale),
            (int) Math.round(picture.height() * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.scale(scale, scale);
    picture.paint(g);
    g.dispose();
    return image;
  }
}
