package halfwave.gui.swing;

import halfwave.gui.presentation.Settings;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** Paints the windows of the menu Tools into target/screens. No test: asked for by name only. */
final class ToolsScreens {

  private final Path folder = Path.of("target", "screens");

  @Test
  void paint() throws Exception {
    Files.createDirectories(folder);
    shoot("en", false);
    shoot("es", true);
  }

  private void shoot(String language, boolean dark) throws Exception {
    Path own = Files.createTempDirectory("tools");
    Settings settings = OpenWindow.PLAIN.withLanguage(language).withDark(dark);
    try (OpenWindow open = OpenWindow.with(own, settings)) {
      Hand hand = new Hand(open);
      String name = language + (dark ? "-dark" : "-light");
      hand.menu("menu.match");
      reading(hand, 0, false, "1.2");
      reading(hand, 0, true, "2.9");
      reading(hand, 1, false, "6");
      reading(hand, 0, false, "lots");
      press(hand, "match.fit");
      hand.find(JButton.class, "match.open");
      open.settle();
      picture(open, "match", name);
      hand.menu("menu.forecast");
      log(hand, "2024-10-04", "2.6");
      log(hand, "2025-10-04", "2.2");
      press(hand, "forecast.ask");
      hand.find(javax.swing.JPanel.class, "forecast.table");
      text(hand, "forecast.hours", "9999");
      press(hand, "forecast.ask");
      open.settle();
      picture(open, "forecast", name);
    }
  }

  private static void text(Hand hand, String field, String text) {
    JTextField found = hand.find(JTextField.class, field);
    OpenWindow.onScreen(
        () -> {
          found.setText(text);
          return null;
        });
  }

  private static void press(Hand hand, String name) {
    JButton found = hand.find(JButton.class, name);
    OpenWindow.onScreen(
        () -> {
          found.doClick();
          return null;
        });
  }

  private static void reading(Hand hand, int kind, boolean cleaned, String value) {
    JComboBox<?> box = hand.find(JComboBox.class, "match.kind");
    JCheckBox tick = hand.find(JCheckBox.class, "match.cleaned");
    OpenWindow.onScreen(
        () -> {
          box.setSelectedIndex(kind);
          tick.setSelected(cleaned);
          return null;
        });
    text(hand, "match.value", value);
    press(hand, "match.add");
  }

  private static void log(Hand hand, String day, String value) {
    text(hand, "forecast.day", day);
    text(hand, "forecast.value", value);
    press(hand, "forecast.add");
  }

  private void picture(OpenWindow open, String dialog, String name) throws Exception {
    open.settle();
    BufferedImage image =
        OpenWindow.onScreen(
            () -> {
              JDialog found =
                  Hand.look(JDialog.class, d -> dialog.equals(d.getName())).orElseThrow();
              var all = found.getRootPane();
              BufferedImage made =
                  new BufferedImage(all.getWidth(), all.getHeight(), BufferedImage.TYPE_INT_RGB);
              Graphics2D g = made.createGraphics();
              all.printAll(g);
              g.dispose();
              return made;
            });
    ImageIO.write(image, "png", folder.resolve(dialog + "-" + name + ".png").toFile());
  }
}
