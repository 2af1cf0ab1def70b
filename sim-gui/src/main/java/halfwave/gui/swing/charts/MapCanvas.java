package halfwave.gui.swing.charts;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.charts.MapView;
import halfwave.gui.presentation.charts.MapView.Contour;
import halfwave.gui.presentation.charts.MapView.Kind;
import halfwave.gui.presentation.charts.MapView.Spot;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Palette;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Paints the map: deeper colour for more current, lines of equal current with their numbers. */
final class MapCanvas extends ChartCanvas {

  private static final long serialVersionUID = 1L;

  /** Deepest colour, as a share of the way from sheet to the colour of currents. */
  private static final double DEEP = 0.8;

  /** What a meter cannot tell from zero has no sign (µA). */
  private static final double NOTHING = -0.005;

  private static final double KEY_STEP = 1.0 / 64;

  private final transient Wording words;
  private @Nullable transient MapView view;
  private @Nullable transient Image cells;

  /** The colours they are shaded with. */
  private @Nullable transient Palette shaded;

  private transient Rectangle2D plot = new Rectangle2D.Double();

  /** What mouse or keys point at, 0 to 1 of both axes. */
  private @Nullable transient Point2D pointed;

  MapCanvas(Theme theme, Wording words, Consumer<Point2D> clicked) {
    super(theme);
    this.words = words;
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            Point2D at = at(e);
            if (at != null) {
              clicked.accept(at);
            }
          }
        });
    addKeyListener(new Keys(clicked));
  }

  void show(@Nullable MapView newView) {
    if (newView != null && (view == null || newView.microamps() != view.microamps())) {
      cells = cells(newView);
      shaded = theme.palette();
    }
    view = newView;
    repaint();
  }

  /** What is pointed at, or null. */
  @Nullable Point2D pointed() {
    return pointed;
  }

  private @Nullable Point2D at(MouseEvent e) {
    double x = placeIn(plot, e.getX());
    double y = (plot.getMaxY() - e.getY()) / plot.getHeight();
    return x >= 0 && x <= 1 && y >= 0 && y <= 1 ? new Point2D.Double(x, y) : null;
  }

  @Override
  double place(double x, double y) {
    double up = (plot.getMaxY() - y) / plot.getHeight();
    double across = placeIn(plot, x);
    boolean in = across >= 0 && across <= 1 && up >= 0 && up <= 1;
    pointed = in ? new Point2D.Double(across, up) : null;
    setCursor(Cursor.getPredefinedCursor(in ? Cursor.CROSSHAIR_CURSOR : Cursor.DEFAULT_CURSOR));
    return in ? across : Double.NaN;
  }

  @Override
  public @Nullable String getToolTipText(MouseEvent event) {
    Point2D at = at(event);
    return view == null || at == null ? null : view.probe(at.getX(), at.getY(), words).words();
  }

  private Image cells(MapView v) {
    double[][] values = v.microamps();
    int columns = values.length;
    int lines = values[0].length;
    BufferedImage image = new BufferedImage(columns, lines, BufferedImage.TYPE_INT_ARGB);
    for (int i = 0; i < columns; i++) {
      for (int j = 0; j < lines; j++) {
        double value = values[i][j];
        image.setRGB(i, j, Double.isNaN(value) ? 0 : shade(value / v.full()).getRGB());
      }
    }
    return image;
  }

  private Color shade(double share) {
    return ChartInk.mixed(theme.palette().sheet(), theme.palette().microamps(), DEEP * share);
  }

  @Override
  void draw(ChartInk ink, int width, int height) {
    MapView v = view;
    if (v == null) {
      return;
    }
    double scale = theme.px(46);
    Rectangle2D outer = new Rectangle2D.Double(0, 0, width - scale, height);
    plot = new ChartAxes(ink).plot(outer, v.across(), true);
    new ChartAxes(ink).axes(outer, plot, v.along(), v.across(), ink.palette.ink());
    fill(ink, v);
    new MapContours(plot).draw(ink, v);
    spots(ink, v);
    bar(ink, v, plot.getMaxX() + theme.px(10));
    if (pointed != null && !Double.isNaN(cursor())) {
      double x = ChartInk.x(plot, pointed.getX());
      double y = ChartInk.y(plot, pointed.getY());
      ink.g.setColor(ink.palette.accent());
      ink.g.setStroke(ink.solid(1.2));
      ink.g.draw(new Line2D.Double(x, plot.getY(), x, plot.getMaxY()));
      ink.g.draw(new Line2D.Double(plot.getX(), y, plot.getMaxX(), y));
    }
  }

  private void fill(ChartInk ink, MapView v) {
    double[][] values = v.microamps();
    double wide = plot.getWidth() / (values.length - 1);
    double high = plot.getHeight() / (values[0].length - 1);
    Graphics2D g = (Graphics2D) ink.g.create();
    g.clip(plot);
    new ChartInk(g, theme).hatch(plot, ink.palette.hairline());
    // the outermost readings lie on the edge of the plot, half of their cells beyond it
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.translate(plot.getX() - wide / 2, plot.getY() - high / 2);
    g.scale(wide, high);
    // on paper the ground is another one than on the screen
    boolean screen = cells != null && shaded == ink.palette;
    g.drawImage(screen ? cells : cells(v), 0, 0, null);
    g.dispose();
    Path2D reversed = new Path2D.Double();
    Path2D metal = new Path2D.Double();
    for (int i = 0; i < values.length; i++) {
      for (int j = 0; j < values[0].length; j++) {
        Rectangle2D cell =
            new Rectangle2D.Double(
                plot.getX() + (i - 0.5) * wide, plot.getY() + (j - 0.5) * high, wide, high);
        Rectangle2D inside = cell.createIntersection(plot);
        if (Double.isNaN(values[i][j])) {
          metal.append(inside, false);
        } else if (values[i][j] < NOTHING) {
          reversed.append(inside, false);
        }
      }
    }
    ink.hatch(reversed, ink.palette.ink());
    region(ink, metal, "map.metal");
    region(ink, reversed, "map.reversed");
    ink.g.setColor(ink.palette.hairline());
    ink.g.setStroke(ink.solid(1));
    ink.g.draw(plot);
  }

  private void region(ChartInk ink, Path2D shape, String key) {
    Rectangle2D r = shape.getBounds2D();
    String text = words.text(key);
    if (r.getWidth() > ink.width(text) * 0.6 && r.getHeight() > ink.line()) {
      double x = r.getCenterX() - ink.width(text) / 2;
      ink.words(text, ink.palette.softInk(), x, r.getMaxY() - theme.px(8), plot);
    }
  }

  private void spots(ChartInk ink, MapView v) {
    Spot fitted = v.fitted();
    Spot rod = v.rod();
    boolean apart = Math.hypot(fitted.at() - rod.at(), fitted.level() - rod.level()) > 0.004;
    if (apart && fitted.inside()) {
      ring(ink, fitted, false);
    }
    if (rod.inside()) {
      ring(ink, rod, true);
    }
  }

  private void ring(ChartInk ink, Spot spot, boolean now) {
    double x = ChartInk.x(plot, spot.at());
    double y = ChartInk.y(plot, spot.level());
    double r = theme.px(now ? 6 : 5);
    Ellipse2D ring = new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    ink.g.setColor(ink.palette.sheet());
    ink.g.setStroke(ink.solid(4.5));
    ink.g.draw(ring);
    ink.g.setColor(now ? ink.palette.accent() : ink.palette.ink());
    ink.g.setStroke(now ? ink.solid(2.4) : ink.ghostStroke());
    ink.g.draw(ring);
    ink.words(
        spot.words(),
        now ? ink.palette.accent() : ink.palette.ink(),
        x + r + theme.px(5),
        y + 0.3 * ink.line(),
        plot);
  }

  /** Which colour is how much. */
  private void bar(ChartInk ink, MapView v, double left) {
    double wide = theme.px(10);
    int steps = 60;
    for (int k = 0; k < steps; k++) {
      double high = plot.getHeight() / steps;
      ink.g.setColor(shade((k + 0.5) / steps));
      ink.g.fill(new Rectangle2D.Double(left, plot.getMaxY() - (k + 1) * high, wide, high + 0.6));
    }
    ink.g.setColor(ink.palette.hairline());
    ink.g.setStroke(ink.solid(1));
    ink.g.draw(new Rectangle2D.Double(left, plot.getY(), wide, plot.getHeight()));
    ink.bold("µA", ink.palette.microamps(), left, plot.getY() - theme.px(7));
    double x = left + wide + theme.px(4);
    double free = Double.POSITIVE_INFINITY;
    for (Contour c : v.contours()) {
      double y = ChartInk.y(plot, c.level());
      if (c.kind() == Kind.ROUND && y <= free) {
        free = y - ink.line();
        ink.plain(c.words(), ink.palette.softInk(), x, y + 0.3 * ink.line());
      }
    }
  }

  /** Moves what is pointed at, and clicks. */
  private final class Keys extends KeyAdapter {
    private final Consumer<Point2D> clicked;

    Keys(Consumer<Point2D> clicked) {
      this.clicked = clicked;
    }

    @Override
    public void keyPressed(KeyEvent e) {
      Point2D from = pointed;
      if (from == null) {
        from =
            view == null
                ? new Point2D.Double(0.5, 0.5)
                : new Point2D.Double(view.rod().at(), view.rod().level());
      }
      double step = KEY_STEP * (e.isShiftDown() ? 4 : 1);
      switch (e.getKeyCode()) {
        case KeyEvent.VK_LEFT -> point(from.getX() - step, from.getY());
        case KeyEvent.VK_RIGHT -> point(from.getX() + step, from.getY());
        case KeyEvent.VK_UP -> point(from.getX(), from.getY() + 2 * step);
        case KeyEvent.VK_DOWN -> point(from.getX(), from.getY() - 2 * step);
        case KeyEvent.VK_ESCAPE -> pointed = null;
        case KeyEvent.VK_ENTER -> clicked.accept(from);
        default -> {
          return;
        }
      }
      cursor(pointed == null ? Double.NaN : pointed.getX());
      e.consume();
    }

    private void point(double x, double y) {
      pointed = new Point2D.Double(Math.max(0, Math.min(1, x)), Math.max(0, Math.min(1, y)));
    }
  }
}
