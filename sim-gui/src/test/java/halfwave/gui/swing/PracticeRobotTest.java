package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.grading.Routine;
import halfwave.gui.presentation.desk.RoutineDraft;
import halfwave.io.quiz.ProgressFile;
import halfwave.io.quiz.RoutineFile;
import halfwave.quiz.Help;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Practice as a hand does it, on the calls that come with the program. */
class PracticeRobotTest extends WithWindow {

  private QuizHands hands;

  @BeforeEach
  void openPractice() {
    hands = new QuizHands(open, hand, folder);
    hands.practise();
  }

  @Test
  void stepsAreShownUntilTheMarksAndProgressIsKept() {
    hands.choose("practice.help", 1);
    hands.first();
    assertThat(hand.now(JTextArea.class, "practice.said").getText()).contains("Watch a call");
    hand.click("practice.follow");
    hands.idle();
    assertThat(hand.now(AbstractButton.class, "practice.undo").isEnabled()).isTrue();
    hands.follow();
    assertThat(hand.there("practice.marks")).isTrue();
    hand.click("practice.leave");
    hands.idle();
    Path mine = folder.resolve("mine.json");
    hands.press("practice.export");
    hand.choose(mine);
    var progress = ProgressFile.read(mine);
    assertThat(progress.calls()).isEqualTo(1);
    assertThat(progress).isEqualTo(ProgressFile.read(folder.resolve("progress.json")));
  }

  @Test
  void aCheckIsAskedAboutDoneAndTakenBackByKeys() {
    hands.choose("practice.help", Help.ASKING.ordinal() + 1);
    hands.first();
    JTextField field = hand.find(JTextField.class, "visit.search");
    hand.click(field);
    open.await("the keyboard in the search", field::isFocusOwner);
    hand.type("thermostat");
    hand.key(KeyEvent.VK_ENTER);
    open.await("the keyboard in the list", hand.now(JList.class, "visit.checks")::isFocusOwner);
    hand.key(KeyEvent.VK_ENTER);
    open.await("the question", () -> hand.there("practice.expected"));
    JComboBox<?> expected = hand.now(JComboBox.class, "practice.expected");
    open.await("the keyboard in the question", expected::isFocusOwner);
    hand.key(KeyEvent.VK_DOWN);
    hand.click("practice.remain.rod");
    hand.click("practice.answer");
    hands.idle();
    assertThat(hand.there("practice.expected")).isFalse();
    assertThat(texts()).contains("What you named (rod)", "xpected");
    hand.key(KeyEvent.VK_Z, KeyEvent.CTRL_DOWN_MASK);
    hands.idle();
    assertThat(texts()).doesNotContain("What you named");
    assertThat(hand.now(AbstractButton.class, "practice.undo").isEnabled()).isFalse();
  }

  @Test
  void anOrderOfWorkIsWrittenSavedAndOpened() {
    hands.press("routine.show");
    hands.text("routine.name", "rod first");
    hands.press("routine.add");
    hands.choose("routine.check", 3);
    hands.choose("routine.repair", 1);
    hands.press("routine.add");
    hands.choose("routine.repair", 2);
    hands.press("routine.up");
    assertThat(hand.now(JTable.class, "routine.steps").getSelectedRow()).isZero();
    Path file = folder.resolve("mine.json");
    hands.press("routine.save");
    hand.choose(file);
    hands.idle();
    Routine routine = RoutineFile.read(file);
    assertThat(routine.steps()).hasSize(2);
    assertThat(routine.steps().get(0).check()).isNull();
    assertThat(routine.steps().get(1).check()).isEqualTo(RoutineDraft.checks().get(2));
    hands.press("routine.remove");
    hands.press("routine.fresh");
    hand.answer("Leave without saving");
    open.settle();
    assertThat(hand.now(JTable.class, "routine.steps").getRowCount()).isZero();
    hands.press("routine.open");
    hand.choose(file);
    hands.idle();
    assertThat(hand.now(JTable.class, "routine.steps").getRowCount()).isEqualTo(2);
    List<String> wrong = new ArrayList<>();
    AccessRobotTest.beside(open, wrong);
    assertThat(wrong).isEmpty();
    hands.row("routine.steps", 1);
    hand.menu("menu.dark");
    assertThat(hand.find(JTable.class, "routine.steps").getSelectedRow()).isEqualTo(1);
    hands.press("routine.back");
    assertThat(hand.there("practice.calls")).isTrue();
  }

  private static String texts() {
    StringBuilder all = new StringBuilder();
    OpenWindow.onScreen(
        () -> {
          Hand.seen().stream()
              .filter(JTextArea.class::isInstance)
              .forEach(c -> all.append(((JTextArea) c).getText()).append('\n'));
          return null;
        });
    return all.toString();
  }

  @Test
  void anotherLookKeepsTheCall() {
    hands.choose("practice.help", Help.NONE.ordinal() + 1);
    hands.first();
    hands.act(0, "since when");
    String before = hand.now(JTextArea.class, "visit.complaint").getText();
    hand.menu("menu.dark");
    assertThat(hand.find(JTextArea.class, "visit.complaint").getText()).isEqualTo(before);
    assertThat(texts()).contains("Ask since when");
  }
}
