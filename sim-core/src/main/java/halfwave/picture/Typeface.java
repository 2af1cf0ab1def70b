package halfwave.picture;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/**
 * The type of every picture and page. The program brings its own, so that a picture looks the same
 * on every machine, and a page can carry with it the very letters it was measured with. Each weight
 * is a family of its own: nothing has to guess what bold is. Figures are all equally wide.
 */
public enum Typeface {
  /** For what is read. */
  PLAIN("Halfwave Sans", "halfwave-sans.ttf"),
  /** For what is seen first. */
  STRONG("Halfwave Sans Strong", "halfwave-sans-strong.ttf");

  private final String family;
  private final String file;
  private final Font base;

  Typeface(String family, String file) {
    this.family = family;
    this.file = file;
    try (InputStream in = file()) {
      base = Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException(file, e);
    }
  }

  /** What fonts, PDF and SVG files call it. */
  public String family() {
    return family;
  }

  /** Its TrueType file; whoever opens it closes it. */
  public final InputStream file() {
    return Objects.requireNonNull(Typeface.class.getResourceAsStream(file), file);
  }

  /**
   * The font in a size.
   *
   * @param size in units of the drawing
   */
  public Font font(double size) {
    return base.deriveFont((float) size);
  }
}
