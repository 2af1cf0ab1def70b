package halfwave.gui.swing.charts;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.charts.ChartAxis;
import halfwave.gui.presentation.charts.LadderView;
import halfwave.gui.presentation.charts.LadderView.Side;
import halfwave.gui.presentation.charts.LadderView.Step;
import halfwave.gui.swing.widget.Theme;
import java.awt.Color;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Paints a voltage ladder: one step below the other, the two half-cycles side by side. */
final class LadderCanvas extends ChartCanvas {

  private static final long serialVersionUID = 1L;
  private static final double LEAST_STEP = 13.5;
  private static final double MOST_STEP = 30;

  private final transient Wording words;
  private @Nullable transient LadderView view;
  private double top;
  private double pitch = 1;

  LadderCanvas(Theme theme, Wording words) {
    super(theme);
    this.words = words;
  }

  void show(@Nullable LadderView newView) {
    view = newView;
    repaint();
  }

  /** For how many steps there is room. */
  int steps() {
    double line = 1.35 * theme.note().getSize2D();
    return (int) ((getHeight() - theme.px(12) - 3 * line) / (LEAST_STEP * theme.ratio()));
  }

  @Override
  double place(double x, double y) {
    return Double.NaN;
  }

  @Override
  public @Nullable String getToolTipText(MouseEvent event) {
    if (view == null) {
      return null;
    }
    Side side = event.getX() > middle(getWidth()) ? view.negative() : view.positive();
    int row = (int) Math.floor((event.getY() - top) / pitch);
    return row >= 0 && row < side.steps().size() ? side.steps().get(row).tip() : null;
  }

  private double names(double width) {
    return Math.min(theme.px(226), 0.3 * width);
  }

  private double middle(double width) {
    return names(width) + (width - names(width)) / 2;
  }

  @Override
  void draw(ChartInk ink, int width, int height) {
    LadderView v = view;
    if (v == null) {
      return;
    }
    List<Step> steps = v.positive().steps();
    top = 1.4 * ink.line() + theme.px(4);
    double bottom = 2 * ink.line() + theme.px(4);
    pitch =
        Math.min(MOST_STEP * theme.ratio(), Math.max(1, (height - top - bottom) / steps.size()));
    for (int k = 0; k < steps.size(); k++) {
      boolean most = steps.get(k).largest() || v.negative().steps().get(k).largest();
      String name = clipped(ink, steps.get(k).name(), names(width) - theme.px(12));
      double base = top + (k + 0.5) * pitch + 0.33 * theme.note().getSize2D();
      if (most) {
        ink.bold(name, ink.palette.ink(), theme.px(3), base);
      } else {
        ink.plain(name, ink.palette.ink(), theme.px(3), base);
      }
      if (k > 0) {
        ink.hairline(0, top + k * pitch, width, top + k * pitch);
      }
    }
    if (steps.stream().anyMatch(LadderCanvas::ghost)
        || v.negative().steps().stream().anyMatch(LadderCanvas::ghost)) {
      legend(ink, height);
    }
    String title = v.volts().title();
    double middle = (names(width) + width - ink.width(title)) / 2;
    ink.plain(title, ink.palette.softInk(), middle, height - theme.px(6));
    double gap = theme.px(18);
    side(ink, v, v.positive(), names(width), middle(width) - gap, false);
    side(ink, v, v.negative(), middle(width), width, true);
  }

  private static boolean ghost(Step step) {
    return !Double.isNaN(step.healthyFrom());
  }

  /** Says what the dashed frames are. */
  private void legend(ChartInk ink, int height) {
    double base = height - theme.px(6);
    double tall = 0.7 * ink.line();
    ink.g.setColor(ink.palette.softInk());
    ink.g.setStroke(ink.ghostStroke());
    ink.g.draw(new Rectangle2D.Double(theme.px(3), base - tall + 1, theme.px(22), tall));
    ink.plain(words.text("chart.healthy"), ink.palette.softInk(), theme.px(30), base);
  }

