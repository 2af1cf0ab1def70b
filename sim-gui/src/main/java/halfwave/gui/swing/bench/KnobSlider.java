package halfwave.gui.swing.bench;

import halfwave.gui.swing.widget.Theme;
import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.concurrent.atomic.AtomicLong;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleValue;
import javax.swing.JComponent;

/** A way from end to end with the healthy value marked: dragged, or stepped by keys. */
final class KnobSlider extends JComponent {

  private static final long serialVersionUID = 1L;

  /** Numbers gestures, for all controls of the window. */
  private static final AtomicLong GESTURES = new AtomicLong(1);

  private static final double THUMB_PX = 6.5;
  private static final double FINE = 0.002;
  private static final double STEP = 0.01;
  private static final double LEAP = 0.1;

  /** Is told of every turn. */
  interface Turned {
    void to(double place, long gesture);
  }

  private final transient Theme theme;
  private final transient Turned turned;
  private double place;
  private double healthy;
  private boolean dragging;

  /** From where a hand took the thumb to the middle of it. */
  private double grip;

  private long gesture;

  KnobSlider(Theme theme, Turned turned) {
    this.theme = theme;
    this.turned = turned;
    setFocusable(true);
    setPreferredSize(new Dimension(theme.px(140), theme.px(24)));
    setMinimumSize(new Dimension(theme.px(80), theme.px(24)));
    setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
    Hand hand = new Hand();
    addMouseListener(hand);
    addMouseMotionListener(hand);
    addKeyListener(new Keys());
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            gesture = GESTURES.incrementAndGet();
            repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            repaint();
          }
        });
  }

  /** The number of a new gesture. */
  static long nextGesture() {
    return GESTURES.incrementAndGet();
  }

  void show(double newPlace, double newHealthy) {
    healthy = newHealthy;
    if (!dragging) {
      place = newPlace;
    }
    repaint();
  }

  private double pad() {
    return theme.px(8);
  }

  private void turn(double newPlace) {
    place = Math.max(0, Math.min(1, newPlace));
    repaint();
    turned.to(place, gesture);
  }

  private final class Hand extends MouseAdapter {
    @Override
    public void mousePressed(MouseEvent e) {
      requestFocusInWindow();
      gesture = GESTURES.incrementAndGet();
      dragging = true;
      double pointed = pointed(e);
      boolean onThumb = Math.abs(pointed - place) * way() <= theme.px(THUMB_PX);
      grip = onThumb ? place - pointed : 0;
      if (!onThumb) {
        turn(held(pointed));
      }
    }

    @Override
    public void mouseDragged(MouseEvent e) {
      double to = held(pointed(e) + grip);
      // a hand that only rests on the thumb does nothing that could be undone
      if (to != place) {
        turn(to);
      }
    }

    @Override
    public void mouseReleased(MouseEvent e) {
      dragging = false;
    }

    private double pointed(MouseEvent e) {
      return (e.getX() - pad()) / way();
    }

    private double way() {
      return Math.max(1, getWidth() - 2 * pad());
    }

    /** The healthy value holds the hand a little. */
    private double held(double p) {
      return Math.abs(p - healthy) < 0.012 ? healthy : p;
    }
  }

  private final class Keys extends KeyAdapter {
    @Override
    public void keyPressed(KeyEvent e) {
      double step = e.isShiftDown() ? FINE : STEP;
      switch (e.getKeyCode()) {
        case KeyEvent.VK_LEFT, KeyEvent.VK_DOWN -> turn(place - step);
        case KeyEvent.VK_RIGHT, KeyEvent.VK_UP -> turn(place + step);
        case KeyEvent.VK_PAGE_DOWN -> turn(place - LEAP);
        case KeyEvent.VK_PAGE_UP -> turn(place + LEAP);
        case KeyEvent.VK_HOME -> turn(0);
        case KeyEvent.VK_END -> turn(1);
        default -> {
          return;
        }
      }
      e.consume();
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    var p = theme.palette();
    double y = getHeight() / 2.0;
    double way = getWidth() - 2 * pad();
    double h = pad() + way * healthy;
    double x = pad() + way * place;
    g.setStroke(
        new BasicStroke((float) theme.px(2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.setColor(p.border());
    g.draw(new Line2D.Double(pad(), y, pad() + way, y));
    g.setColor(p.accent());
    g.draw(new Line2D.Double(Math.min(h, x), y, Math.max(h, x), y));
    Path2D mark = new Path2D.Double();
    mark.moveTo(h, y - theme.px(3));
    mark.lineTo(h - theme.px(4), y - theme.px(10));
    mark.lineTo(h + theme.px(4), y - theme.px(10));
    mark.closePath();
    g.setColor(p.ink());
    g.fill(mark);
    double r = theme.px(THUMB_PX);
    Ellipse2D thumb = new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    g.setColor(p.sheet());
    g.fill(thumb);
    g.setColor(p.accent());
    g.setStroke(new BasicStroke(isFocusOwner() ? 3.2f : 1.8f));
    g.draw(thumb);
    g.dispose();
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new Spoken();
    }
    return accessibleContext;
  }

  /** A slider, for who hears the screen. */
  private final class Spoken extends AccessibleJComponent implements AccessibleValue {

    private static final long serialVersionUID = 1L;

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.SLIDER;
    }

    @Override
    public AccessibleValue getAccessibleValue() {
      return this;
    }

    @Override
    public Number getCurrentAccessibleValue() {
      return place;
    }

    @Override
    public boolean setCurrentAccessibleValue(Number n) {
      turn(n.doubleValue());
      return true;
    }

    @Override
    public Number getMinimumAccessibleValue() {
      return 0;
    }

    @Override
    public Number getMaximumAccessibleValue() {
      return 1;
    }
  }
}
