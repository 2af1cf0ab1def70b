package halfwave.gui.swing.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.swing.widget.Opened;
import halfwave.gui.swing.widget.RecentFiles;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;

/** The menus of demonstrations: one in the main window, and those of the editor. */
final class EditorMenus {

  private static final int CTRL = InputEvent.CTRL_DOWN_MASK;
  private static final int SHIFT = InputEvent.SHIFT_DOWN_MASK;
  private static final int ALT = InputEvent.ALT_DOWN_MASK;

  private final Wording words;
  private final EditorModel model;
  private final Editing editing;
  private final List<JMenuItem> recorder = new ArrayList<>();

  /** What begins with the bench as it stands. */
  private final List<JMenuItem> fresh = new ArrayList<>();

  EditorMenus(Wording words, EditorModel model, Editing editing) {
    this.words = words;
    this.model = model;
    this.editing = editing;
  }

  /** In the main window. */
  JMenu main() {
    JMenu menu = menu("menu.demonstration", KeyEvent.VK_D);
    menu.add(shipped("lesson.play", editing::play));
    menu.add(item("lesson.open", editing::open));
    menu.add(recent("lesson.recent", editing::show));
    menu.addSeparator();
    begin(menu);
    menu.addSeparator();
    // who works at the bench ends the recording without leaving it
    recorder.clear();
    recorder.add(item("editor.keep", KeyEvent.VK_R, CTRL, model::keep));
    recorder.add(item("editor.discard", KeyEvent.VK_R, CTRL | SHIFT, model::discard));
    recorder.forEach(menu::add);
    recording(false);
    sealed(model.sealed());
    return menu;
  }

  private void begin(JMenu menu) {
    JMenuItem begin = item("lesson.new", KeyEvent.VK_N, CTRL, editing::create);
    fresh.add(begin);
    menu.add(begin);
    menu.add(shipped("lesson.copy", editing::copy));
    menu.add(item("lesson.edit-file", editing::openToEdit));
    menu.add(recent("lesson.edit-recent", editing::edit));
  }

  /** A menu of all that come with the program; they are read when someone wants to see it. */
  private JMenu shipped(String key, Consumer<Demonstration> action) {
    JMenu menu = new JMenu(words.text(key));
    menu.setName(key);
    menu.addMenuListener(new Opened(() -> fill(menu, key, action)));
    return menu;
  }

  private void fill(JMenu menu, String key, Consumer<Demonstration> action) {
    menu.removeAll();
    for (Demonstration d : ShippedDemonstrations.all()) {
      JMenuItem item = new JMenuItem(d.title().in(words.locale()));
      item.setName(key + "." + d.name());
      item.setToolTipText(d.about().in(words.locale()));
      item.addActionListener(e -> action.accept(d));
      menu.add(item);
    }
  }

  /** In the editor's own window. */
  JMenuBar bar(EditorPanel panel) {
    JMenuBar bar = new JMenuBar();
    JMenu file = menu("menu.demonstration", KeyEvent.VK_D);
    begin(file);
    file.addSeparator();
    file.add(item("editor.save", KeyEvent.VK_S, CTRL, editing::save));
    file.add(item("editor.save-as", KeyEvent.VK_S, CTRL | SHIFT, editing::saveAs));
    file.addSeparator();
    file.add(item("editor.close", KeyEvent.VK_W, CTRL, editing::close));
    bar.add(file);
    JMenu edit = menu("menu.edit", KeyEvent.VK_E);
    edit.add(item("bar.undo", KeyEvent.VK_Z, CTRL, unlessRecording(model::undo)));
    edit.add(item("bar.redo", KeyEvent.VK_Z, CTRL | SHIFT, unlessRecording(model::redo)));
    bar.add(edit);
    bar.add(steps(panel.steps()));
    JMenu bench = menu("menu.bench", KeyEvent.VK_B);
    bench.add(item("editor.record", KeyEvent.VK_R, CTRL, unlessRecording(model::record)));
    bench.add(item("editor.to-begin", KeyEvent.VK_HOME, ALT, model::toBegin));
    bench.add(item("editor.to-end", KeyEvent.VK_END, ALT, model::toEnd));
    bench.addSeparator();
    bench.add(item("editor.try", KeyEvent.VK_F5, 0, unlessRecording(editing::tryIt)));
    bench.add(item("editor.check", KeyEvent.VK_F7, 0, model::check));
    bar.add(bench);
    return bar;
  }

  private JMenu steps(StepsPanel steps) {
    JMenu menu = menu("editor.steps", KeyEvent.VK_T);
    menu.add(item("editor.insert", KeyEvent.VK_I, CTRL, steps::insert));
    menu.add(item("editor.twice", KeyEvent.VK_D, CTRL, steps::twice));
    menu.add(item("editor.delete", KeyEvent.VK_DELETE, CTRL | SHIFT, steps::delete));
    menu.addSeparator();
    menu.add(item("editor.up", KeyEvent.VK_UP, ALT, () -> steps.move(-1)));
    menu.add(item("editor.down", KeyEvent.VK_DOWN, ALT, () -> steps.move(1)));
    menu.addSeparator();
    menu.add(
        item("editor.next", KeyEvent.VK_PAGE_DOWN, CTRL, () -> model.choose(model.step() + 1)));
    menu.add(item("editor.back", KeyEvent.VK_PAGE_UP, CTRL, () -> model.choose(model.step() - 1)));
    menu.add(item("editor.to-list", KeyEvent.VK_L, CTRL, steps::focus));
    return menu;
  }

  private Runnable unlessRecording(Runnable action) {
    return () -> {
      if (!model.bench().recording()) {
        action.run();
      }
    };
  }

  /** What ends a recording can be used while there is one. */
  void recording(boolean on) {
    recorder.forEach(item -> item.setEnabled(on));
  }

  /** With a sealed bench nothing begins. */
  void sealed(boolean on) {
    for (JMenuItem item : fresh) {
      item.setEnabled(!on);
      item.setToolTipText(words.text(on ? "lesson.new-sealed" : "lesson.new-hint"));
    }
  }

  private JMenu recent(String key, Consumer<Path> open) {
    return RecentFiles.menu(words, key, "lesson.no-recent", editing::recent, open);
  }

  private JMenu menu(String key, int mnemonic) {
    JMenu menu = new JMenu(words.text(key));
    menu.setName("menu-" + key);
    menu.setMnemonic(mnemonic);
    return menu;
  }

  private JMenuItem item(String key, Runnable action) {
    JMenuItem item = new JMenuItem(words.text(key));
    item.setName("menu-" + key);
    item.addActionListener(e -> action.run());
    return item;
  }

  private JMenuItem item(String key, int code, int modifiers, Runnable action) {
    JMenuItem item = item(key, action);
    item.setAccelerator(KeyStroke.getKeyStroke(code, modifiers));
    return item;
  }
}
