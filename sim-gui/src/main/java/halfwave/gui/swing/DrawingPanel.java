package halfwave.gui.swing;

import halfwave.bench.RodPosition;
import halfwave.circuit.Point;
import halfwave.gui.presentation.Intent;
import halfwave.gui.presentation.PartCard;
import halfwave.gui.presentation.Placing;
import halfwave.gui.presentation.RodGesture;
import halfwave.gui.presentation.SeenBench;
import halfwave.gui.presentation.State;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.Workbench;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.WireInFlame;
import halfwave.instrument.MeterFunction;
import halfwave.picture.BenchDrawing;
import halfwave.picture.DrawingStyle;
import halfwave.picture.DrawnBench;
import halfwave.picture.DrawnPart;
import halfwave.picture.DrawnView;
import halfwave.picture.FlameMemory;
import halfwave.picture.RodGrip;
import halfwave.sequence.Hooked;
import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The drawing: shows parts, hands on what is dragged and clicked. */
final class DrawingPanel extends Painted {

  private static final long serialVersionUID = 1L;
  private static final double LEAD_PX = 14;
  private static final double NUDGE_METERS = 1e-3;
  private static final double NUDGE_RADIANS = Math.toRadians(2);
  private static final double FINE = 0.1;

  /** Keys that follow each other faster are one act (ms). */
  private static final long PAUSE_MILLIS = 1500;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Workbench workbench;
  private final transient Consumer<DrawnPart> opened;
  private final double leastLine;
  private final transient FlameMemory memory = new FlameMemory();
  private @Nullable transient State state;
  private @Nullable transient BenchDrawing drawing;
  private @Nullable DrawnPart focused;
  private transient Set<DrawnPart> lit = Set.of();
  private DrawnView view = DrawnView.ABOVE;
  private boolean motion = true;
  private double lively;
  private double cycle;

  /** Where the hand has the rod, until the bench follows. */
  private @Nullable transient RodPosition held;

  /** Where the hand has a lead. */
  private @Nullable transient Point2D leadAt;

  DrawingPanel(Theme theme, Wording words, Workbench workbench, Consumer<DrawnPart> opened) {
    this(theme, words, workbench, opened, 0);
  }

  /**
   * A drawing.
   *
   * @param opened is told of a part whose card is wanted
   * @param leastLine width of its finest line (px)
   */
  DrawingPanel(
      Theme theme,
      Wording words,
      Workbench workbench,
      Consumer<DrawnPart> opened,
      double leastLine) {
    this.leastLine = leastLine;
    this.theme = theme;
    this.words = words;
    this.workbench = workbench;
    this.opened = opened;
    setFocusable(true);
    setPreferredSize(new Dimension(theme.px(800), theme.px(520)));
    setMinimumSize(new Dimension(theme.px(420), theme.px(320)));
    setName("drawing");
    getAccessibleContext().setAccessibleName(words.text("drawing.title"));
    Hand hand = new Hand();
    addMouseListener(hand);
    addMouseMotionListener(hand);
    addKeyListener(new Keys());
    setToolTipText("");
  }

  void show(State newState) {
    boolean refused =
        newState.refusal() != null
            && (state == null || !newState.refusal().equals(state.refusal()));
    state = newState;
    if (refused || newState.moment().bench().condition().rodPosition().equals(held)) {
      held = null;
    }
    drawing = null;
    repaint();
  }

  DrawnView view() {
    return view;
  }

  void view(DrawnView other) {
    view = other;
    drawing = null;
    repaint();
  }

  void motion(boolean on) {
    motion = on;
    drawing = null;
    repaint();
  }

  void light(Set<DrawnPart> parts) {
    lit = parts;
    drawing = null;
    repaint();
  }

  /** A moment later: the flame sways, the slowed mains goes on. */
  void sway(double seconds) {
    if (motion) {
      lively += seconds / 3;
      cycle += seconds / 2.4;
      drawing = null;
      repaint();
    }
  }

  /** What is drawn now, or null before there is a bench; tests find parts and grips by it. */
  @Nullable BenchDrawing drawing() {
    if (drawing == null && state != null && getWidth() > 0) {
      drawing = made(state);
    }
    return drawing;
  }

