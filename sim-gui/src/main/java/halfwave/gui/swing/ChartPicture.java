package halfwave.gui.swing;

import java.awt.image.BufferedImage;

/** Something that can be copied as a picture. */
@FunctionalInterface
interface ChartPicture {

  /** The picture under a line that says what it is. */
  BufferedImage picture(String caption);
}
