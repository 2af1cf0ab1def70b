package halfwave.gui.swing;

import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.RecoveryWords;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.presentation.desk.WorkAutosave;
import halfwave.gui.presentation.quiz.PracticeModel;
import halfwave.gui.presentation.quiz.QuizModel;
import halfwave.gui.swing.desk.DeskFiles;
import halfwave.gui.swing.desk.DeskPanel;
import halfwave.gui.swing.quiz.PracticePanel;
import halfwave.gui.swing.quiz.QuizPanel;
import halfwave.gui.swing.widget.FileChoices;
import halfwave.gui.swing.widget.FileQuestions;
import halfwave.gui.swing.widget.Theme;
import halfwave.io.quiz.QuizRecoveryFile;
import halfwave.io.quiz.RoutineRecoveryFile;
import halfwave.paper.PaperSize;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** The windows of the menu Quiz. */
final class QuizWindows {

  private final JFrame over;
  private final QuizModel quiz;
  private final PracticeModel practice;
  private final DeskModel desk;
  private final WorkAutosave<QuizRecoveryFile> autosave;
  private final WorkAutosave<RoutineRecoveryFile> routines;
  private final Supplier<PaperSize> size;
  private final FileChoices choices;
  private final Consumer<String> help;
  private final Examination examination;
  private final Runnable covers;
  private @Nullable Dress dress;
  private @Nullable SideWindow quizWindow;
  private @Nullable SideWindow practiceWindow;
  private @Nullable SideWindow deskWindow;
  private Runnable moves = () -> {};
  private Runnable practised = () -> {};
  private Runnable instructed = () -> {};

  /** What they are made of in one language and look. */
  private record Dress(Theme theme, Wording words) {}

  QuizWindows(
      JFrame over,
      QuizModel quiz,
      PracticeModel practice,
      DeskModel desk,
      Path settings,
      Executor background,
      Supplier<PaperSize> size,
      FileChoices choices,
      Consumer<String> help) {
    this.over = over;
    this.quiz = quiz;
    this.practice = practice;
    this.desk = desk;
    Executor screen = SwingUtilities::invokeLater;
    autosave =
        WorkAutosave.of(
            desk, new RecoveryFolder<>(settings, RecoveryFolder.QUIZ), background, screen);
    routines =
        WorkAutosave.of(
            practice.routine(),
            new RecoveryFolder<>(settings, RecoveryFolder.ROUTINE),
            background,
            screen);
    this.size = size;
    this.choices = choices;
    this.help = help;
    examination = new Examination(over, quiz, this::take);
    covers = quiz.subscribe(examination::follow);
  }

  /** Another language or look: what is open is made anew, the rest when it is opened. */
  void dress(Theme theme, Wording words) {
    dress = new Dress(theme, words);
    moves.run();
    practised.run();
    instructed.run();
    moves = () -> {};
    practised = () -> {};
    instructed = () -> {};
    quizWindow = SideWindow.anew(quizWindow, this::makeQuiz);
    practiceWindow = SideWindow.anew(practiceWindow, this::makePractice);
    deskWindow = SideWindow.anew(deskWindow, this::makeDesk);
  }

  private SideWindow makeQuiz() {
    Dress d = dress();
    QuizPanel panel = new QuizPanel(d.theme(), d.words(), quiz, choices);
    moves = quiz.subscribe(panel::refresh);
    return window("quiz", "quiz", d.words().text("quiz.title"), panel, d.theme())
        .asking(examination::mayHide);
  }

  private SideWindow makePractice() {
    Dress d = dress();
    PracticePanel panel = new PracticePanel(d.theme(), d.words(), practice, files(d));
    practised = practice.subscribe(panel::refresh);
    practice.open();
    return window("practice", "quiz", d.words().text("practice.title"), panel, d.theme());
  }

  private DeskFiles files(Dress d) {
    return new DeskFiles(over, d.words(), size, choices);
  }

  private SideWindow makeDesk() {
    Dress d = dress();
    DeskPanel panel = new DeskPanel(d.theme(), d.words(), desk, files(d));
    instructed = desk.subscribe(panel::refresh);
    desk.begin();
    return window("desk", "desk", d.words().text("desk.title"), panel, d.theme());
  }

  private SideWindow window(String name, String topic, String title, JPanel content, Theme theme) {
    return new SideWindow(
        over, name, title, content, () -> help.accept(topic), theme.px(1240), theme.px(780));
  }

  /** The menu in the main window. */
  JMenu menu() {
    JMenu menu = new JMenu(dress().words().text("menu.quiz"));
    menu.setName("menu.quiz");
    menu.setMnemonic(KeyEvent.VK_Q);
    menu.add(item("menu.take", this::take));
    menu.add(item("menu.practise", this::practise));
    menu.addSeparator();
    menu.add(item("menu.desk", this::instruct));
    return menu;
  }

  private JMenuItem item(String key, Runnable action) {
    JMenuItem item = new JMenuItem(dress().words().text(key));
    item.setName(key);
    item.addActionListener(e -> action.run());
    return item;
  }

  private Dress dress() {
    if (dress == null) {
      throw new IllegalStateException("not dressed yet");
    }
    return dress;
  }

  private void take() {
    quizWindow = SideWindow.shown(quizWindow, this::makeQuiz);
  }

  private void practise() {
    practiceWindow = SideWindow.shown(practiceWindow, this::makePractice);
  }

  private void instruct() {
    deskWindow = SideWindow.shown(deskWindow, this::makeDesk);
  }

  /** A quiz from outside. */
  void take(Path file) {
    take();
    quiz.open(file);
  }

  /** Covers the main window while somebody is examined; told after each of its looks. */
  Examination examination() {
    return examination;
  }

  /** Whether the program may end: what was written is saved, or nobody minds. */
  boolean mayLeave() {
    DeskFiles files = files(dress());
    return files.mayLeave(over, desk)
        && files.mayLeave(over, practice.routine().unsaved(), "routine.unsaved", "routine.title");
  }

  /** Whether something is played or written, for tests. */
  boolean busy() {
    return quiz.busy()
        || practice.busy()
        || practice.routine().busy()
        || desk.busy()
        || desk.playing();
  }

  /** Work may have been left behind by a program that did not end as it should. */
  void look() {
    autosave.look(
        found ->
            ask(
                RecoveryWords.quiz(found, dress().words()),
                "recovery.title-quiz",
                () -> {
                  autosave.bringBack(found);
                  instruct();
                },
                autosave::leave),
        this::lookForRoutine);
  }

  private void lookForRoutine() {
    routines.look(
        found ->
            ask(
                RecoveryWords.routine(found, dress().words()),
                "recovery.title-routine",
                () -> {
                  routines.bringBack(found);
                  practice.write(true);
                  practise();
                },
                routines::leave),
        () -> {});
  }

  private void ask(String question, String title, Runnable back, Runnable leave) {
    Wording words = dress().words();
    new FileQuestions(words).bringBack(over, question, words.text(title), back, leave);
  }

  /** Time has passed on the wall (ms, of any clock that does not go back). */
  void tick(long nowMillis) {
    autosave.tick(nowMillis);
    routines.tick(nowMillis);
  }

  /** Nobody waits any more. */
  void end() {
    autosave.end();
    routines.end();
    quiz.release();
    covers.run();
    moves.run();
    practised.run();
    instructed.run();
    if (quizWindow != null) {
      quizWindow.dispose();
    }
    if (practiceWindow != null) {
      practiceWindow.dispose();
    }
    if (deskWindow != null) {
      deskWindow.dispose();
    }
  }
}