  private BenchDrawing made(State s) {
    DrawnBench drawn = SeenBench.of(s, held, words);
    DrawingStyle style =
        new DrawingStyle(
            theme.palette(),
            words.sentences(),
            view,
            theme.ratio(),
            lit,
            isFocusOwner() ? focused : null,
            lively,
            cycle,
            motion);
    return BenchDrawing.of(getSize(), drawn, style, memory);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    BenchDrawing d = drawing();
    Graphics2D g = (Graphics2D) graphics.create();
    if (d == null) {
      g.setFont(theme.body());
      g.setColor(theme.palette().softInk());
      g.drawString(words.text("drawing.lag"), theme.px(12), theme.px(24));
      g.dispose();
      return;
    }
    d.paint(g, leastLine);
    if (leadAt != null) {
      Point2D from = d.shape(DrawnPart.METER).getBounds2D().isEmpty() ? leadAt : center(d);
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setColor(theme.palette().accent());
      g.setStroke(new BasicStroke(2.5f));
      g.draw(new Line2D.Double(from, leadAt));
    }
    if (isFocusOwner() && focused == null) {
      g.setColor(theme.palette().accent());
      g.setStroke(new BasicStroke((float) Math.max(2, leastLine)));
      g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
    }
    g.dispose();
    getAccessibleContext().setAccessibleDescription(d.description());
  }

  private static Point2D center(BenchDrawing d) {
    var bounds = d.shape(DrawnPart.METER).getBounds2D();
    return new Point2D.Double(bounds.getCenterX(), bounds.getCenterY());
  }

  @Override
  public @Nullable String getToolTipText(MouseEvent event) {
    BenchDrawing d = drawing();
    if (d == null || state == null) {
      return null;
    }
    State now = state;
    return d.partAt(event.getPoint())
        .map(part -> PartCard.of(part, now, words).name() + disorders(d, part))
        .orElse(null);
  }

  /** In words, what is marked there; nothing is where the bench is sealed. */
  private String disorders(BenchDrawing d, DrawnPart part) {
    List<String> names = d.disorders(part).stream().map(words.sentences()::name).toList();
    return names.isEmpty() ? "" : ": " + String.join("; ", names);
  }

  private RodPosition rod() {
    if (held != null) {
      return held;
    }
    return state == null ? RodPosition.FITTED : state.moment().bench().condition().rodPosition();
  }

  private void move(RodGesture gesture, RodPosition to) {
    held = to;
    workbench.want(gesture.to(to));
    drawing = null;
    repaint();
  }

  private final class Hand extends MouseAdapter {
    private @Nullable RodGrip grip;
    private RodGesture gesture = new RodGesture(RodPosition.FITTED, 0);
    private Point2D start = new Point2D.Double();
    private boolean dragged;

    /** Which lead is dragged: true is red; null is none. */
    private @Nullable Boolean red;

    @Override
    public void mousePressed(MouseEvent e) {
      requestFocusInWindow();
      BenchDrawing d = drawing();
      if (d == null || state == null) {
        return;
      }
      dragged = false;
      start = e.getPoint();
      red = lead(d, e.getPoint());
      if (red == null && d.partAt(e.getPoint()).orElse(null) == DrawnPart.METER) {
        red = true;
      }
      // whoever may not see where the rod stands cannot move it
      grip = red == null && !state.sealed() ? d.gripAt(e.getPoint()).orElse(null) : null;
      gesture = new RodGesture(rod(), KnobSlider.nextGesture());
      focused = d.partAt(e.getPoint()).orElse(null);
      drawing = null;
      repaint();
    }

    @Override
    public void mouseDragged(MouseEvent e) {
      BenchDrawing d = drawing();
      if (d == null) {
        return;
      }
      dragged = dragged || start.distance(e.getPoint()) > 3;
      if (red != null) {
        leadAt = e.getPoint();
        repaint();
      } else if (grip != null && dragged) {
        move(gesture, d.dragged(grip, gesture.start(), start, e.getPoint()));
      }
    }

    @Override
    public void mouseReleased(MouseEvent e) {
      BenchDrawing d = drawing();
      if (red != null && dragged && d != null) {
        d.pointAt(e.getPoint(), theme.px(24)).ifPresent(p -> put(p, Boolean.TRUE.equals(red)));
      } else if (!dragged && focused != null) {
        opened.accept(focused);
      }
      held = null;
      leadAt = null;
      grip = null;
      red = null;
      repaint();
    }

