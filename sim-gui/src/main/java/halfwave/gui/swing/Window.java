package halfwave.gui.swing;

import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.Settings;
import halfwave.gui.presentation.SettingsFile;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Autosave;
import halfwave.gui.presentation.bench.BarView;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.presentation.evidence.WhyModel;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.gui.swing.editor.Editing;
import halfwave.gui.swing.editor.LessonChoice;
import halfwave.gui.swing.evidence.EvidencePanel;
import halfwave.gui.swing.evidence.WhyPanel;
import halfwave.gui.swing.lesson.LessonKeys;
import halfwave.gui.swing.lesson.Projector;
import halfwave.gui.swing.lesson.Wall;
import halfwave.gui.swing.widget.RememberedBounds;
import halfwave.gui.swing.widget.TargetChooser;
import halfwave.gui.swing.widget.Theme;
import halfwave.io.BadInputException;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.io.quiz.FileKind;
import halfwave.picture.Palette;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.ToolTipManager;
import javax.swing.WindowConstants;
import org.jspecify.annotations.Nullable;

/** The window: opens, ticks the clock, remembers, ends. Belongs to the event thread. */
public final class Window {

  private static final int TICK_MILLIS = 60;

  private final Preferences preferences;
  private final Models models;
  private final Workbench workbench;
  private final LessonModel lesson;
  private final Editing editing;
  private final Tools tools;
  private final QuizWindows quizzes;
  private final Autosave autosave;
  private final LessonKeys lessonKeys;
  private final Wall wall;
  private final Timer ticker;
  private final JFrame frame = new JFrame();
  private Wording words;
  private Theme theme;
  private BenchFiles files;

  /** Its window stays open in another language or look. */
  private @Nullable Help help;

  /** A file that is opened when the first bench is there. */
  private @Nullable Path waiting;

  private Panels panels;
  private long lastNanos;
  private long refusals;
  private Runnable unsubscribe = () -> {};

