package halfwave.gui.swing;

import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.gui.presentation.Autosave;
import halfwave.gui.presentation.BarView;
import halfwave.gui.presentation.DesktopMotion;
import halfwave.gui.presentation.Intent;
import halfwave.gui.presentation.LessonModel;
import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.Settings;
import halfwave.gui.presentation.SettingsFile;
import halfwave.gui.presentation.State;
import halfwave.gui.presentation.WhyModel;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.Workbench;
import halfwave.instrument.MeterFunction;
import halfwave.lesson.Question;
import halfwave.paper.PaperSize;
import halfwave.picture.DrawnPart;
import halfwave.picture.DrawnView;
import halfwave.picture.Palette;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The window: puts panels together, ticks the clock, remembers. Belongs to the event thread. */
public final class Window {

  private static final int TICK_MILLIS = 60;

  private final SettingsFile file;
  private final Workbench workbench;
  private final LessonModel lesson;
  private final Editing editing;
  private final Executor background;
  private final WhyModel why;
  private final Autosave autosave;
  private final KeyEventDispatcher lessonKeys = this::lessonKey;
  private final Timer ticker;
  private final boolean desktopMoves =
      DesktopMotion.moves(
          Toolkit.getDefaultToolkit().getDesktopProperty(DesktopMotion.PROPERTY));
  private final JFrame frame = new JFrame();
  private Settings settings;
  private Wording words;
  private Theme theme;
  private BenchFiles files;

  private @Nullable Projector projector;

  /** Its window stays open in another language or look. */
  private @Nullable Help help;

  private Panels panels;
  private DrawnView view = DrawnView.ABOVE;
  private int tab;

  /** The part whose card is open: it stays open in another language or look. */
  private @Nullable DrawnPart lastOpened;

  private long lastNanos;
  private long refusals;
  private Runnable unsubscribe = () -> {};

  /** The panels of one language and look. */
  private record Panels(
      TopBar bar,
      DrawingPanel drawing,
      MeterPanel meter,
      BoardPanel board,
      ChartsPanel charts,
      ConditionPanel condition,
      WhyPanel why,
      FaultPanel faults,
      WorkPanel work,
      PartPanel part,
      LessonPanel lesson,
      LessonTab desk,
      List<Covered> covered,
      JTabbedPane tabs,
      JLabel notice) {

    void show(State state) {
      bar.show(state);
      drawing.show(state);
      meter.show(state);
      board.show(state);
      charts.show(state);
      covered.forEach(c -> c.cover(state.sealed()));
      desk.show(state);
      tab(state);
    }

    /** Of the tabs only the one in front costs time. */
    void tab(State state) {
      if (condition.isShowing()) {
        condition.show(state);
      } else if (faults.isShowing()) {
        faults.show(state);
      } else if (work.isShowing()) {
        work.show(state);
      } else if (part.isShowing()) {
        part.show(state);
      }
    }
  }

