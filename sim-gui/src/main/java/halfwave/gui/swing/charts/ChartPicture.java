package halfwave.gui.swing.charts;

import halfwave.picture.Picture;

/** Something that can be copied, printed and written as a picture. */
@FunctionalInterface
interface ChartPicture {

  /** The picture under a line that says what it is; it is painted on the event thread. */
  Picture picture(String caption);
}
