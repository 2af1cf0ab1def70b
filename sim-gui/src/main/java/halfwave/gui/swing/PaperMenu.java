package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import halfwave.paper.PaperSize;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;

/** The menu of what leaves the window. */
final class PaperMenu {

  private final Wording words;
  private final PaperFiles files;
  private final BooleanSupplier ready;
  private final PaperSize size;
  private final Consumer<PaperSize> sized;

  PaperMenu(
      Wording words,
      PaperFiles files,
      BooleanSupplier ready,
      PaperSize size,
      Consumer<PaperSize> sized) {
    this.words = words;
    this.files = files;
    this.ready = ready;
    this.size = size;
    this.sized = sized;
  }

  JMenu menu() {
    JMenu menu = new JMenu(words.text("paper.menu"));
    menu.setName("paper.menu");
    menu.setMnemonic(KeyEvent.VK_X);
    menu.add(open("paper.drawing", files::drawing));
    menu.add(item("paper.chart", files::chart));
    menu.add(item("paper.data", files::data));
    menu.add(open("paper.report", files::report));
    menu.addSeparator();
    menu.add(item("paper.handout", () -> files.handout(false)));
    menu.add(item("paper.handout-key", () -> files.handout(true)));
    menu.add(item("paper.slides", files::slides));
    menu.add(item("paper.animation", files::animation));
    menu.addSeparator();
    JMenuItem print = open("paper.print-report", files::printReport);
    print.setAccelerator(KeyStroke.getKeyStroke(KeyEvent.VK_P, InputEvent.CTRL_DOWN_MASK));
    menu.add(open("paper.print-drawing", files::printDrawing));
    menu.add(item("paper.print-chart", files::printChart));
    menu.add(print);
    menu.add(sheets());
    menu.addSeparator();
    menu.add(open("paper.copy-drawing", files::copyDrawing));
    return menu;
  }

  private JMenu sheets() {
    JMenu menu = new JMenu(words.text("paper.size"));
    menu.setName("paper.size");
    ButtonGroup group = new ButtonGroup();
    for (PaperSize each : PaperSize.values()) {
      JRadioButtonMenuItem item = new JRadioButtonMenuItem(each.title(), each == size);
      item.setName("sheet." + each.code());
      item.addActionListener(e -> sized.accept(each));
      group.add(item);
      menu.add(item);
    }
    return menu;
  }

  /** What would tell a class the fault that it has to find. */
  private JMenuItem open(String key, Runnable action) {
    return item(key, () -> files.unlessSealed(action));
  }

  private JMenuItem item(String key, Runnable action) {
    JMenuItem item = new JMenuItem(words.text(key));
    item.setName(key);
    item.addActionListener(
        e -> {
          if (ready.getAsBoolean()) {
            action.run();
          }
        });
    return item;
  }
}
