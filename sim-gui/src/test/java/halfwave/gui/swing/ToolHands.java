package halfwave.gui.swing;

import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;

/**
 * Fills in the windows of the menu Tools without mouse and keys: quick, and in any size of type.
 */
record ToolHands(Hand hand) {

  /** Three readings, a fourth that is refused, and a fit. */
  void match() {
    readings();
    reading(0, false, "lots");
    fit();
  }

  /** Three readings and a fit. */
  void matched() {
    readings();
    fit();
  }

  private void readings() {
    hand.menu("menu.match");
    reading(0, false, "1.2");
    reading(0, true, "2.9");
    reading(1, false, "6");
  }

  private void fit() {
    press("match.fit");
    hand.find(JButton.class, "match.open");
  }

  /** A log of two readings, a forecast, and then a field that is refused. */
  void forecast() {
    foreseen();
    text("forecast.hours", "9999");
    press("forecast.ask");
  }

  /** A log of two readings, and a forecast. */
  void foreseen() {
    hand.menu("menu.forecast");
    log("2024-10-04", "2.6");
    log("2025-10-04", "2.2");
    press("forecast.ask");
    hand.find(JPanel.class, "forecast.table");
  }

  /** Says what sort of reading it is. */
  static void sort(Hand hand, int kind, boolean cleaned) {
    JComboBox<?> box = hand.find(JComboBox.class, "match.kind");
    JCheckBox tick = hand.find(JCheckBox.class, "match.cleaned");
    OpenWindow.onScreen(
        () -> {
          box.setSelectedIndex(kind);
          tick.setSelected(cleaned);
          return null;
        });
  }

  private void reading(int kind, boolean cleaned, String value) {
    sort(hand, kind, cleaned);
    text("match.value", value);
    press("match.add");
  }

  private void log(String day, String value) {
    text("forecast.day", day);
    text("forecast.value", value);
    press("forecast.add");
  }

  private void text(String field, String text) {
    JTextField found = hand.find(JTextField.class, field);
    OpenWindow.onScreen(
        () -> {
          found.setText(text);
          return null;
        });
  }

  private void press(String name) {
    JButton found = hand.find(JButton.class, name);
    OpenWindow.onScreen(
        () -> {
          found.doClick(0);
          return null;
        });
  }
}
