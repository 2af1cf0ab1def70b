package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.BarView;
import halfwave.gui.presentation.bench.Workbench;
import java.awt.Component;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import org.jspecify.annotations.Nullable;

/** What the items of the edit menu would undo and redo, at the time someone opens it. */
final class EditWords {

  private EditWords() {}

  static void tell(JMenu menu, Wording words, Workbench workbench) {
    if (!workbench.ready()) {
      return;
    }
    BarView view = BarView.of(workbench.shown(), words);
    for (Component c : menu.getMenuComponents()) {
      if (c instanceof JMenuItem item && "bar.undo".equals(item.getName())) {
        name(item, view.undo(), words.text("bar.undo"));
      } else if (c instanceof JMenuItem item && "bar.redo".equals(item.getName())) {
        name(item, view.redo(), words.text("bar.redo"));
      }
    }
  }

  /** Never disabled: its keys work also while the menu is shut. */
  private static void name(JMenuItem item, @Nullable String what, String nothing) {
    item.setText(what == null ? nothing : what);
  }
}
