package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.HelpPage;
import halfwave.gui.presentation.quiz.SmallQuiz;
import halfwave.io.quiz.SheetFile;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Move;
import halfwave.quiz.Rules;
import java.awt.EventQueue;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.io.File;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JFileChooser;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A quiz as a hand takes it, by mouse and by keys. */
class QuizRobotTest extends WithWindow {

  private QuizHands hands;

  @BeforeEach
  void openQuiz() {
    hands = new QuizHands(open, hand, folder);
    hands.window();
  }

  private AnswerSheet onDisk() {
    return SheetFile.read(folder.resolve("sheet.json"), SmallQuiz.under(Rules.STANDARD));
  }

  private void search(String text) {
    type("visit.search", text);
  }

  private void type(String name, String text) {
    JTextField field = hand.find(JTextField.class, name);
    hand.click(field);
    open.await("the keyboard in " + name, field::isFocusOwner);
    hand.key(KeyEvent.VK_A, KeyEvent.CTRL_DOWN_MASK);
    hand.type(text);
  }

  @Test
  void twoCallsAreTakenByMouseAndKeys() {
    JTextField code = hand.find(JTextField.class, "quiz.learner");
    int stands = OpenWindow.onScreen(code::getY);
    hands.fill(Rules.STANDARD, "");
    assertThat(OpenWindow.onScreen(code::getY)).as("it stays under the mouse").isEqualTo(stands);
    assertThat(hand.now(AbstractButton.class, "quiz.begin").isEnabled()).isFalse();
    type("quiz.learner", "A-17");
    hand.ready("quiz.begin");
    hand.click("quiz.begin");
    hands.idle();

    search("thermostat");
    hand.key(KeyEvent.VK_ENTER);
    open.await("the list", hand.now(JList.class, "visit.checks")::isFocusOwner);
    hand.key(KeyEvent.VK_ENTER);
    hands.idle();
    search("since when");
    hand.click("visit.act");
    hands.idle();
    assertThat(onDisk().calls().get(0).moves()).hasSize(2);

    hand.key(KeyEvent.VK_2, KeyEvent.CTRL_DOWN_MASK);
    hand.click("visit.suspect.rod");
    hand.click("visit.state");
    hands.idle();
    hand.click("visit.power");
    hands.idle();
    assertThat(hand.now(AbstractButton.class, "visit.power").isSelected()).isFalse();
    hand.click("visit.gas");
    hands.idle();
    hands.offer(1, "abrasive pad");
    hand.click("visit.act");
    hands.idle();

    hands.front("visit.tabs", 2);
    assertThat(hand.now(AbstractButton.class, "visit.hand-in").isEnabled()).isFalse();
    hands.choose("visit.cause", 2);
    hands.choose("visit.place", 4);
    hands.press("visit.hand-in");
    open.await(
        "the keyboard on what changes nothing",
        () ->
            Hand.look(AbstractButton.class, b -> b.isFocusOwner() && "Cancel".equals(b.getText()))
                .isPresent());
    hand.key(KeyEvent.VK_ENTER);
    hands.idle();
    assertThat(onDisk().calls().get(0).conclusion()).as("Enter hands nothing in").isNull();
    hands.press("visit.hand-in");
    hand.answer("Hand in");
    hands.idle();
    assertThat(onDisk().calls().get(0).moves()).hasSize(6);
    assertThat(onDisk().calls().get(0).conclusion()).isNotNull();
    assertThat(hand.now(AbstractButton.class, "visit.act").isEnabled()).isFalse();

    hands.offer(0, "gap");
    hand.click("quiz.go.after-the-move");
    hands.idle();
    assertThat(OpenWindow.onScreen(() -> hand.now(JList.class, "visit.checks").getSelectedIndex()))
        .as("nothing of the call before is chosen any more")
        .isZero();
    hands.offer(1, "by hand");
    hand.click("visit.act");
    hands.idle();
    JTextArea done = hand.find(JTextArea.class, "quiz.done");
    assertThat(done.getText()).contains(folder.resolve("sheet.json").toString());
    assertThat(onDisk().calls().get(1).moves().get(0).move()).isInstanceOf(Move.Tempted.class);
    hands.press("quiz.look");
    hands.press("quiz.go.cold-mornings");
    hands.idle();
    hands.front("visit.tabs", 2);
    JComboBox<?> cause = hand.now(JComboBox.class, "visit.cause");
    assertThat(cause.getSelectedIndex()).isEqualTo(2);
    assertThat(cause.isEnabled()).isFalse();
    hands.press("quiz.back");
    hand.find(JTextArea.class, "quiz.done");
  }

