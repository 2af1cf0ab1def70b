package halfwave.gui.swing.charts;

import halfwave.gui.swing.widget.Theme;
import halfwave.paper.Pixels;
import halfwave.picture.Picture;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.util.function.Consumer;

/** A picture on its way to the clipboard. */
public final class Clip implements Transferable {

  /** A copied picture is this much larger than on screen, to be crisp on paper and slides. */
  private static final int SCALE = 2;

  private final Image image;

  private Clip(Image image) {
    this.image = image;
  }

  /** Puts a picture on the clipboard. */
  static void copy(Image image) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new Clip(image), null);
  }

  /** The same of something that paints itself. */
  public static void copy(Picture picture) {
    copy(Pixels.image(picture, SCALE));
  }

  /**
   * A sheet with a line that says what it is, and a picture below.
   *
   * @param painter paints the picture in the given size
   */
  static Picture sheet(
      Theme theme, String caption, int width, int height, Consumer<Graphics2D> painter) {
    int pad = theme.px(14);
    int head = theme.px(26);
    int wide = width + 2 * pad;
    int high = height + 2 * pad + head;
    return Picture.of(
        wide,
        high,
        g -> {
          g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
          g.setRenderingHint(
              RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
          g.setColor(theme.palette().sheet());
          g.fillRect(0, 0, wide, high);
          g.setFont(theme.heading());
          g.setColor(theme.palette().ink());
          g.drawString(caption, pad, pad + theme.px(12));
          g.translate(pad, pad + head);
          painter.accept(g);
        });
  }

  /** Puts text on the clipboard. */
  static void copy(String text) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
  }

  @Override
  public DataFlavor[] getTransferDataFlavors() {
    return new DataFlavor[] {DataFlavor.imageFlavor};
  }

  @Override
  public boolean isDataFlavorSupported(DataFlavor flavor) {
    return DataFlavor.imageFlavor.equals(flavor);
  }

  @Override
  public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
    if (!isDataFlavorSupported(flavor)) {
      throw new UnsupportedFlavorException(flavor);
    }
    return image;
  }
}
