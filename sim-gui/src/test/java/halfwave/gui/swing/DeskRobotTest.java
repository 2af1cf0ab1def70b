package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.grading.Criterion;
import halfwave.gui.presentation.desk.SmallClass;
import halfwave.io.JsonValue;
import halfwave.io.quiz.QuizFile;
import halfwave.quiz.Weights;
import java.awt.Dialog;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window of the instructor's desk: what is pressed there comes to pass. */
class DeskRobotTest {

  @TempDir private Path folder;

  private static String text(Hand hand, String name) {
    JTextArea area = hand.find(JTextArea.class, name);
    return OpenWindow.onScreen(area::getText);
  }

  @Test
  void aQuizIsMadeHandedOutMarkedAndRead() throws Exception {
    List<String> wrong = new ArrayList<>();
    try (OpenWindow open = OpenWindow.plain(folder)) {
      Hand hand = new Hand(open);
      DeskHands hands = new DeskHands(open, hand, folder);
      hands.window();
      wrong(open, wrong);
      hands.quiz();
      hands.row("desk.bank", 2);
      hands.press("desk.add");
      assertThat(hands.rows("desk.calls")).isEqualTo(3);
      JTable calls = hand.find(JTable.class, "desk.calls");
      assertThat(OpenWindow.onScreen(calls::getWidth))
          .as("nobody scrolls sideways")
          .isLessThanOrEqualTo(OpenWindow.onScreen(() -> calls.getParent().getWidth()));
      hands.row("desk.calls", 2);
      hands.press("desk.remove");
      JTable bank = hand.find(JTable.class, "desk.bank");
      hands.row("desk.bank", 1);
      OpenWindow.onScreen(() -> clickedTwice(bank, 1));
      hands.idle();
      assertThat(hands.rows("desk.calls")).as("by a double click").isEqualTo(3);
      OpenWindow.onScreen(
          () -> {
            bank.requestFocus();
            return true;
          });
      open.await("the keyboard in the bank", bank::isFocusOwner);
      hand.key(KeyEvent.VK_DOWN);
      hand.key(KeyEvent.VK_ENTER);
      hands.idle();
      assertThat(hands.rows("desk.calls")).as("by Enter").isEqualTo(4);
      for (int row = 3; row >= 2; row--) {
        hands.row("desk.calls", row);
        hands.press("desk.remove");
      }
      hands.text("desk.search", "lost ground");
      assertThat(hands.rows("desk.bank")).isBetween(1, 20);
      hands.text("desk.search", "");
      hands.press("desk.undo");
      assertThat(hands.rows("desk.calls")).as("the last one is back").isEqualTo(3);
      hands.press("desk.redo");
      assertThat(hands.rows("desk.calls")).isEqualTo(2);
      hands.text("desk.seed", "abc");
      hands.press("desk.save");
      JTextField seed = hand.find(JTextField.class, "desk.seed");
      open.await("the keyboard in the wrong field", seed::isFocusOwner);
      assertThat(seed.getText()).isEqualTo("abc");
      assertThat(seed.getAccessibleContext().getAccessibleDescription())
          .contains("a whole number from 0 to 999999999");
      hands.text("desk.seed", "12");
      assertThat(seed.getClientProperty("JComponent.outline")).isNull();
      whatIsTypedOfACallIsUndoneFirst(open, hand, hands);
      blankNameComesBack(open, hand, hands);
      marksThatCountNothingAreNotSaved(hand, hands);
      hands.text("desk.name", "spring");
      hands.form(1);
      wrong(open, wrong);
      hands.row("desk.calls", 0);
      hands.form(2);
      hands.text("desk.call-title-english", "Frost");
      hands.press("desk.add-alternative");
      hands.choose("desk.first", 0);
      hands.press("desk.add-alternative");
      hands.press("desk.remove-alternative");
      assertThat(hands.chosen("desk.alternative")).isEqualTo(1);
      wrong(open, wrong);
      // another call is chosen: what was typed is kept
      hands.row("desk.calls", 1);
      hands.press("desk.hand-out");
      hand.choose(folder.resolve("out.json"));
      hands.idle();
      QuizFile.Opened out = QuizFile.read(folder.resolve("out.json"));
      assertThat(out.sealed()).isTrue();
      assertThat(out.quiz().name()).isEqualTo("spring");
      assertThat(out.quiz().calls().get(0).hidden())
          .extracting(h -> h.faults().size())
          .containsExactly(1, 0);
      assertThat(out.quiz().calls().get(0).title().texts()).containsEntry("en", "Frost");

      // back to what was saved, and its class
      hands.press("desk.open");
      hand.answer("Leave without saving");
      hand.choose(folder.resolve("own.json"));
      hands.idle();
      hands.sheets();
      wrong(open, wrong);
      assertThat(hands.rows("desk.learners")).isEqualTo(SmallClass.LEARNERS.size());
      assertThat(text(hand, "desk.told")).contains(SmallClass.ODD);
      hands.press("desk.write");
      hand.choose(folder.resolve("marks.csv"));
      hands.idle();
      assertThat(Files.readString(folder.resolve("marks.csv"))).contains(SmallClass.LEARNERS);
      hands.row("desk.learners", 1);
      hands.tab(2);
      wrong(open, wrong);
      assertThat(hands.chosen("desk.learner")).isEqualTo(1);
      hands.idle();
      hands.press("desk.replay-last");
      assertThat(text(hand, "desk.replay-move")).contains(hands.rows("desk.moves") + " of ");
      hands.press("desk.replay-first");
      assertThat(text(hand, "desk.replay-move")).startsWith("1 of ");
      wrong(open, wrong);
      hands.choose("desk.call", 1);
      assertThat(hands.rows("desk.moves")).isGreaterThan(2);
    }
    assertThat(wrong).isEmpty();
  }

