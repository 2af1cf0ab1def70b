package halfwave.gui.swing.evidence;

import halfwave.forecast.Forecast;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.evidence.ForecastView;
import halfwave.gui.swing.widget.Painted;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Palette;
import halfwave.picture.Picture;
import halfwave.picture.chart.ForecastChart;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import org.jspecify.annotations.Nullable;

/** The picture of a forecast in the window. */
public final class ForecastCanvas extends Painted {

  private static final long serialVersionUID = 1L;

  /** The picture has notes of 17 units; here they are as large as those of the window. */
  private static final double UNITS_PER_PIXEL = 17 / 12.0;

  /** Size of the picture in a file (units). */
  private static final double FILE_WIDTH = 960;

  private static final double FILE_HEIGHT = 540;

  private final transient Theme theme;
  private final transient Wording words;
  private transient @Nullable ForecastView view;

  ForecastCanvas(Theme theme, Wording words) {
    this.theme = theme;
    this.words = words;
    setName("forecast.chart");
    setPreferredSize(new Dimension(theme.px(400), theme.px(310)));
    getAccessibleContext().setAccessibleName(words.text("forecast.chart"));
  }

  void show(ForecastView newView) {
    view = newView;
    String said = String.join(" ", newView.said());
    getAccessibleContext().setAccessibleDescription(said);
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    Forecast forecast = view == null ? null : view.forecast();
    if (view != null && forecast != null) {
      Picture.smooth(g);
      double units = UNITS_PER_PIXEL / theme.ratio();
      g.scale(1 / units, 1 / units);
      picture(view, forecast, theme.palette(), units * getWidth(), units * getHeight()).paint(g);
    }
    g.dispose();
  }

  private Picture picture(
      ForecastView shown, Forecast forecast, Palette palette, double width, double height) {
    return ForecastChart.picture(
        forecast, shown.calendar(), words.sentences(), palette, width, height);
  }

  /** The picture for a file, or null where there is none. */
  public @Nullable Picture onPaper() {
    Forecast forecast = view == null ? null : view.forecast();
    return view == null || forecast == null
        ? null
        : picture(view, forecast, Palette.PAPER, FILE_WIDTH, FILE_HEIGHT);
  }
}