    @Override
    public void mouseMoved(MouseEvent e) {
      BenchDrawing d = drawing();
      boolean can =
          d != null && (d.gripAt(e.getPoint()).isPresent() || lead(d, e.getPoint()) != null);
      boolean part = d != null && d.partAt(e.getPoint()).isPresent();
      setCursor(
          Cursor.getPredefinedCursor(
              can ? Cursor.MOVE_CURSOR : part ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
    }

    private @Nullable Boolean lead(BenchDrawing d, Point2D at) {
      Hooked hooked = state == null ? null : state.moment().hooked();
      if (hooked == null) {
        return null;
      }
      if (hooked.hookUp() instanceof Across across) {
        if (near(d.place(across.red()), at)) {
          return true;
        }
        return near(d.place(across.black()), at) ? false : null;
      }
      return null;
    }

    private boolean near(Optional<Point2D> place, Point2D at) {
      return place.map(p -> p.distance(at) < theme.px(LEAD_PX)).orElse(false);
    }
  }

  /** Puts one lead on a point; the other stays, or goes to the board's common. */
  private void put(Point point, boolean red) {
    State now = state;
    if (now == null || !HookUp.REACHABLE.contains(point)) {
      return;
    }
    Hooked hooked = now.moment().hooked();
    HookUp before = hooked == null ? null : hooked.hookUp();
    Point other = Point.COMMON;
    if (before instanceof Across across) {
      other = red ? across.black() : across.red();
    } else if (before instanceof WireInFlame wire) {
      other = wire.other();
    }
    Across to = red ? new Across(point, other) : new Across(other, point);
    workbench.want(new Intent.Lead(new Placing.At(to), MeterFunction.AC_VOLTS));
  }

  private final class Keys extends KeyAdapter {
    private RodGesture gesture = new RodGesture(RodPosition.FITTED, 0);
    private long lastMillis;

    @Override
    public void keyPressed(KeyEvent e) {
      double far = NUDGE_METERS * (e.isShiftDown() ? FINE : 1);
      double turn = NUDGE_RADIANS * (e.isShiftDown() ? FINE : 1);
      RodPosition p = rod();
      RodPosition to =
          switch (e.getKeyCode()) {
            case KeyEvent.VK_LEFT ->
                e.isControlDown()
                    ? p.withTurn(p.turnRadians() - turn)
                    : p.withAlong(p.alongMeters() - far);
            case KeyEvent.VK_RIGHT ->
                e.isControlDown()
                    ? p.withTurn(p.turnRadians() + turn)
                    : p.withAlong(p.alongMeters() + far);
            case KeyEvent.VK_UP ->
                e.isControlDown() ? p.withBend(p.bendRadians() + turn) : upwards(p, far);
            case KeyEvent.VK_DOWN ->
                e.isControlDown() ? p.withBend(p.bendRadians() - turn) : upwards(p, -far);
            default -> p;
          };
      if (!to.equals(p)) {
        // keys that follow each other closely are one act
        if (e.getWhen() - lastMillis > PAUSE_MILLIS) {
          gesture = new RodGesture(p, KnobSlider.nextGesture());
        }
        lastMillis = e.getWhen();
        move(gesture, to);
        e.consume();
      } else if (e.getKeyCode() == KeyEvent.VK_ENTER && focused != null) {
        opened.accept(focused);
        e.consume();
      } else if (e.getKeyChar() == 'n' || e.getKeyChar() == 'p') {
        step(e.getKeyChar() == 'n' ? 1 : -1);
        e.consume();
      }
    }

    /** Up is up on the screen. */
    private RodPosition upwards(RodPosition p, double far) {
      return view == DrawnView.ABOVE
          ? p.withAcross(p.acrossMeters() - far)
          : p.withUp(p.upMeters() + far);
    }
  }

  private void step(int by) {
    BenchDrawing d = drawing();
    if (d == null) {
      return;
    }
    var parts =
        Arrays.stream(DrawnPart.values()).filter(p -> !d.shape(p).getBounds2D().isEmpty()).toList();
    int at = focused == null ? (by > 0 ? -1 : 0) : parts.indexOf(focused);
    focused = parts.get(Math.floorMod(at + by, parts.size()));
    drawing = null;
    repaint();
    getAccessibleContext()
        .setAccessibleName(
            words.text("drawing.title")
                + ": "
                + (state == null ? "" : PartCard.of(focused, state, words).name()));
  }
}
