package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
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
    JComboBox<?> box = hand.find(JComboBox.class, "match.kind");
    JCheckBox tick = hand.find(JCheckBox.class, "match.cleaned");
    OpenWindow.onScreen(
        () -> {
          box.setSelectedIndex(kind);
          tick.setSelected(cleaned);
          return null;
        });
    type("match.value", value);
    hand.click("match.add");
  }

  @Test
  void readingsAreTypedFittedAndOpenedAsABench() {
    hand.menu("menu.match");
    reading(0, false, "a lot");
    assertThat(hand.now(JLabel.class, "match.wrong").getText()).contains("µA");
    assertThat(hand.there("match.remove.0")).isFalse();
    reading(0, false, "1.2");
    reading(0, true, "2.9");
    reading(1, false, "6");
    assertThat(hand.there("match.remove.2")).isTrue();
    hand.ready("match.fit");
    hand.click("match.fit");
    hand.find(javax.swing.JButton.class, "match.open");
    hand.click("match.open");
    open.await(
        "the fitted bench",
        () -> open.workbench().shown().moment().bench().name().endsWith("-matched"));
    hand.click("match.remove.2");
    assertThat(hand.there("match.remove.2")).isFalse();
  }

  @Test
  void readingsAreSavedAndOpened() {
    Path file = folder.resolve("readings.json");
    hand.menu("menu.match");
    reading(0, false, "1.2");
    OpenWindow.onScreen(
        () -> {
          java.awt.EventQueue.invokeLater(
              hand.now(javax.swing.JButton.class, "match.save")::doClick);
          return null;
        });
    hand.choose(file);
    open.await("the file", () -> Files.exists(file));
    hand.click("match.clear");
    assertThat(hand.there("match.remove.0")).isFalse();
    OpenWindow.onScreen(
        () -> {
          java.awt.EventQueue.invokeLater(
              hand.now(javax.swing.JButton.class, "match.load")::doClick);
          return null;
        });
    hand.choose(file);
    hand.find(javax.swing.JButton.class, "match.remove.0");
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
    hand.find(javax.swing.JPanel.class, "forecast.table");
    assertThat(hand.there("forecast.chart")).isTrue();
    hand.key(KeyEvent.VK_F1);
    open.await("help", () -> hand.there("help.search"));
    String title = HelpTitle.shown(hand);
    assertThat(title.toLowerCase(Locale.ROOT)).contains("forecast");
  }

  /** Which page of help is chosen. */
  private static final class HelpTitle {
    static String shown(Hand hand) {
      var list = hand.now(javax.swing.JList.class, "help.topics");
      return OpenWindow.onScreen(
          () -> ((halfwave.gui.presentation.HelpPage) list.getSelectedValue()).title());
    }
  }
}