  private static void whatIsTypedOfACallIsUndoneFirst(OpenWindow open, Hand hand, DeskHands hands) {
    hands.row("desk.calls", 0);
    hands.form(2);
    JTextField title = hand.find(JTextField.class, "desk.call-title-english");
    String kept = OpenWindow.onScreen(title::getText);
    OpenWindow.onScreen(title::requestFocusInWindow);
    open.await("the keyboard in the title", title::isFocusOwner);
    hands.text("desk.call-title-english", "Fog");
    hand.key(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK);
    open.await("the title that was kept", () -> title.getText().equals(kept));
    assertThat(hands.rows("desk.calls")).isEqualTo(2);
    hands.form(0);
  }

  private static void blankNameComesBack(OpenWindow open, Hand hand, DeskHands hands) {
    JTextField name = hand.find(JTextField.class, "desk.name");
    String kept = OpenWindow.onScreen(name::getText);
    OpenWindow.onScreen(name::requestFocusInWindow);
    open.await("the keyboard in the name", name::isFocusOwner);
    hands.text("desk.name", " ");
    OpenWindow.onScreen(hand.find(JTextField.class, "desk.seed")::requestFocusInWindow);
    open.await("the name that is kept", () -> name.getText().equals(kept));
  }

  private void marksThatCountNothingAreNotSaved(Hand hand, DeskHands hands) {
    for (Criterion criterion : Criterion.values()) {
      hands.text("desk.weight-" + JsonValue.spelling(criterion), "0");
    }
    hands.press("desk.save");
    assertThat(Hand.look(Dialog.class, Dialog::isModal)).as("asks for a file").isEmpty();
    hands.text("desk.weight-" + JsonValue.spelling(Criterion.CAUSE), "100");
    hands.press("desk.save");
    hand.choose(folder.resolve("weighed.json"));
    hands.idle();
    Weights weights = QuizFile.read(folder.resolve("weighed.json")).quiz().weights();
    assertThat(weights.causePoints()).isEqualTo(weights.sum()).isEqualTo(100);
  }

  private static boolean clickedTwice(JTable table, int row) {
    Rectangle cell = table.getCellRect(row, 0, true);
    table.dispatchEvent(
        new MouseEvent(
            table,
            MouseEvent.MOUSE_CLICKED,
            0,
            0,
            cell.x + 3,
            cell.y + 3,
            2,
            false,
            MouseEvent.BUTTON1));
    return true;
  }

  /** Controls that have no name, or are too small to be met. */
  private static void wrong(OpenWindow open, List<String> wrong) {
    open.settle();
    AccessRobotTest.beside(open, wrong);
  }
}
