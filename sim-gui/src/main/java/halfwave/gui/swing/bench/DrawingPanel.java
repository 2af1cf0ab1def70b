package halfwave.gui.swing.bench;

import halfwave.bench.RodPosition;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.PartCard;
import halfwave.gui.presentation.bench.RodGesture;
import halfwave.gui.presentation.bench.SeenBench;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Painted;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.flame.FlameMemory;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnBench;
import halfwave.picture.scene.DrawnPart;
import halfwave.picture.scene.DrawnView;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/** The drawing: shows parts, hands on what is dragged and clicked. */
public final class DrawingPanel extends Painted {

  private static final long serialVersionUID = 1L;

  /** The hand does not wait longer than this for the bench (ms). */
  private static final int WAIT_MILLIS = 40;

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

  /** Draws the hand's rod where the bench is slow; mostly one picture shows both. */
  private final transient Timer slow = new Timer(WAIT_MILLIS, e -> drawAnew());

  /** Where the hand has a lead. */
  private @Nullable transient Point2D leadAt;

  /**
   * A drawing for the window.
   *
   * @param opened is told of a part whose card is wanted
   */
  public DrawingPanel(Theme theme, Wording words, Workbench workbench, Consumer<DrawnPart> opened) {
    this(theme, words, workbench, opened, 0);
  }

  /**
   * A drawing.
   *
   * @param opened is told of a part whose card is wanted
   * @param leastLine width of its finest line (px)
   */
  public DrawingPanel(
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
    DrawingHand hand = new DrawingHand(this, theme, workbench);
    addMouseListener(hand);
    addMouseMotionListener(hand);
    addKeyListener(new DrawingKeys(this));
    setToolTipText("");
    slow.setRepeats(false);
  }

  private void drawAnew() {
    slow.stop();
    drawing = null;
    repaint();
  }

  /** Shows the furnace of a state. */
  public void show(State newState) {
    boolean refused =
        newState.refusal() != null
            && (state == null || !newState.refusal().equals(state.refusal()));
    state = newState;
    if (refused || newState.moment().bench().condition().rodPosition().equals(held)) {
      held = null;
    }
    drawAnew();
  }

  /** From where the flame zone is seen. */
  public DrawnView view() {
    return view;
  }

  /** From there on it is seen from another side. */
  public void view(DrawnView other) {
    view = other;
    drawAnew();
  }

  /** Whether what moves in the drawing is seen to move. */
  public void motion(boolean on) {
    motion = on;
    drawAnew();
  }

  /** Lights parts, and no others. */
  public void light(Set<DrawnPart> parts) {
    lit = parts;
    drawAnew();
  }

  /** A moment later: the flame sways, the slowed mains goes on. */
  public void sway(double seconds) {
    if (motion) {
      lively += seconds / 3;
      cycle += seconds / 2.4;
      drawAnew();
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

  /** What is shown, or null before there is a bench. */
  @Nullable State state() {
    return state;
  }

  /** The hand is on a part, or on none. */
  void focus(@Nullable DrawnPart part) {
    focused = part;
    drawAnew();
  }

  /** Opens the card of the part that it is on; whether there is one. */
  boolean openFocused() {
    if (focused != null) {
      opened.accept(focused);
    }
    return focused != null;
  }

  /** The hand has a lead there. */
  void leadAt(Point2D place) {
    leadAt = place;
    repaint();
  }

  /** The hand has nothing any more. */
  void letGo() {
    held = null;
    leadAt = null;
    repaint();
  }

  /** Where the rod is drawn. */
  RodPosition rod() {
    if (held != null) {
      return held;
    }
    return state == null ? RodPosition.FITTED : state.moment().bench().condition().rodPosition();
  }

  /** The rod goes where the hand has it. */
  void move(RodGesture gesture, RodPosition to) {
    held = to;
    workbench.want(gesture.to(to));
    if (!slow.isRunning()) {
      slow.start();
    }
  }

  /** The keyboard goes on to another part. */
  void step(int by) {
    BenchDrawing d = drawing();
    if (d == null) {
      return;
    }
    var parts =
        Arrays.stream(DrawnPart.values()).filter(p -> !d.shape(p).getBounds2D().isEmpty()).toList();
    int at = focused == null ? (by > 0 ? -1 : 0) : parts.indexOf(focused);
    focused = parts.get(Math.floorMod(at + by, parts.size()));
    drawAnew();
    getAccessibleContext()
        .setAccessibleName(
            words.text("drawing.title")
                + ": "
                + (state == null ? "" : PartCard.of(focused, state, words).name()));
  }
}
