package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** A hand notes what was found, and reads what follows from it. */
class EvidenceRobotTest extends WithWindow {

  private void choose(String name, int index) {
    JComboBox<?> box = hand.find(JComboBox.class, name);
    OpenWindow.onScreen(
        () -> {
          box.setSelectedIndex(index);
          return null;
        });
  }

  @Test
  void whatIsAddedStandsThereAndCanBeRemoved() {
    hand.tab("Evidence");
    open.await(
        "the checks", () -> hand.find(JComboBox.class, "evidence.check").getItemCount() > 40);
    choose("evidence.outcome", 4);
    hand.click("evidence.add");
    open.await("the line", () -> hand.there("evidence.remove.0"));
    hand.click("evidence.remove.0");
    open.await("no line", () -> !hand.there("evidence.remove.0"));
  }

  @Test
  void theBestCheckIsChosenByItsButtonAndItsReadingTyped() {
    hand.tab("Evidence");
    open.await("advice", () -> hand.there("evidence.choose.series-current@trial"));
    hand.click("evidence.choose.series-current@trial");
    JTextField reading = hand.find(JTextField.class, "evidence.reading");
    open.await("the field", reading::isFocusOwner);
    hand.type("much");
    hand.key(KeyEvent.VK_ENTER);
    assertThat(hand.there("evidence.wrong")).isTrue();
    hand.key(KeyEvent.VK_A, InputEvent.CTRL_DOWN_MASK);
    hand.type("0.1");
    hand.key(KeyEvent.VK_ENTER);
    open.await("the line", () -> hand.there("evidence.remove.0"));
    assertThat(hand.there("evidence.wrong")).isFalse();
  }
}
