package halfwave.gui.swing.charts;

import halfwave.gui.presentation.charts.StripView;
import halfwave.gui.presentation.charts.StripView.Bar;
import halfwave.gui.presentation.charts.StripView.Kind;
import halfwave.gui.presentation.charts.StripView.Lane;
import halfwave.gui.presentation.charts.StripView.Signal;
import halfwave.gui.swing.widget.Painted;
import halfwave.gui.swing.widget.Theme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import javax.swing.ToolTipManager;
import org.jspecify.annotations.Nullable;

/** Paints a timeline strip. */
final class StripCanvas extends Painted {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private @Nullable transient StripView view;

  StripCanvas(Theme theme) {
    this.theme = theme;
    setPreferredSize(new Dimension(theme.px(700), theme.px(176)));
    setMinimumSize(new Dimension(theme.px(300), theme.px(150)));
    ToolTipManager.sharedInstance().registerComponent(this);
  }

  void show(StripView newView) {
    view = newView;
    repaint();
  }

  /** How many points across make sense. */
  int columns() {
    return (int) Math.max(50, right() - left());
  }

  private double left() {
    return theme.px(96);
  }

  private double right() {
    return getWidth() - theme.px(70);
  }

  private double x(double at) {
    return left() + at * (right() - left());
  }

  @Override
  public @Nullable String getToolTipText(MouseEvent event) {
    if (view == null) {
      return null;
    }
    String nearest = null;
    double best = theme.px(8);
    for (StripView.Flag flag : view.flags()) {
      double away = Math.abs(x(flag.at()) - event.getX());
      if (away < best) {
        best = away;
        nearest = flag.words();
      }
    }
    for (Bar stage : view.stages()) {
      boolean over = event.getX() >= x(stage.from()) && event.getX() <= x(stage.until());
      nearest = nearest == null && over ? stage.name() : nearest;
    }
    return nearest;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    if (view == null) {
      return;
    }
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    double top = ticks(g, theme.px(14));
    top = stages(g, top);
    double lane =
        Math.max(
            theme.px(12),
            Math.min(theme.px(18), (getHeight() - top - theme.px(50)) / view.lanes().size()));
    for (Lane l : view.lanes()) {
      lane(g, l, top, lane);
      top += lane;
    }
    signal(g, view.signal(), top + theme.px(8), getHeight() - theme.px(6));
    flags(g);
    g.setColor(theme.palette().accent());
    g.setStroke(new BasicStroke(1.5f));
    double now = x(view.now());
    g.draw(new Line2D.Double(now, theme.px(18), now, getHeight() - theme.px(4)));
    g.dispose();
  }

  private double ticks(Graphics2D g, double base) {
    g.setFont(theme.note());
    g.setColor(theme.palette().softInk());
    for (Placed placed : placed()) {
      g.drawString(placed.words(), (float) placed.left(), (float) (base - 3));
    }
    g.setColor(theme.palette().hairline());
    g.setStroke(new BasicStroke(0.8f));
    for (StripView.Tick tick : shown().ticks()) {
      double x = x(tick.at());
      g.draw(new Line2D.Double(x, base, x, getHeight() - theme.px(4)));
    }
    return base + theme.px(4);
  }

  /** Words at a mark of time, from one place across to another (px). */
  record Placed(String words, double left, double right) {}

  /** Those that have room: what would meet the words before it is left out. */
  List<Placed> placed() {
    FontMetrics metrics = getFontMetrics(theme.note());
    List<Placed> all = new ArrayList<>();
    double free = Double.NEGATIVE_INFINITY;
    for (StripView.Tick tick : shown().ticks()) {
      int width = metrics.stringWidth(tick.words());
      double left = Math.min(getWidth() - width, x(tick.at()) - width / 2.0);
      if (left >= free) {
        all.add(new Placed(tick.words(), left, left + width));
        free = left + width + theme.px(6);
      }
    }
    return all;
  }

  private StripView shown() {
    if (view == null) {
      throw new IllegalStateException("nothing to show");
    }
    return view;
  }

  private double stages(Graphics2D g, double top) {
    double height = theme.px(20);
    g.setStroke(new BasicStroke(1f));
    for (Bar bar : shown().stages()) {
      double x = x(bar.from());
      double width = Math.max(1, x(bar.until()) - x);
      Shape box = new RoundRectangle2D.Double(x, top, width, height, 5, 5);
      g.setColor(ground(bar.kind()));
      g.fill(box);
      if (bar.kind() == Kind.LOCKOUT) {
        hatch(g, box);
      }
      g.setColor(theme.palette().border());
      g.draw(box);
      String name =
          fits(g, bar.name(), width) ? bar.name() : fits(g, bar.brief(), width) ? bar.brief() : "";
      if (!name.isEmpty()) {
        double text = g.getFontMetrics().stringWidth(name);
        if (bar.kind() == Kind.LOCKOUT) {
          g.setColor(theme.palette().sheet());
          g.fill(new Rectangle2D.Double(x + (width - text) / 2 - 4, top + 2, text + 8, height - 4));
        }
        g.setColor(theme.palette().ink());
        g.drawString(name, (float) (x + (width - text) / 2), (float) (top + height - theme.px(6)));
      }
    }
    return top + height + theme.px(5);
  }

  private boolean fits(Graphics2D g, String name, double width) {
    return g.getFontMetrics().stringWidth(name) + theme.px(6) <= width;
  }

