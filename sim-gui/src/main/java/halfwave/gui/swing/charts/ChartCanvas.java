package halfwave.gui.swing.charts;

import halfwave.gui.swing.widget.Painted;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Picture;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import javax.swing.ToolTipManager;

/** A painted chart with a cursor that follows the mouse or the arrow keys. */
abstract class ChartCanvas extends Painted {

  private static final long serialVersionUID = 1L;

  /** One key press moves the cursor by this share of the axis. */
  private static final double STEP = 1.0 / 128;

  private static final double LEAP = 8 * STEP;

  final transient Theme theme;

  /** Place of the cursor, 0 to 1; NaN where there is none. */
  private double cursor = Double.NaN;

  private transient Runnable moved = () -> {};

  ChartCanvas(Theme theme) {
    this.theme = theme;
    setFocusable(true);
    setMinimumSize(new Dimension(theme.px(240), theme.px(90)));
    setPreferredSize(new Dimension(theme.px(600), theme.px(150)));
    ToolTipManager.sharedInstance().registerComponent(this);
    Hand hand = new Hand();
    addMouseListener(hand);
    addMouseMotionListener(hand);
    addKeyListener(new Keys());
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            cursor(Double.NaN);
          }
        });
  }

  /** Draws the chart on a sheet of that size. */
  abstract void draw(ChartInk ink, int width, int height);

  /** Where that is on the axis across, 0 to 1; NaN off the plot. */
  abstract double place(double x, double y);

  final void onCursor(Runnable told) {
    moved = told;
  }

  final double cursor() {
    return cursor;
  }

  final void cursor(double at) {
    cursor = Double.isNaN(at) ? at : Math.max(0, Math.min(1, at));
    moved.run();
    repaint();
  }

  /** How many points across can be told apart. */
  final int columns() {
    return Math.max(50, getWidth());
  }

  /** An upright line at the cursor. */
  static void cursorLine(ChartInk ink, Rectangle2D a, double at) {
    double x = ChartInk.x(a, at);
    ink.g.setColor(ink.palette.accent());
    ink.g.setStroke(ink.solid(1.2));
    ink.g.draw(new Line2D.Double(x, a.getY(), x, a.getMaxY()));
  }

  static double placeIn(Rectangle2D a, double x) {
    return (x - a.getX()) / a.getWidth();
  }

  @Override
  protected final void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    draw(new ChartInk(g, theme), getWidth(), getHeight());
    if (isFocusOwner()) {
      g.setColor(theme.palette().accent());
      g.setStroke(new BasicStroke(1.5f));
      g.draw(new Rectangle2D.Double(1, 1, getWidth() - 2.5, getHeight() - 2.5));
    }
    g.dispose();
  }

  /** The chart under a line that says what it is, without cursor and focus. */
  final Picture picture(String caption) {
    return Clip.sheet(theme, caption, getWidth(), getHeight(), this::drawn);
  }

  private void drawn(Graphics2D g) {
    double kept = cursor;
    cursor = Double.NaN;
    draw(new ChartInk(g, theme), getWidth(), getHeight());
    cursor = kept;
  }

  /** Moves the cursor with the mouse. */
  private final class Hand extends MouseAdapter {
    @Override
    public void mouseMoved(MouseEvent e) {
      double at = place(e.getX(), e.getY());
      cursor(at >= 0 && at <= 1 ? at : Double.NaN);
    }

    @Override
    public void mouseDragged(MouseEvent e) {
      mouseMoved(e);
    }

    @Override
    public void mousePressed(MouseEvent e) {
      requestFocusInWindow();
    }

    @Override
    public void mouseExited(MouseEvent e) {
      cursor(Double.NaN);
    }
  }

  /** Moves it with the keys. */
  private final class Keys extends KeyAdapter {
    @Override
    public void keyPressed(KeyEvent e) {
      double step = e.isShiftDown() ? LEAP : STEP;
      double from = Double.isNaN(cursor) ? 0.5 : cursor;
      switch (e.getKeyCode()) {
        case KeyEvent.VK_LEFT -> cursor(from - step);
        case KeyEvent.VK_RIGHT -> cursor(from + step);
        case KeyEvent.VK_HOME -> cursor(0);
        case KeyEvent.VK_END -> cursor(1);
        case KeyEvent.VK_ESCAPE -> cursor(Double.NaN);
        default -> {
          return;
        }
      }
      e.consume();
    }
  }
}