  @Test
  void aDangerousActStopsTheCallAndAnotherLookOrWindowKeepsIt() throws Exception {
    hands.fill(Rules.STANDARD, "A-17");
    hands.begin();
    hands.offer(0, "gap");
    hand.click("visit.act");
    hands.idle();
    assertThat(hand.find(JTextArea.class, "visit.stopped").getText()).contains("stopped");
    assertThat(hand.there("visit.cautions")).isTrue();
    assertThat(hand.now(AbstractButton.class, "visit.power").isEnabled()).isFalse();
    hand.menu("menu.dark");
    assertThat(hand.find(JTextArea.class, "visit.stopped").getText()).contains("stopped");

    open.close();
    open = OpenWindow.plain(folder);
    hand = new Hand(open);
    hands = new QuizHands(open, hand, folder);
    hands.window();
    hands.fill(Rules.STANDARD, "A-17");
    hands.begin();
    assertThat(hand.find(JTextArea.class, "visit.complaint").getText())
        .as("the call that is left")
        .contains("Since we moved in");
    hand.click("quiz.go.cold-mornings");
    hands.idle();
    assertThat(hand.find(JTextArea.class, "visit.stopped").getText()).contains("stopped");
  }

  @Test
  void theBenchIsCoveredAndWhatHelpsIsPutAwayUntilTheEnd() {
    hand.menu("menu.desk");
    hands.idle();
    hands.fill(Rules.STANDARD, "A-17");
    assertThat(hand.there("drawing")).isTrue();
    assertThat(hand.there("desk.tabs")).isTrue();
    hands.begin();
    assertThat(hand.there("drawing")).isFalse();
    assertThat(hand.there("desk.tabs")).isFalse();
    assertThat(hand.now(JTextArea.class, "examination.covered").getText()).contains("covered");
    assertThat(menus()).contains("menu.dark").doesNotContain("menu.practise", "menu.desk");
    // another look covers it too, and the window that was closed comes back
    hand.menu("menu.dark");
    assertThat(hand.there("drawing")).isFalse();
    closeQuiz();
    hand.answer("Cancel");
    assertThat(hand.there("visit.act")).isTrue();
    closeQuiz();
    hand.answer("Put it away");
    open.await("the window to go", () -> !hand.there("visit.act"));
    hands.press("examination.back");
    hand.find(AbstractButton.class, "visit.act");

    EventQueue.invokeLater(
        () ->
            open.frame().dispatchEvent(new WindowEvent(open.frame(), WindowEvent.WINDOW_CLOSING)));
    hand.answer("Cancel");
    assertThat(open.frame().isShowing()).isTrue();
    hands.press("quiz.hand-in");
    hand.answer("End it");
    hands.idle();
    assertThat(hand.there("drawing")).isTrue();
    assertThat(menus()).contains("menu.practise", "menu.desk");
  }

  private void closeQuiz() {
    Window quiz = SwingUtilities.getWindowAncestor(hand.now(AbstractButton.class, "visit.act"));
    EventQueue.invokeLater(
        () -> quiz.dispatchEvent(new WindowEvent(quiz, WindowEvent.WINDOW_CLOSING)));
  }

  private List<String> menus() {
    return OpenWindow.onScreen(
        () ->
            Hand.items(open.frame().getJMenuBar())
                .map(JMenuItem::getName)
                .filter(Objects::nonNull)
                .toList());
  }

  @Test
  void aFileThatIsNoQuizIsRefusedInTheWindow() throws Exception {
    Files.writeString(folder.resolve("odd.json"), "{}");
    hands.press("quiz.open");
    hand.choose(folder.resolve("odd.json"));
    hands.idle();
    assertThat(hand.now(JTextArea.class, "quiz.said").getText()).contains("odd.json");
    hand.menu("menu.desk");
    hands.idle();
    hands.press("desk.open");
    open.await("the chooser", () -> Hand.look(JFileChooser.class, c -> true).isPresent());
    JFileChooser chooser = Hand.look(JFileChooser.class, c -> true).orElseThrow();
    File begins = OpenWindow.onScreen(chooser::getCurrentDirectory);
    EventQueue.invokeLater(chooser::cancelSelection);
    open.await("its end", () -> !chooser.isShowing());
    assertThat(begins).as("where the last file was opened").isEqualTo(folder.toFile());
  }

  @Test
  void helpIsAtHand() {
    JTextField field = hand.find(JTextField.class, "quiz.learner");
    hand.click(field);
    open.await("the keyboard in the window", field::isFocusOwner);
    hand.key(KeyEvent.VK_F1);
    open.await("help", () -> hand.there("help.search"));
    JList<?> topics = hand.now(JList.class, "help.topics");
    assertThat(OpenWindow.onScreen(topics::getSelectedValue))
        .isInstanceOfSatisfying(HelpPage.class, page -> assertThat(page.topic()).isEqualTo("quiz"));
  }

  /** WCAG 2.2, 2.5.8 and 4.1.2, as for the main window. */
  @Test
  void everyControlHasANameAndCanBeHit() {
    List<String> wrong = new ArrayList<>();
    wrong(wrong);
    hands.fill(new Rules(30, true), "A-17");
    hands.begin();
    for (int tab = 0; tab < 3; tab++) {
      hands.front("visit.tabs", tab);
      hands.front("visit.offers", tab);
      wrong(wrong);
    }
    assertThat(wrong).isEmpty();
  }

  private void wrong(List<String> wrong) {
    int seen = AccessRobotTest.beside(open, wrong);
    assertThat(seen).isGreaterThan(4);
  }
}
