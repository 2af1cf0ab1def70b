package halfwave.picture.chart;

import halfwave.display.Sentences;
import halfwave.explain.Sweep;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.PaperLook;
import halfwave.picture.Picture;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleInsets;

/**
 * A sweep as a picture. Over one parameter: DC solid and AC dashed, with the healthy value marked.
 * Over two: DC as a map with lines of equal current; what has the wrong sign is hatched.
 */
public final class SweepChart {

  /** Usual width (pixels). */
  public static final int WIDTH = 1920;

  /** Usual height (pixels). */
  public static final int HEIGHT = 1200;

  /** Height of the drawing in its own units; type and lines are sized by it. */
  private static final double UNITS = 600;

  private SweepChart() {}

  /** The picture in its usual size, for a file: two pixels to a unit make {@link #WIDTH}. */
  public static Picture picture(Sweep sweep, Sentences sentences) {
    double width = UNITS * WIDTH / HEIGHT;
    return Picture.of(
        width,
        UNITS,
        g -> chart(sweep, sentences).draw(g, new Rectangle2D.Double(0, 0, width, UNITS)));
  }

  /**
   * The picture.
   *
   * @param sweep what to show
   * @param sentences language and units
   * @param width pixels, 400 or more
   * @param height pixels, 300 or more
   */
  public static BufferedImage image(Sweep sweep, Sentences sentences, int width, int height) {
    if (!(width >= 400 && height >= 300)) {
      throw new IllegalArgumentException(
          "width, height = " + width + ", " + height + ": at least 400, 300");
    }
    double scale = height / UNITS;
    return chart(sweep, sentences)
        .createBufferedImage(width, height, width / scale, height / scale, null);
  }

  /** The chart, for tests and for a window. */
  static JFreeChart chart(Sweep sweep, Sentences sentences) {
    boolean map = sweep.axes().size() == 2;
    XYPlot plot = map ? SweepMap.plot(sweep, sentences) : SweepCurves.plot(sweep, sentences);
    ValueAxes.dress(plot);
    JFreeChart chart = new JFreeChart(null, PaperLook.TITLE, plot, false);
    chart.setBackgroundPaint(PaperLook.GROUND);
    chart.setPadding(new RectangleInsets(14, 16, 14, 20));
    chart.setTitle(title(said(sweep, sentences), true));
    Argument bench = Argument.text(sweep.bench().name());
    chart.addSubtitle(title(sentences.text(Message.of(MessageKey.CHART_BENCH, bench)), false));
    if (map) {
      chart.addSubtitle(SweepMap.bar(sweep, sentences));
    }
    return chart;
  }

  private static String said(Sweep sweep, Sentences sentences) {
    Argument first = Argument.name(sweep.axes().get(0).parameter());
    return sentences.text(
        sweep.axes().size() == 1
            ? Message.of(MessageKey.CHART_TITLE_ONE, first)
            : Message.of(
                MessageKey.CHART_TITLE_TWO, first, Argument.name(sweep.axes().get(1).parameter())));
  }

  static TextTitle title(String text, boolean main) {
    TextTitle title = new TextTitle(text, main ? PaperLook.TITLE : PaperLook.NOTE);
    title.setPaint(main ? PaperLook.INK : PaperLook.SOFT_INK);
    title.setHorizontalAlignment(HorizontalAlignment.LEFT);
    title.setTextAlignment(HorizontalAlignment.LEFT);
    title.setPadding(new RectangleInsets(0, 4, main ? 2 : 10, 4));
    return title;
  }
}
