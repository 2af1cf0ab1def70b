package halfwave.gui.swing.lesson;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.gui.presentation.lesson.Presenter;
import halfwave.gui.presentation.lesson.ProjectorView;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.Theme;
import halfwave.lesson.Question;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLayer;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.ToolTipManager;
import javax.swing.WindowConstants;
import javax.swing.plaf.LayerUI;
import org.jspecify.annotations.Nullable;

/**
 * The picture for the wall, on a second screen where there is one. It takes the keys of a
 * presenter's remote; whoever has one screen goes back to the window with Escape.
 */
public final class Projector {

  private static final double WIDTH_OVER_HEIGHT = 16.0 / 9;

  private final Theme theme;
  private final Wording words;
  private final Workbench workbench;
  private final LessonModel lesson;
  private final Presenter presenter;
  private final Consumer<String> notice;
  private final Runnable help;
  private final Runnable closed;
  private final JFrame frame = new JFrame();
  private final JPanel room = new JPanel(null);
  private boolean pointing;
  private @Nullable ProjectorPanel panel;
  private @Nullable DrawingPanel drawing;
  private Runnable unsubscribe = () -> {};

  /**
   * A picture that is not shown yet.
   *
   * @param notice says something at the foot of the instructor's window
   * @param help opens help about teaching with it
   * @param closed is told when it is closed by hand
   */
  public Projector(
      Theme theme,
      Wording words,
      Workbench workbench,
      LessonModel lesson,
      Consumer<String> notice,
      Runnable help,
      Runnable closed) {
    this.theme = theme;
    this.words = words;
    this.workbench = workbench;
    this.lesson = lesson;
    this.notice = notice;
    this.help = help;
    this.closed = closed;
    presenter = new Presenter(lesson);
    frame.setTitle(words.text("projector.title"));
    frame.setUndecorated(true);
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            leave();
          }
        });
    room.setBackground(theme.palette().ground());
    room.setFocusable(true);
    room.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            build();
          }
        });
    frame.add(new JLayer<>(room, new Pointer()), BorderLayout.CENTER);
    keys();
  }

  /** The screen that the window is not on, or else the same one. */
  static Rectangle screen(JFrame window) {
    GraphicsDevice own = window.getGraphicsConfiguration().getDevice();
    for (GraphicsDevice device :
        GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices()) {
      Rectangle bounds = device.getDefaultConfiguration().getBounds();
      if (!device.equals(own) && !bounds.equals(own.getDefaultConfiguration().getBounds())) {
        return bounds;
      }
    }
    return own.getDefaultConfiguration().getBounds();
  }

  /** Shows it. */
  void open(Rectangle bounds) {
    frame.setBounds(bounds);
    frame.setVisible(true);
    room.requestFocusInWindow();
    Runnable states = workbench.subscribe(state -> refresh());
    Runnable steps = lesson.subscribe(this::refresh);
    unsubscribe =
        () -> {
          states.run();
          steps.run();
        };
  }

  /** Takes it from the wall. */
  void close() {
    unsubscribe.run();
    frame.dispose();
  }

  private void leave() {
    close();
    closed.run();
  }

  private void build() {
    Dimension size = room.getSize();
    double height = Math.min(size.height, size.width / WIDTH_OVER_HEIGHT);
    double scale = height / ProjectorPanel.HEIGHT;
    if (scale <= 0) {
      return;
    }
    room.removeAll();
    DrawingPanel made =
        new DrawingPanel(
            ProjectorPanel.drawingTheme(theme, scale),
            words,
            workbench,
            part -> {},
            ProjectorPanel.line(scale));
    // arrow keys are the demonstration's here, and not the rod's
    made.setFocusable(false);
    // names beside the pointer are too small for a class, and would stay on a blank wall
    ToolTipManager.sharedInstance().unregisterComponent(made);
    ProjectorPanel shown =
        new ProjectorPanel(ProjectorPanel.theme(theme, scale), words, made, scale);
    int width = (int) Math.round(height * WIDTH_OVER_HEIGHT);
    shown.setBounds(
        (size.width - width) / 2, (int) (size.height - height) / 2, width, (int) height);
    room.add(shown);
    drawing = made;
    panel = shown;
    refresh();
    room.revalidate();
    room.repaint();
  }

  private void refresh() {
    ProjectorPanel shown = panel;
    if (shown != null && workbench.ready()) {
      State state = workbench.shown();
      shown.show(state, ProjectorView.of(state, lesson.at(), presenter.asking(), words));
    }
  }

  /** The flame sways on the wall too. */
  void sway(double seconds) {
    if (drawing != null) {
      drawing.sway(seconds);
    }
  }

  private void keys() {
    key(KeyEvent.VK_SPACE, this::forward);
    key(KeyEvent.VK_PAGE_DOWN, this::forward);
    key(KeyEvent.VK_RIGHT, this::forward);
    key(KeyEvent.VK_PAGE_UP, this::back);
    key(KeyEvent.VK_LEFT, this::back);
    key(KeyEvent.VK_F1, help);
    key(KeyEvent.VK_ESCAPE, this::leave);
    key(KeyEvent.VK_F11, this::leave);
    key(KeyEvent.VK_F, this::freeze);
    key(KeyEvent.VK_P, this::point);
    key(KeyEvent.VK_PERIOD, this::blank);
    for (int k = 0; k < Question.MOST_ANSWERS; k++) {
      int answer = k;
      key(KeyEvent.VK_1 + k, () -> vote(answer));
      key(KeyEvent.VK_A + k, () -> vote(answer));
      KeyStroke less = KeyStroke.getKeyStroke(KeyEvent.VK_A + k, InputEvent.SHIFT_DOWN_MASK);
      key(less, () -> takeBackVote(answer));
    }
  }

  private void key(int code, Runnable action) {
    key(KeyStroke.getKeyStroke(code, 0), action);
  }

  private void key(KeyStroke stroke, Runnable action) {
    JComponent root = frame.getRootPane();
    Keys.bind(root, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, stroke, action);
    Keys.bind(root, JComponent.WHEN_IN_FOCUSED_WINDOW, stroke, action);
  }

  /** Without a demonstration the space bar stops the clock and lets it run, as in the window. */
  void forward() {
    if (lesson.at() != null) {
      presenter.forward();
      refresh();
    } else if (workbench.ready()) {
      workbench.want(
          new halfwave.gui.presentation.bench.Intent.Play(!workbench.shown().clock().running()));
    }
  }

  private void back() {
    presenter.back();
    refresh();
  }

  private void vote(int answer) {
    if (presenter.asking()) {
      lesson.vote(answer);
    }
  }

  private void takeBackVote(int answer) {
    if (presenter.asking()) {
      lesson.takeBackVote(answer);
    }
  }

  /** The class goes on seeing what it sees now. */
  void freeze() {
    if (panel != null) {
      notice.accept(words.text(panel.freeze() ? "projector.frozen" : "projector.live"));
      refresh();
    }
  }

  private void blank() {
    if (panel != null) {
      panel.blank();
    }
  }

  private void point() {
    pointing = !pointing;
    if (!pointing && panel != null) {
      panel.pointAt(null);
    }
  }

  /** For tests. */
  @Nullable ProjectorPanel panel() {
    return panel;
  }

  /** The ring follows the mouse over everything, and takes no click from what lies below. */
  private final class Pointer extends LayerUI<JPanel> {
    private static final long serialVersionUID = 1L;

    @Override
    public void installUI(JComponent c) {
      super.installUI(c);
      if (c instanceof JLayer<?> layer) {
        layer.setLayerEventMask(
            java.awt.AWTEvent.MOUSE_MOTION_EVENT_MASK | java.awt.AWTEvent.MOUSE_EVENT_MASK);
      }
    }

    @Override
    protected void processMouseMotionEvent(MouseEvent e, JLayer<? extends JPanel> layer) {
      follow(e);
    }

    private void follow(MouseEvent e) {
      Component over = e.getComponent();
      if (pointing && panel != null) {
        Point at = javax.swing.SwingUtilities.convertPoint(over, e.getPoint(), panel);
        panel.pointAt(at);
      }
    }
  }
}
