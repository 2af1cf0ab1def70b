package halfwave.gui.swing.charts;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.charts.Probe;
import halfwave.gui.presentation.charts.Trace;
import halfwave.gui.presentation.charts.WhatIfView;
import halfwave.gui.presentation.charts.WhatIfView.Here;
import halfwave.gui.swing.widget.Theme;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/** Paints the reading over one number: DC solid, AC dashed, limits dotted, now as a mark. */
final class WhatIfCanvas extends ChartCanvas {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private @Nullable transient WhatIfView view;
  private transient Rectangle2D plot = new Rectangle2D.Double();

  WhatIfCanvas(Theme theme, Wording words) {
    super(theme);
    this.words = words;
  }

  void show(@Nullable WhatIfView newView) {
    view = newView;
    repaint();
  }

  @Override
  double place(double x, double y) {
    return placeIn(plot, x);
  }

  @Override
  public @Nullable String getToolTipText(MouseEvent event) {
    double at = place(event.getX(), event.getY());
    return view == null || !(at >= 0 && at <= 1) ? null : view.probe(at, words).words();
  }

  @Override
  void draw(ChartInk ink, int width, int height) {
    WhatIfView v = view;
    if (v == null) {
      return;
    }
    // limits are named in a margin of their own, where no curve runs
    double margin = Math.max(ink.width(v.pickUpWords()), ink.width(v.dropOutWords())) + theme.px(6);
    Rectangle2D outer = new Rectangle2D.Double(0, 0, width - margin, height);
    plot = new ChartAxes(ink).plot(outer, v.amps(), true);
    new ChartAxes(ink).axes(outer, plot, v.across(), v.amps(), ink.palette.microamps());
    limits(ink, v);
    Trace ghost = v.healthy();
    if (ghost != null) {
      ink.ghost(plot, ghost);
    }
    ink.curve(plot, v.ac(), ink.palette.microamps(), ink.dashed(1.7, 8, 4));
    ink.curve(plot, v.dc(), ink.palette.microamps(), ink.solid(2.4));
    here(ink, v);
    ink.name(plot, v.dc(), v.ac(), words.text("whatif.dc"), ink.palette.microamps());
    ink.name(plot, v.ac(), v.dc(), words.text("whatif.ac"), ink.palette.microamps());
    if (ghost != null) {
      ink.name(plot, ghost, v.dc(), words.text("whatif.dc-healthy"), ink.palette.softInk());
    }
    if (!Double.isNaN(cursor())) {
      Probe probe = v.probe(cursor(), words);
      cursorLine(ink, plot, probe.at());
      for (double level : probe.levels()) {
        if (!Double.isNaN(level)) {
          ink.dot(ChartInk.x(plot, probe.at()), ChartInk.y(plot, level), ink.palette.microamps());
        }
      }
    }
  }

  private void limits(ChartInk ink, WhatIfView v) {
    ink.level(plot, v.pickUp(), ink.palette.softInk(), ink.dashed(1, 4, 3));
    ink.level(plot, v.dropOut(), ink.palette.ink(), ink.dashed(1.2, 1.5, 3));
    double up = ChartInk.y(plot, v.pickUp());
    double down = ChartInk.y(plot, v.dropOut());
    double apart = Math.max(0, ink.line() - (down - up)) / 2;
    double x = plot.getMaxX() + theme.px(5);
    double half = 0.35 * theme.note().getSize2D();
    double push = Math.max(0, down + apart + half - plot.getMaxY());
    ink.plain(v.pickUpWords(), ink.palette.softInk(), x, up - apart + half - push);
    ink.plain(v.dropOutWords(), ink.palette.ink(), x, down + apart + half - push);
  }

  private void here(ChartInk ink, WhatIfView v) {
    Here here = v.here();
    double x = ChartInk.x(plot, here.at());
    ink.clipped(
        plot,
        new Line2D.Double(x, plot.getY() - theme.px(2), x, plot.getMaxY()),
        ink.palette.accent(),
        ink.solid(1.4));
    for (double level : new double[] {here.ac(), here.dc()}) {
      if (!Double.isNaN(level)) {
        ink.dot(x, ChartInk.y(plot, level), ink.palette.accent());
      }
    }
    // beside the title of the axis, where no curve runs
    double text = ink.width(here.words());
    double least = ink.boldWidth(v.amps().title()) + theme.px(14);
    double left = Math.max(least, Math.min(x - text / 2, plot.getMaxX() - text));
    ink.plain(here.words(), ink.palette.accent(), left, plot.getY() - theme.px(7));
  }
}
