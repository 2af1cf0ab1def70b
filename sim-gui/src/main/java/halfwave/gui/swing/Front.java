package halfwave.gui.swing;

import halfwave.gui.presentation.Settings;
import halfwave.picture.scene.DrawnPart;
import halfwave.picture.scene.DrawnView;
import org.jspecify.annotations.Nullable;

/**
 * What is in front in the window; it stays there in another language or look.
 *
 * @param view from where the flame zone is seen
 * @param tab which tab
 * @param chart which chart
 * @param lower height of the charts, or null: nobody has moved the divider (px)
 * @param part whose card is open, or null
 */
record Front(
    DrawnView view, int tab, int chart, @Nullable Integer lower, @Nullable DrawnPart part) {

  /** As it was when the window was closed. */
  static Front of(Settings.Place place) {
    return new Front(DrawnView.ABOVE, place.tab(), place.chart(), place.lower(), null);
  }
}