  /**
   * A window that is not shown yet.
   *
   * @param file where settings are kept
   * @param engine runs computations, one after the other
   * @param background runs charts and explanations and keeps files, one after the other
   */
  public Window(SettingsFile file, Executor engine, Executor background) {
    preferences = new Preferences(file);
    words = preferences.words(Locale.getDefault());
    workbench = new Workbench(engine, SwingUtilities::invokeLater, this::trouble);
    // reckoned while the panels are made
    var bench = ShippedBenches.standard();
    workbench.want(new Intent.Open(bench, ShippedBoards.standard(bench.design().ignition()), null));
    lesson = new LessonModel(workbench, engine, SwingUtilities::invokeLater);
    ModelMaker maker = new ModelMaker(this::trouble);
    models =
        new Models(
            workbench,
            lesson,
            new WhyModel(background, SwingUtilities::invokeLater),
            maker.evidence(),
            background,
            this::trouble);
    editing =
        new Editing(
            frame,
            new EditorModel(
                workbench, lesson, background, SwingUtilities::invokeLater, this::trouble),
            lesson,
            background,
            preferences.choices(),
            preferences::now,
            how -> preferences.keep(how.apply(preferences.now())),
            new RecoveryFolder<>(preferences.folder(), RecoveryFolder.DRAFT),
            () -> help("editor"));
    tools =
        new Tools(
            frame, workbench, preferences.choices(), maker.match(), maker.forecast(), this::help);
    quizzes = quizzes(maker);
    autosave =
        new Autosave(
            new RecoveryFolder<>(preferences.folder(), RecoveryFolder.BENCH),
            background,
            SwingUtilities::invokeLater);
    wall = new Wall(frame, workbench, this::projector, on -> panels().lesson().notes(on));
    lessonKeys = new LessonKeys(lesson, () -> frame.isFocused() && panels().lesson().isShowing());
    theme = theme();
    files = new BenchFiles(frame, words, workbench, preferences::used, preferences.choices());
    panels = build(Front.of(preferences.now().place()));
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

  /**
   * Reads letters and look, which takes a while the first time and needs no settings. Only on the
   * event thread.
   */
  public static void load() {
    Theme.load();
  }

  private QuizWindows quizzes(ModelMaker maker) {
    return new QuizWindows(
        frame,
        maker.quiz(),
        maker.practice(preferences.folder()),
        maker.desk(),
        preferences.folder(),
        models.background(),
        preferences::sheet,
        preferences.choices(),
        this::help);
  }

  private Panels panels() {
    return panels;
  }

  private Theme theme() {
    JComponent.setDefaultLocale(words.locale());
    Settings settings = preferences.now();
    return Theme.install(settings.dark() ? Palette.DARK : Palette.LIGHT, settings.textRatio());
  }

  /**
   * Opens it with a running furnace.
   *
   * @param given a file of any of the program's own kinds that is opened in it, or null
   */
  public void open(@Nullable Path given) {
    frame.setIconImages(AppIcon.images());
    frame.setMinimumSize(new Dimension(1000, 680));
    // larger type needs more room, where there is any
    Settings settings = preferences.now();
    frame.setBounds(RememberedBounds.of(settings.place().frame(), theme.px(1440), theme.px(900)));
    frame.setVisible(true);
    panels.drawing().requestFocusInWindow();
    lastNanos = System.nanoTime();
    ticker.start();
    // who opens their tab finds them read
    models.background().execute(ShippedDemonstrations::all);
    SwingUtilities.invokeLater(
        () -> {
          if (!settings.cautionsSeen()) {
            new Help(frame, theme, words).first();
            preferences.keep(settings.withCautionsSeen());
          }
          // one question after the other
          autosave.look(left -> files.askBack(left, autosave), () -> editing.look(quizzes::look));
          waiting = given;
          Late.make(panels.late());
        });
  }

  /** A file from outside, as soon as there is a bench that a demonstration can come back to. */
  private void openGiven(Path given) {
    waiting = null;
    try {
      switch (FileKind.of(given)) {
        case BENCH -> files.openIfAllowed(given);
        case DEMONSTRATION -> editing.show(given);
        case QUIZ -> quizzes.take(given);
      }
    } catch (BadInputException e) {
      JOptionPane.showMessageDialog(
          frame, e.line(words.sentences()), frame.getTitle(), JOptionPane.ERROR_MESSAGE);
    }
  }

  /** The frame, for tests that work with the window. */
  public JFrame frame() {
    return frame;
  }

  /** The workbench, for tests that work with the window. */
  public Workbench workbench() {
    return workbench;
  }

  /** The demonstration, for tests. */
  LessonModel lesson() {
    return lesson;
  }

  /** Whether all panels are made, for tests. */
  boolean whole() {
    return panels.late().stream().allMatch(l -> l.made().isPresent());
  }

  /** Whether something of the menu Quiz is played or written, for tests. */
  boolean quizBusy() {
    return quizzes.busy();
  }

  /** The picture on the wall, for tests. */
  @Nullable Projector projector() {
    return wall.shown();
  }

  /** Puts the picture on the wall in a place that a test chooses, or takes it away. */
  void project(Rectangle place) {
    wall.turn(place);
  }

  private Projector projector(Runnable closed) {
    return new Projector(
        theme,
        words,
        workbench,
        lesson,
        text -> panels.notice().tell(text),
        () -> help("with-a-class"),
        closed);
  }

  private void help(String topic) {
    if (help != null) {
      help.open(topic);
    }
  }

  private void tick() {
    long now = System.nanoTime();
    long millis = (now - lastNanos) / 1_000_000;
    lastNanos += millis * 1_000_000;
    if (workbench.ready() && workbench.shown().clock().running()) {
      workbench.want(new Intent.Pass(millis));
      if (preferences.moves()) {
        panels.drawing().sway(millis / 1000.0);
        wall.sway(millis / 1000.0);
      }
    }
    if (workbench.ready()) {
      explain(now / 1_000_000);
      autosave.tick(workbench.shown(), now / 1_000_000);
      if (waiting != null) {
        openGiven(waiting);
      }
    }
    editing.tick(now / 1_000_000);
    quizzes.tick(now / 1_000_000);
    if (quizzes.examination().covers() && wall.shown() != null) {
      wall.turn();
    }
  }

  /** Explanations cost time: they are made while somebody looks. */
  private void explain(long nowMillis) {
    if (panels.why().isShowing()) {
      models.why().want(workbench.shown());
    } else {
      models.why().rest();
    }
    models.why().tick(nowMillis);
  }

  private void show(State state) {
    panels.show(state);
    frame.setTitle(BarView.of(state, words).title());
    var refusal = state.refusal();
    if (refusal == null) {
      panels.notice().accept();
    } else if (refusal.number() != refusals) {
      refusals = refusal.number();
      panels.notice().refuse(Refusals.text(refusal, words));
    }
  }

  private Panels build(Front front) {
    unsubscribe.run();
    Panels made = new PanelMaker(theme, words, models).panels(front, editing, files);
    panels = made;
    made.drawing().motion(preferences.moves());
    frame.setContentPane(WindowSheet.of(theme, words, made));
    help = Help.anew(help, frame, theme, words);
    LongWork work = new LongWork(frame, words, made.notice()::tell, this::trouble);
    tools.dress(theme, words, files, new TargetChooser(frame, words, preferences.choices()), work);
    quizzes.dress(theme, words);
    Menus menus = menus(made, help);
    frame.setJMenuBar(bar(made, menus));
    quizzes.examination().dress(theme, words, menus.examinationBar());
    new Shortcuts(frame.getRootPane(), models, wall, made).bind();
    Shortcuts.leaveFocus(made.bar());
    Shortcuts.leaveFocus(made.meter());
    Shortcuts.leaveFocus(made.lesson());
    teach(made);
    Runnable states = workbench.subscribe(this::show);
    Runnable steps =
        lesson.subscribe(
            () -> {
              teach(made);
              made.lesson().refresh();
              if (workbench.ready()) {
                made.desk().show(workbench.shown());
              }
            });
    Runnable answers = models.why().subscribe(() -> made.why().made().ifPresent(WhyPanel::refresh));
    Runnable evidence =
        models.evidence().subscribe(() -> made.evidence().made().ifPresent(EvidencePanel::refresh));
    unsubscribe =
        () -> {
          states.run();
          steps.run();
          answers.run();
          evidence.run();
          made.charts().close();
        };
    return made;
  }

  private void teach(Panels p) {
    p.teach(theme, lesson.at() != null, frame.getHeight());
  }

  private Menus menus(Panels p, Help opens) {
    return new Menus(
        words,
        workbench,
        files,
        preferences.now(),
        preferences.moves(),
        () -> preferences.now().recent(),
        this::change,
        p.drawing(),
        wall::turn,
        opens,
        this::quit);
  }

  private JMenuBar bar(Panels p, Menus menus) {
    JMenuBar bar = menus.bar();
    bar.add(paperMenu(p), 1);
    bar.add(editing.menu(), bar.getMenuCount() - 1);
    bar.add(tools.menu(), bar.getMenuCount() - 1);
    bar.add(quizzes.menu(), bar.getMenuCount() - 1);
    return bar;
  }

  private JMenu paperMenu(Panels p) {
    LongWork work = new LongWork(frame, words, p.notice()::tell, this::trouble);
    PaperFiles paper =
        new PaperFiles(
            words,
            theme,
            workbench,
            p.drawing()::view,
            p.charts(),
            new TargetChooser(frame, words, preferences.choices()),
            work,
            new Printing(frame, words, work),
            new LessonChoice(frame, words, lesson, editing),
            preferences::sheet);
    return new PaperMenu(
            words,
            paper,
            workbench::ready,
            preferences.sheet(),
            size -> preferences.keep(preferences.now().withSheet(size)))
        .menu();
  }

  /** Another language, look or size: the panels are made anew around the same bench. */
  private void change(UnaryOperator<Settings> how) {
    Settings other = how.apply(preferences.now());
    if (other.equals(preferences.now())) {
      return;
    }
    preferences.keep(other);
    words = preferences.words(words.locale());
    theme = theme();
    files = new BenchFiles(frame, words, workbench, preferences::used, preferences.choices());
    boolean projected = wall.shown() != null;
    if (projected) {
      wall.turn();
    }
    Front front = panels.front();
    hush();
    // the old panels need no new look, and the new ones have it already
    frame.setJMenuBar(null);
    frame.setContentPane(new JPanel());
    SwingUtilities.updateComponentTreeUI(frame);
    Late.make(build(front).late());
    if (projected) {
      wall.turn();
    }
    frame.revalidate();
    frame.repaint();
  }

  /** What is said beside the pointer is said no more: it would hold the panels it is said of. */
  private void hush() {
    ToolTipManager.sharedInstance()
        .mousePressed(new MouseEvent(frame, MouseEvent.MOUSE_PRESSED, 0, 0, -1, -1, 1, false));
  }

  private void quit() {
    if (quizzes.examination().mayEnd()) {
      editing.leave(this::quitBench);
    }
  }

  private void quitBench() {
    if (quizzes.mayLeave() && files.mayLeave()) {
      Front front = panels.front();
      preferences.keep(
          preferences
              .now()
              .withPlace(
                  new Settings.Place(
                      RememberedBounds.kept(frame.getBounds()),
                      front.lower(),
                      front.tab(),
                      front.chart())));
      close();
    }
  }

  /** Without a question. */
  void close() {
    ticker.stop();
    autosave.end();
    wall.close();
    editing.end();
    tools.end();
    quizzes.end();
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
}
