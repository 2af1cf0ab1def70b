package halfwave.gui.swing.widget;

import halfwave.gui.presentation.Wording;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JMenu;
import javax.swing.JMenuItem;

/** A menu of the files that were used last. */
public final class RecentFiles {

  private RecentFiles() {}

  /**
   * A menu. Files come and go while the window is open, so they are looked up when it is seen.
   *
   * @param key its words, and its name
   * @param noneKey what it says where there are none
   */
  public static JMenu menu(
      Wording words, String key, String noneKey, Supplier<List<Path>> recent, Consumer<Path> open) {
    JMenu menu = new JMenu(words.text(key));
    menu.setName(key);
    menu.addMenuListener(new Opened(() -> fill(menu, words.text(noneKey), recent.get(), open)));
    return menu;
  }

  private static void fill(JMenu menu, String none, List<Path> files, Consumer<Path> open) {
    menu.removeAll();
    if (files.isEmpty()) {
      JMenuItem item = new JMenuItem(none);
      item.setEnabled(false);
      menu.add(item);
    }
    for (Path file : files) {
      JMenuItem item = new JMenuItem(String.valueOf(file.getFileName()));
      item.setToolTipText(file.toString());
      item.addActionListener(e -> open.accept(file));
      menu.add(item);
    }
  }
}
