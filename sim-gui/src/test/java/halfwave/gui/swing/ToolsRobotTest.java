package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.HelpPage;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** The windows beside the main one, as a hand uses them. */
class ToolsRobotTest extends WithWindow {

  private void type(String field, String text) {
    JTextField found = hand.find(JTextField.class, field);
    hand.click(found);
    open.await("the keyboard in " + field, found::isFocusOwner);
    hand.key(KeyEvent.VK_A, KeyEvent.CTRL_DOWN_MASK);
    hand.type(text);
  }

  private void reading(int kind, boolean cleaned, String value) {
    ToolHands.sort(hand, kind, cleaned);
    type("match.value", value);
    hand.click("match.add");
  }

  @Test
  void readingsAreTypedFittedAndOpenedAsABench() {
    hand.menu("menu.match");
    reading(0, false, "a lot");
    assertThat(hand.now(JLabel.class, "match.wrong").getText()).contains("µA");
    open.await("no readings", () -> !hand.there("match.remove.0"));
    reading(0, false, "1.2");
    reading(0, true, "2.9");
    reading(1, false, "6");
    assertThat(hand.there("match.remove.2")).isTrue();
    hand.ready("match.fit");
    hand.click("match.fit");
    hand.find(JButton.class, "match.open");
    hand.click("match.open");
    open.await(
        "the fitted bench",
        () -> open.workbench().shown().moment().bench().name().endsWith("-matched"));
    hand.click("match.remove.2");
    open.await("one reading less", () -> !hand.there("match.remove.2"));
  }

  @Test
  void readingsAreSavedAndOpened() {
    Path file = folder.resolve("readings.json");
    hand.menu("menu.match");
    reading(0, false, "1.2");
    OpenWindow.onScreen(
        () -> {
          java.awt.EventQueue.invokeLater(hand.now(JButton.class, "match.save")::doClick);
          return null;
        });
    hand.choose(file);
    open.await("the file", () -> Files.exists(file));
    hand.click("match.clear");
    open.await("no readings", () -> !hand.there("match.remove.0"));
    OpenWindow.onScreen(
        () -> {
          java.awt.EventQueue.invokeLater(hand.now(JButton.class, "match.load")::doClick);
          return null;
        });
    hand.choose(file);
    hand.find(JButton.class, "match.remove.0");
  }

  @Test
  void aForecastIsAskedForAndHelpIsAtHand() {
    hand.menu("menu.forecast");
    type("forecast.hours", "9999");
    hand.click("forecast.ask");
    assertThat(hand.now(JLabel.class, "forecast.wrong.hours").getText()).contains("8760");
    type("forecast.hours", "1500");
    type("forecast.years", "2");
    type("forecast.day", "2025-10-04");
    type("forecast.value", "2.4");
    hand.key(KeyEvent.VK_ENTER);
    assertThat(hand.there("forecast.remove.0")).isTrue();
    hand.click("forecast.ask");
    hand.find(JPanel.class, "forecast.table");
    assertThat(hand.there("forecast.chart")).isTrue();
    hand.key(KeyEvent.VK_F1);
    open.await("help", () -> hand.there("help.search"));
    var topics = hand.now(JList.class, "help.topics");
    assertThat(OpenWindow.onScreen(topics::getSelectedValue))
        .isInstanceOfSatisfying(
            HelpPage.class, page -> assertThat(page.topic()).isEqualTo("forecast"));
  }

  /** WCAG 2.2, 2.5.8 and 4.1.2, as for the main window. */
  @Test
  void everyControlHasANameAndCanBeHit() {
    ToolHands tools = new ToolHands(hand);
    tools.match();
    tools.forecast();
    open.settle();
    List<String> wrong = new ArrayList<>();
    int seen = AccessRobotTest.beside(open, wrong);
    assertThat(seen).isGreaterThan(30);
    assertThat(wrong).isEmpty();
  }

  @Test
  void whatWasTypedOutlivesAnotherLook() {
    hand.menu("menu.forecast");
    type("forecast.hours", "1234");
    hand.menu("menu.dark");
    assertThat(hand.find(JTextField.class, "forecast.hours").getText()).isEqualTo("1234");
    assertThat(hand.there("match.fit")).as("it was not open").isFalse();
  }
}