  /**
   * A window that is not shown yet.
   *
   * @param file where settings are kept
   * @param engine runs computations, one after the other
   * @param background runs charts and explanations and keeps files, one after the other
   */
  public Window(SettingsFile file, Executor engine, Executor background) {
    this.file = file;
    this.background = background;
    settings = file.read();
    String tag = settings.language();
    Locale locale = tag == null ? Locale.getDefault() : Locale.forLanguageTag(tag);
    words = Wording.of(locale, settings.units());
    workbench = new Workbench(engine, SwingUtilities::invokeLater, this::trouble);
    lesson = new LessonModel(workbench, engine, SwingUtilities::invokeLater);
    editing =
        new Editing(
            frame,
            workbench,
            lesson,
            background,
            () -> settings,
            how -> remember(how.apply(settings)),
            new RecoveryFolder<>(file.folder(), RecoveryFolder.DRAFT),
            () -> help("editor"),
            this::trouble);
    why = new WhyModel(background, SwingUtilities::invokeLater);
    autosave =
        new Autosave(
            new RecoveryFolder<>(file.folder(), RecoveryFolder.BENCH),
            background,
            SwingUtilities::invokeLater);
    theme = theme();
    files = new BenchFiles(frame, words, workbench, this::used, () -> settings.lastFolder());
    panels = build();
    KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventDispatcher(lessonKeys);
    ticker = new Timer(TICK_MILLIS, e -> tick());
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            quit();
          }
        });
  }

  private Theme theme() {
    JComponent.setDefaultLocale(words.locale());
    return Theme.install(settings.dark() ? Palette.DARK : Palette.LIGHT, settings.textRatio());
  }

  /** Opens it with a running furnace. */
  public void open() {
    var bench = ShippedBenches.standard();
    workbench.want(new Intent.Open(bench, ShippedBoards.standard(bench.design().ignition()), null));
    frame.setMinimumSize(new Dimension(1000, 680));
    // larger type needs more room, where there is any
    frame.setBounds(RememberedBounds.of(settings.frame(), theme.px(1440), theme.px(900)));
    frame.setVisible(true);
    panels.drawing().requestFocusInWindow();
    lastNanos = System.nanoTime();
    ticker.start();
    SwingUtilities.invokeLater(
        () -> {
          if (!settings.cautionsSeen()) {
            new Help(frame, theme, words).first();
            remember(settings.withCautionsSeen());
          }
          // one question after the other
          autosave.look(left -> files.askBack(left, autosave), editing::look);
        });
  }

  /** The frame, for tests that work with the window. */
  public JFrame frame() {
    return frame;
  }

  /** The workbench, for tests that work with the window. */
  public Workbench workbench() {
    return workbench;
  }

  private boolean moves() {
    return settings.moves(desktopMoves);
  }

  private void tick() {
    long now = System.nanoTime();
    long millis = (now - lastNanos) / 1_000_000;
    lastNanos += millis * 1_000_000;
    if (workbench.ready() && workbench.shown().clock().running()) {
      workbench.want(new Intent.Pass(millis));
      if (moves()) {
        panels.drawing().sway(millis / 1000.0);
        if (projector != null) {
          projector.sway(millis / 1000.0);
        }
      }
    }
    if (workbench.ready()) {
      explain(now / 1_000_000);
      autosave.tick(workbench.shown(), now / 1_000_000);
    }
    editing.tick(now / 1_000_000);
  }

  /** Explanations cost time: they are made while somebody looks. */
  private void explain(long nowMillis) {
    if (panels.why().isShowing()) {
      why.want(workbench.shown());
    } else {
      why.rest();
    }
    why.tick(nowMillis);
  }

  private void show(State state) {
    panels.show(state);
    frame.setTitle(BarView.of(state, words).title());
    var refusal = state.refusal();
    if (refusal == null) {
      panels.notice().setText(" ");
    } else if (refusal.number() != refusals) {
      refusals = refusal.number();
      panels.notice().setText(Refusals.text(refusal, words));
    }
  }

  private Panels build() {
    unsubscribe.run();
    int chart = 0;
    if (panels != null) {
      chart = panels.charts().chart();
      panels.charts().close();
    }
    TopBar bar = new TopBar(theme, words, workbench);
    PartPanel part = new PartPanel(theme, words, workbench);
    if (lastOpened != null) {
      part.open(lastOpened);
    }
    JTabbedPane tabs = new JTabbedPane();
    tabs.setFont(theme.tab());
    Covered parts = covered(part);
    DrawingPanel drawing =
        new DrawingPanel(theme, words, workbench, p -> openPart(part, tabs, parts, p));
    drawing.view(view);
    drawing.motion(moves());
    MeterPanel meter = new MeterPanel(theme, words, workbench);
    BoardPanel board = new BoardPanel(theme, words);
    ConditionPanel condition = new ConditionPanel(theme, words, workbench);
    WhyPanel reasons = new WhyPanel(theme, words, why, drawing::light);
    FaultPanel faults = new FaultPanel(theme, words, workbench);
    WorkPanel work = new WorkPanel(theme, words, workbench);
    List<Covered> covered = List.of(covered(condition), covered(reasons), covered(faults), parts);
    tabs.addTab(words.text("tab.condition"), covered.get(0));
    tabs.addTab(words.text("tab.why"), covered.get(1));
    tabs.addTab(words.text("tab.faults"), covered.get(2));
    tabs.addTab(words.text("tab.work"), work);
    tabs.addTab(words.text("tab.part"), parts);
    LessonPanel player =
        new LessonPanel(theme, words, lesson, drawing::light, files::mayLeave, editing);
    LessonTab desk = new LessonTab(theme, player, seal(), seal(), () -> lesson.at() != null);
    editing.dress(theme, words, player, () -> tabs.setSelectedComponent(desk), files::mayLeave);
    tabs.addTab(words.text("tab.lesson"), desk);
    tabs.setName("tabs");
    tabs.setSelectedIndex(tab);
    tabs.addChangeListener(
        e -> {
          tab = tabs.getSelectedIndex();
          if (workbench.ready() && panels != null) {
            panels.tab(workbench.shown());
          }
          if (tabs.getSelectedComponent() == desk) {
            player.relight();
          }
        });
    JLabel notice = Lettering.label(" ", theme.body(), theme.palette().danger());
    notice.setName("notice");
    ChartsPanel charts =
        new ChartsPanel(theme, words, workbench, background, this::trouble, notice::setText);
    charts.chart(chart);
    Panels made =
        new Panels(
            bar, drawing, meter, board, charts, condition, reasons, faults, work, part, player,
            desk, covered, tabs, notice);
    lay(made);
    panels = made;
    help = Help.anew(help, frame, theme, words);
    JMenuBar menus =
        new Menus(
                words,
                workbench,
                files,
                settings,
                moves(),
                () -> settings.recent(),
                this::change,
                this::view,
                this::project,
                help,
                this::quit)
            .bar();
    menus.add(paperMenu(made), 1);
    menus.add(editing.menu(), menus.getMenuCount() - 1);
    frame.setJMenuBar(menus);
    keys(made);
    leaveFocus(bar);
    leaveFocus(meter);
    leaveFocus(player);
    Runnable states = workbench.subscribe(this::show);
    Runnable steps =
        lesson.subscribe(
            () -> {
              player.refresh();
              if (workbench.ready()) {
                desk.show(workbench.shown());
              }
            });
    Runnable answers = why.subscribe(reasons::refresh);
    unsubscribe =
        () -> {
          states.run();
          steps.run();
          answers.run();
        };
    return made;
  }

  private JMenu paperMenu(Panels p) {
    LongWork work = new LongWork(frame, words, p.notice()::setText, this::trouble);
    PaperFiles paper =
        new PaperFiles(
            words,
            theme,
            workbench,
            () -> view,
            p.charts(),
            new TargetChooser(frame, words),
            work,
            new Printing(frame, words, work),
            new LessonChoice(frame, words, lesson),
            this::sheet);
    return new PaperMenu(
            words,
            paper,
            workbench::ready,
            sheet(),
            size -> remember(settings.withSheet(size)))
        .menu();
  }

  private PaperSize sheet() {
    PaperSize chosen = settings.sheet();
    return chosen == null ? PaperSize.usual(Locale.getDefault()) : chosen;
  }

  private void lay(Panels p) {
    JPanel all = new JPanel(new BorderLayout());
    all.setBackground(theme.palette().ground());
    all.add(p.bar(), BorderLayout.NORTH);
    JPanel body =
        new JPanel(
            new MigLayout(
                "insets 0 14 6 14, gap 10, fill, novisualpadding",
                "[grow 100,fill]["
                    + theme.px(400)
                    + ":"
                    + theme.px(430)
                    + ":"
                    + theme.px(520)
                    + ",fill]",
                "[grow,fill]"));
    body.setOpaque(false);
    Plate drawing = new Plate(theme, words.text("drawing.title"));
    drawing.add(drawingHead(), BorderLayout.NORTH);
    drawing.add(p.drawing(), BorderLayout.CENTER);
    drawing.setMinimumSize(new Dimension(theme.px(300), theme.px(250)));
    JSplitPane left = new Divided(theme, words.text("chart.split"), drawing, p.charts());
    body.add(left, "wmin 0, hmin 0");
    Column right = Column.filling(theme);
    right.add(p.meter(), "wmin 0, wrap");
    right.add(p.board(), "wmin 0, wrap");
    Plate tabs = Plate.around(theme, words.text("tab.condition"), p.tabs());
    right.add(tabs, "wmin 0, grow, h " + theme.px(300) + ":" + theme.px(300) + ":");
    body.add(right.scrolled(), "wmin 0, hmin 0");
    SwingUtilities.invokeLater(() -> right.scrollRectToVisible(new Rectangle(0, 0, 1, 1)));
    all.add(body, BorderLayout.CENTER);
    JPanel foot = new JPanel(new MigLayout("insets 0 18 6 18"));
    foot.setOpaque(false);
    foot.add(p.notice());
    all.add(foot, BorderLayout.SOUTH);
    frame.setContentPane(all);
  }

  private JPanel drawingHead() {
    JPanel head = new JPanel(new MigLayout("insets 0, gap 12", "[][grow,fill]"));
    head.setOpaque(false);
    var p = theme.palette();
    head.add(Lettering.label(words.text("drawing.title"), theme.heading(), p.ink()));
    head.add(Lettering.paragraph(words.text("drawing.hint"), theme.note(), p.softInk()), "wmin 0");
    return head;
  }

  private Covered covered(JComponent panel) {
    return new Covered(theme, panel, words.text("seal.covered"));
  }

  /** Puts the arrangement for a class on the wall, or takes it away. */
  private void project() {
    project(Projector.screen(frame));
  }

  /** The same in a place that a test chooses. */
  void project(Rectangle place) {
    if (projector != null) {
      projector.close();
      projector = null;
    } else if (workbench.ready()) {
      projector =
          new Projector(
              theme,
              words,
              workbench,
              lesson,
              text -> panels.notice().setText(text),
              () -> help("with-a-class"),
              () -> {
                projector = null;
                panels.lesson().notes(false);
              });
      projector.open(place);
    }
    panels.lesson().notes(projector != null);
  }

  private void help(String topic) {
    if (help != null) {
      help.open(topic);
    }
  }

  /** The demonstration, for tests. */
  LessonModel lesson() {
    return lesson;
  }

  /** For tests that look at the wall. */
  @Nullable Projector projector() {
    return projector;
  }

  private SealPanel seal() {
    return new SealPanel(theme, words, workbench, System::nanoTime);
  }

  /** With one key, and before anybody sees the other tabs. */
  private void hide() {
    panels.tabs().setSelectedComponent(panels.desk());
    if (lesson.at() == null) {
      workbench.want(new Intent.Hide());
    }
  }

  private void openPart(PartPanel part, JTabbedPane tabs, Covered around, DrawnPart opened) {
    lastOpened = opened;
    tabs.setSelectedComponent(around);
    part.open(opened);
  }

  private void view(DrawnView other) {
    view = other;
    panels.drawing().view(other);
  }

  private void used(Path path) {
    remember(settings.withRecent(path.toAbsolutePath()));
  }

  private void remember(Settings other) {
    settings = other;
    file.write(other);
  }

  /** Another language, look or size: the panels are made anew around the same bench. */
  private void change(UnaryOperator<Settings> how) {
    Settings other = how.apply(settings);
    if (other.equals(settings)) {
      return;
    }
    remember(other);
    String tag = other.language();
    words = Wording.of(tag == null ? words.locale() : Locale.forLanguageTag(tag), other.units());
    theme = theme();
    files = new BenchFiles(frame, words, workbench, this::used, () -> settings.lastFolder());
    boolean projected = projector != null;
    if (projected) {
      project();
    }
    // before the panels are made: theirs are of the new look already, and set as they should be
    SwingUtilities.updateComponentTreeUI(frame);
    build();
    if (projected) {
      project();
    }
    frame.revalidate();
    frame.repaint();
  }

  private void quit() {
    editing.leave(this::quitBench);
  }

  private void quitBench() {
    if (files.mayLeave()) {
      remember(settings.withFrame(RememberedBounds.kept(frame.getBounds())));
      close();
    }
  }

  /** Without a question. */
  void close() {
    ticker.stop();
    autosave.end();
    if (projector != null) {
      projector.close();
    }
    editing.end();
    KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventDispatcher(lessonKeys);
    frame.dispose();
  }

  private void trouble(Throwable e) {
    ticker.stop();
    // whoever looks into it needs to know what it was
    Thread here = Thread.currentThread();
    here.getUncaughtExceptionHandler().uncaughtException(here, e);
    JOptionPane.showMessageDialog(
        frame, words.text("trouble.text"), words.text("trouble.title"), JOptionPane.ERROR_MESSAGE);
    ticker.start();
  }

  private void keys(Panels p) {
    JComponent root = frame.getRootPane();
    key(root, KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0), p.bar()::togglePlay, true);
    key(root, KeyStroke.getKeyStroke(KeyEvent.VK_PERIOD, 0), () -> step(1000L), true);
    key(
        root,
        KeyStroke.getKeyStroke(KeyEvent.VK_PERIOD, InputEvent.SHIFT_DOWN_MASK),
        () -> step(null),
        true);
    key(root, KeyStroke.getKeyStroke('+'), () -> p.bar().faster(1), true);
    key(root, KeyStroke.getKeyStroke('-'), () -> p.bar().faster(-1), true);
    key(root, KeyStroke.getKeyStroke(KeyEvent.VK_F2, 0), p.bar()::toggleCall, false);
    key(root, KeyStroke.getKeyStroke(KeyEvent.VK_F3, 0), p.bar()::togglePower, false);
    key(root, KeyStroke.getKeyStroke(KeyEvent.VK_F4, 0), p.meter()::openSpots, false);
    key(root, KeyStroke.getKeyStroke(KeyEvent.VK_F8, 0), this::hide, false);
    key(
        root,
        KeyStroke.getKeyStroke(KeyEvent.VK_F11, InputEvent.SHIFT_DOWN_MASK),
        () -> {
          if (projector != null) {
            projector.freeze();
          }
        },
        false);
    key(root, KeyStroke.getKeyStroke(KeyEvent.VK_F6, 0), () -> nextPanel(1), false);
    key(
        root,
        KeyStroke.getKeyStroke(KeyEvent.VK_F6, InputEvent.SHIFT_DOWN_MASK),
        () -> nextPanel(-1),
        false);
    for (MeterFunction function : MeterFunction.values()) {
      int digit = KeyEvent.VK_0 + (function.ordinal() + 1) % 10;
      key(
          root,
          KeyStroke.getKeyStroke(digit, InputEvent.CTRL_DOWN_MASK),
          () -> p.meter().turn(function),
          false);
    }
    for (int k = 0; k < Question.MOST_ANSWERS; k++) {
      int answer = k;
      key(root, KeyStroke.getKeyStroke((char) ('1' + k)), () -> lesson.vote(answer), true);
      key(root, KeyStroke.getKeyStroke((char) ('a' + k)), () -> lesson.vote(answer), true);
    }
    chartKeys(root, p.charts());
    for (int k = 0; k < p.tabs().getTabCount(); k++) {
      int index = k;
      key(
          root,
          KeyStroke.getKeyStroke(KeyEvent.VK_1 + k, InputEvent.ALT_DOWN_MASK),
          () -> {
            p.tabs().setSelectedIndex(index);
            p.tabs().getSelectedComponent().requestFocusInWindow();
          },
          false);
    }
  }

  /**
   * In a demonstration the keys of a presenter's remote belong to it, whatever has the focus, lest
   * a step also press a button.
   */
  private boolean lessonKey(KeyEvent e) {
    boolean presenting =
        frame.isFocused()
            && lesson.at() != null
            && panels.lesson().isShowing()
            && !(e.getComponent() instanceof JTextComponent);
    if (!presenting || e.getModifiersEx() != 0) {
      return false;
    }
    boolean forward =
        e.getKeyCode() == KeyEvent.VK_SPACE || e.getKeyCode() == KeyEvent.VK_PAGE_DOWN;
    boolean back = e.getKeyCode() == KeyEvent.VK_PAGE_UP;
    if (e.getID() == KeyEvent.KEY_PRESSED && forward) {
      lesson.forward();
    } else if (e.getID() == KeyEvent.KEY_PRESSED && back) {
      lesson.back();
    }
    return forward || back;
  }

  /** A click on a button leaves the keys where they were. */
  private static void leaveFocus(Container within) {
    for (Component c : within.getComponents()) {
      if (c instanceof AbstractButton || c instanceof JComboBox) {
        ((JComponent) c).setRequestFocusEnabled(false);
      } else if (c instanceof Container container) {
        leaveFocus(container);
      }
    }
  }

  private void chartKeys(JComponent root, ChartsPanel charts) {
    for (int k = 0; k < charts.count(); k++) {
      int index = k;
      int held = InputEvent.ALT_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK;
      key(root, KeyStroke.getKeyStroke(KeyEvent.VK_1 + k, held), () -> charts.chart(index), false);
    }
  }

  private void step(@Nullable Long millis) {
    workbench.want(new Intent.StepOn(millis));
  }

  /**
   * Binds a key.
   *
   * @param plain whether it is a key that types: then it is left to fields and buttons
   */
  private void key(JComponent root, KeyStroke stroke, Runnable action, boolean plain) {
    Keys.bind(
        root,
        JComponent.WHEN_IN_FOCUSED_WINDOW,
        stroke,
        () -> {
          Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
          // until the first bench is there, no key has anything to act on
          if (workbench.ready() && !(plain && owner instanceof JTextComponent)) {
            action.run();
          }
        });
  }

  private void nextPanel(int by) {
    List<JComponent> stops =
        List.of(panels.bar(), panels.drawing(), panels.meter(), panels.charts(), panels.tabs());
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    int at = 0;
    for (int k = 0; k < stops.size(); k++) {
      if (owner != null && SwingUtilities.isDescendingFrom(owner, stops.get(k))) {
        at = k;
      }
    }
    JComponent to = stops.get(Math.floorMod(at + by, stops.size()));
    if (!to.requestFocusInWindow() || !to.isFocusable() || to instanceof JPanel) {
      to.transferFocus();
    }
  }
}