  private Color ground(Kind kind) {
    Color sheet = theme.palette().sheet();
    return switch (kind) {
      case IDLE, LOCKOUT -> sheet;
      case WAITING -> mixed(sheet, theme.palette().ink(), 0.07);
      case BURNING -> mixed(sheet, theme.palette().accent(), 0.18);
    };
  }

  private static Color mixed(Color a, Color b, double share) {
    return new Color(
        (int) Math.round(a.getRed() + share * (b.getRed() - a.getRed())),
        (int) Math.round(a.getGreen() + share * (b.getGreen() - a.getGreen())),
        (int) Math.round(a.getBlue() + share * (b.getBlue() - a.getBlue())));
  }

  /** Given up is ruled with slanted lines, not only coloured. */
  private void hatch(Graphics2D graphics, Shape box) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.clip(box);
    g.setColor(theme.palette().danger());
    Rectangle2D r = box.getBounds2D();
    for (double x = r.getX() - r.getHeight(); x < r.getMaxX(); x += 6) {
      g.draw(new Line2D.Double(x, r.getMaxY(), x + r.getHeight(), r.getY()));
    }
    g.dispose();
  }

  private void lane(Graphics2D g, Lane lane, double top, double height) {
    g.setFont(theme.note());
    g.setColor(theme.palette().softInk());
    double text = g.getFontMetrics().stringWidth(lane.name());
    double middle = top + height / 2;
    g.drawString(
        lane.name(), (float) (left() - theme.px(8) - text), (float) (middle + theme.px(4)));
    g.setColor(theme.palette().hairline());
    g.setStroke(new BasicStroke(0.8f));
    g.draw(new Line2D.Double(left(), middle, right(), middle));
    g.setColor(lane.flame() ? theme.palette().flameCone() : theme.palette().ink());
    double full = height * 0.55;
    for (Bar bar : lane.bars()) {
      double thick = full * bar.level();
      double x = x(bar.from());
      g.fill(
          new Rectangle2D.Double(
              x, middle + full / 2 - thick, Math.max(1, x(bar.until()) - x), thick));
    }
  }

  private void signal(Graphics2D g, Signal signal, double top, double bottom) {
    double height = bottom - top;
    if (height < theme.px(12)) {
      return;
    }
    g.setFont(theme.note());
    var p = theme.palette();
    g.setColor(p.softInk());
    double text = g.getFontMetrics().stringWidth(signal.name());
    g.drawString(
        signal.name(),
        (float) (left() - theme.px(8) - text),
        (float) (bottom - height / 2 + theme.px(4)));
    g.setColor(p.hairline());
    g.setStroke(new BasicStroke(0.8f));
    g.draw(new Line2D.Double(left(), bottom, right(), bottom));
    g.setColor(p.softInk());
    g.setStroke(
        new BasicStroke(
            1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0));
    double pick = bottom - height * signal.pickUp();
    g.draw(new Line2D.Double(left(), pick, right(), pick));
    g.setStroke(
        new BasicStroke(
            1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {1, 3}, 0));
    double drop = bottom - height * signal.dropOut();
    g.draw(new Line2D.Double(left(), drop, right(), drop));
    limits(g, signal, top, bottom);
    Path2D curve = new Path2D.Double();
    for (int k = 0; k < signal.times().length; k++) {
      double x = x(signal.times()[k]);
      double y = bottom - height * signal.levels()[k];
      if (k == 0) {
        curve.moveTo(x, y);
      } else {
        curve.lineTo(x, y);
      }
    }
    g.setColor(p.microamps());
    g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL));
    g.draw(curve);
    int last = signal.levels().length - 1;
    if (last >= 0) {
      double y = bottom - height * signal.levels()[last];
      g.setFont(theme.note().deriveFont(Font.BOLD));
      g.drawString(
          signal.now(), (float) (right() + theme.px(6)), (float) Math.min(bottom, y + theme.px(4)));
    }
  }

  /**
   * At the end where the curve does not run through the words; where it does, it is drawn over
   * them.
   */
  private void limits(Graphics2D g, Signal signal, double top, double bottom) {
    g.setFont(theme.note());
    FontMetrics metrics = g.getFontMetrics();
    double width = metrics.stringWidth(signal.pickUpWords());
    double height = bottom - top;
    double y = bottom - height * signal.pickUp() - theme.px(3);
    double last = right() - width - 6;
    double least = (bottom - y) / height;
    double most = (bottom - y + metrics.getAscent()) / height;
    double from = (last - left()) / (right() - left());
    double x = signal.crosses(from, 1, least, most) ? left() + 6 : last;
    g.setColor(theme.palette().sheet());
    g.fill(
        new Rectangle2D.Double(x - 3, y - metrics.getAscent() + 2, width + 6, metrics.getAscent()));
    g.setColor(theme.palette().softInk());
    g.drawString(signal.pickUpWords(), (float) x, (float) y);
  }

  private void flags(Graphics2D g) {
    for (StripView.Flag flag : shown().flags()) {
      double x = x(flag.at());
      g.setColor(theme.palette().accent());
      g.setStroke(new BasicStroke(1f));
      g.draw(new Line2D.Double(x, theme.px(17), x, getHeight() - theme.px(4)));
      g.fill(new Ellipse2D.Double(x - 3, theme.px(15), 6, 6));
    }
  }
}