  /** A name that is too long ends in dots; the tip has all of it. */
  private static String clipped(ChartInk ink, String name, double room) {
    String text = name;
    while (text.length() > 3 && ink.boldWidth(text) > room) {
      text = text.substring(0, text.length() - 2).strip() + '…';
    }
    return text;
  }

  private void side(
      ChartInk ink, LadderView v, Side side, double left, double right, boolean negative) {
    double numbers = ink.boldWidth("−000,0 V") + ink.boldWidth("100 %") + theme.px(24);
    double bars = right - left - numbers;
    boolean shares = bars > theme.px(90);
    if (!shares) {
      bars += ink.width("100 %") + theme.px(10);
    }
    Rectangle2D a = new Rectangle2D.Double(left, top, bars, pitch * side.steps().size());
    ink.bold(side.name(), ink.palette.ink(), left, ink.line() - theme.px(3));
    double after = left + ink.boldWidth(side.name()) + theme.px(10);
    if (after + ink.width(side.source()) < right) {
      ink.plain(side.source(), ink.palette.softInk(), after, ink.line() - theme.px(3));
    }
    for (int k = 0; k < side.steps().size(); k++) {
      step(ink, a, side.steps().get(k), k, right, negative, shares);
    }
    ChartAxis marks = v.volts();
    new ChartAxes(ink)
        .across(a, new ChartAxis("", marks.low(), marks.high(), marks.decades(), marks.marks()));
  }

  private void step(
      ChartInk ink,
      Rectangle2D a,
      Step step,
      int row,
      double right,
      boolean negative,
      boolean shares) {
    Color volts = ink.palette.volts();
    double y = a.getY() + row * pitch;
    double thick = Math.min(0.62 * pitch, theme.px(15));
    double from = ChartInk.x(a, step.from());
    double to = ChartInk.x(a, step.to());
    Rectangle2D bar =
        new Rectangle2D.Double(
            Math.min(from, to), y + (pitch - thick) / 2, Math.max(1.5, Math.abs(to - from)), thick);
    ink.g.setColor(ChartInk.faint(volts, step.largest() ? 0.85 : 0.4));
    if (negative) {
      ink.g.setColor(ChartInk.faint(volts, step.largest() ? 0.3 : 0.1));
    }
    ink.g.fill(bar);
    if (negative) {
      ink.hatch(bar, ChartInk.faint(volts, step.largest() ? 1 : 0.6));
    }
    ink.g.setColor(volts);
    ink.g.setStroke(ink.solid(1));
    ink.g.draw(bar);
    if (row > 0) {
      // what the part before left over goes on from here
      ink.g.draw(new Line2D.Double(from, bar.getY() - (pitch - thick), from, bar.getY()));
    }
    if (ghost(step)) {
      double low = ChartInk.x(a, Math.min(step.healthyFrom(), step.healthyTo()));
      double high = ChartInk.x(a, Math.max(step.healthyFrom(), step.healthyTo()));
      double grow = theme.px(2);
      ink.g.setColor(ink.palette.softInk());
      ink.g.setStroke(ink.ghostStroke());
      ink.g.draw(
          new Rectangle2D.Double(low, bar.getY() - grow, high - low, bar.getHeight() + 2 * grow));
    }
    numbers(ink, step, shares, right, y + 0.5 * pitch + 0.33 * theme.note().getSize2D());
  }

  private void numbers(ChartInk ink, Step step, boolean shares, double right, double base) {
    double free = shares ? right - ink.boldWidth("100 %") - theme.px(14) : right - theme.px(2);
    double wide = step.largest() ? ink.boldWidth(step.volts()) : ink.width(step.volts());
    double volts = free - wide;
    double share =
        right
            - theme.px(2)
            - (step.largest() ? ink.boldWidth(step.share()) : ink.width(step.share()));
    if (step.largest()) {
      ink.bold(step.volts(), ink.palette.ink(), volts, base);
    } else {
      ink.plain(step.volts(), ink.palette.ink(), volts, base);
    }
    if (shares && step.largest()) {
      ink.bold(step.share(), ink.palette.ink(), share, base);
    } else if (shares) {
      ink.plain(step.share(), ink.palette.softInk(), share, base);
    }
  }
}
