package halfwave.gui.swing;

import halfwave.display.UnitSystem;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Settings;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.FaultCard;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.desk.SmallClass;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.gui.presentation.quiz.SmallQuiz;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.quiz.Rules;
import java.awt.Window;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/**
 * Paints the pictures of the documents into docs/screens. No test: it runs only when it is asked
 * for by name, see DEVELOPERS.md.
 */
final class GuidePictures {

  private static final Path PICTURES = Path.of("..", "docs", "screens");

  private static final List<String> LEARNERS =
      List.of("A-1", "B-2", "C-3", "D-4", "E-5", "F-6", "G-7", "H-8", "I-9", "J-10");

  /** What comes from the background by itself has come (ms). */
  private static final int COMES_MILLIS = 8000;

  @Test
  void paint() throws Exception {
    try (OpenWindow open = window(OpenWindow.PLAIN.withDark(true))) {
      new Shots(open, PICTURES).window("dark");
    }
    try (OpenWindow open = window(OpenWindow.PLAIN)) {
      bench(open, new Shots(open, PICTURES));
    }
    // so high that causes and what to check next are in sight
    try (OpenWindow open = window(OpenWindow.PLAIN, 1300)) {
      evidence(open, new Shots(open, PICTURES));
    }
    try (OpenWindow open = window(OpenWindow.PLAIN)) {
      classroom(open, new Shots(open, PICTURES));
    }
    quiz();
  }

  private static OpenWindow window(Settings settings) throws Exception {
    return window(settings, 900);
  }

  private static OpenWindow window(Settings settings, int height) throws Exception {
    return OpenWindow.sized(Files.createTempDirectory("pictures"), settings, 1440, height);
  }

  private static void bench(OpenWindow open, Shots shots) throws Exception {
    shots.window("running");
    tab(open, "tab.why");
    Thread.sleep(COMES_MILLIS);
    shots.window("why");
    tab(open, "tab.faults");
    open.want(broken(FaultKind.ROD_FOULED), new Intent.StepOn(20_000L));
    Thread.sleep(COMES_MILLIS);
    shots.window("reading-falls");
    open.want(new Intent.Undo(), new Intent.Undo());
    tab(open, "tab.work");
    open.want(broken(FaultKind.GROUND_LOST), new Intent.StepOn(250_000L));
    Thread.sleep(COMES_MILLIS);
    shots.window("lockout");
  }

  private static Intent broken(FaultKind kind) {
    Wording words = Wording.of(Locale.ENGLISH, UnitSystem.METRIC);
    return new Intent.Act(FaultCard.of(kind, words).deeds(kind.typical(), null), 0);
  }

  /** A reading that says little is entered, and what follows from it. */
  private static void evidence(OpenWindow open, Shots shots) throws Exception {
    Hand hand = new Hand(open);
    tab(open, "tab.evidence");
    open.await("advice", () -> hand.there("evidence.choose.series-current@trial"));
    open.run(
        () -> hand.now(AbstractButton.class, "evidence.choose.series-current@trial").doClick());
    JTextField reading = hand.find(JTextField.class, "evidence.reading");
    open.run(() -> reading.setText("0.1"));
    open.run(reading::postActionEvent);
    open.await("the line", () -> hand.there("evidence.remove.0"));
    Thread.sleep(COMES_MILLIS);
    shots.window("evidence");
    ToolHands tools = new ToolHands(hand);
    tools.matched();
    shots.beside("match", "match");
    tools.foreseen();
    shots.beside("forecast", "forecast");
  }

  private static void classroom(OpenWindow open, Shots shots) throws Exception {
    Hand hand = new Hand(open);
    tab(open, "tab.lesson");
    open.run(() -> hand.now(AbstractButton.class, "lesson.copy.a-dirty-rod").doClick());
    JList<?> steps = hand.find(JList.class, "editor.steps");
    open.run(() -> steps.setSelectedIndex(3));
    Window editor = SwingUtilities.getWindowAncestor(steps);
    shots.of(SwingUtilities.getRootPane(steps), "editor");
    open.run(editor::dispose);
    LessonModel lesson = open.window().lesson();
    open.run(() -> lesson.begin(ShippedDemonstrations.named("a-dirty-rod").orElseThrow()));
    open.await("the first step", () -> lesson.at() != null);
    open.run(lesson::forward);
    open.await("the second step", () -> lesson.at().stepIndex() == 1);
    for (int answer : new int[] {1, 0, 1}) {
      open.run(() -> lesson.vote(answer));
    }
    shots.wall(1280, 720, true, "wall");
  }

  private static void quiz() throws Exception {
    Path own = Files.createTempDirectory("pictures");
    try (OpenWindow open = OpenWindow.with(own, OpenWindow.PLAIN)) {
      Shots shots = new Shots(open, PICTURES);
      QuizHands hands = new QuizHands(open, new Hand(open), own);
      hands.practise();
      hands.choose("practice.help", 3);
      hands.first();
      hands.act(0, "");
      shots.beside("practice", "practice");
      DeskHands desk = new DeskHands(open, new Hand(open), own);
      desk.window();
      desk.quiz();
      desk.row("desk.bank", 2);
      desk.press("desk.try");
      desk.idle();
      desk.row("desk.calls", 0);
      desk.form(2);
      shots.beside("desk", "desk-quiz");
      Path sheets = Files.createDirectories(own.resolve("sheets"));
      SmallClass.handIn(sheets, SmallQuiz.under(Rules.STANDARD), LEARNERS);
      desk.tab(1);
      desk.press("desk.collect");
      desk.hand().choose(sheets);
      desk.idle();
      shots.beside("desk", "desk-class");
      desk.row("desk.learners", 2);
      desk.tab(2);
      desk.idle();
      desk.row("desk.moves", 1);
      shots.beside("desk", "desk-marks");
    }
  }

  private static void tab(OpenWindow open, String key) {
    JTabbedPane tabs = new Hand(open).find(JTabbedPane.class, "tabs");
    String title = Wording.of(Locale.ENGLISH, UnitSystem.METRIC).text(key);
    open.run(() -> tabs.setSelectedIndex(tabs.indexOfTab(title)));
  }
}
