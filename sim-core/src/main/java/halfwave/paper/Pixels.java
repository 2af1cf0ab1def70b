package halfwave.paper;

import halfwave.picture.Picture;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Pictures as pixels. */
public final class Pixels {

  /** Pixels to a unit of the drawing, where nobody asks for another number (1). */
  public static final double USUAL = 2;

  private Pixels() {}

  /**
   * The picture as an image.
   *
   * @param picture the picture
   * @param scale pixels to a unit of the drawing (1); above zero
   */
  public static BufferedImage image(Picture picture, double scale) {
    int width = (int) Math.round(picture.width() * scale);
    int height = (int) Math.round(picture.height() * scale);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(java.awt.Color.WHITE);
    g.fillRect(0, 0, width, height);
    Picture.smooth(g);
    g.scale(width / picture.width(), height / picture.height());
    picture.paint(g);
    g.dispose();
    return image;
  }

  /** The image as the bytes of a PNG file. */
  public static byte[] png(RenderedImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
