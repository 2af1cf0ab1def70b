package halfwave.gui.swing;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.BoardSettings;
import halfwave.display.Sentences;
import halfwave.display.UnitSystem;
import halfwave.gui.presentation.Settings;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.BarView;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.gui.swing.widget.Opened;
import halfwave.gui.swing.widget.RecentFiles;
import halfwave.gui.swing.widget.Rows;
import halfwave.picture.scene.DrawnView;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;

/** The menus of the window. */
final class Menus {

  private final Wording words;
  private final Workbench workbench;
  private final BenchFiles files;
  private final Settings settings;
  private final boolean motion;
  private final Supplier<List<Path>> recent;
  private final Consumer<UnaryOperator<Settings>> changed;
  private final DrawingPanel drawing;
  private final Runnable projector;
  private final Help help;
  private final Runnable quit;

  Menus(
      Wording words,
      Workbench workbench,
      BenchFiles files,
      Settings settings,
      boolean motion,
      Supplier<List<Path>> recent,
      Consumer<UnaryOperator<Settings>> changed,
      DrawingPanel drawing,
      Runnable projector,
      Help help,
      Runnable quit) {
    this.words = words;
    this.workbench = workbench;
    this.files = files;
    this.settings = settings;
    this.motion = motion;
    this.recent = recent;
    this.changed = changed;
    this.drawing = drawing;
    this.projector = projector;
    this.help = help;
    this.quit = quit;
  }

  JMenuBar bar() {
    JMenuBar bar = new JMenuBar();
    // in large type a small window has no room for all of them in one row
    bar.setLayout(new Rows(0, 0, 0));
    bar.add(bench());
    bar.add(edit());
    bar.add(look());
    bar.add(help());
    return bar;
  }

  /** The menus that help nobody who is examined: how the windows look, and help. */
  JMenuBar examinationBar() {
    JMenuBar bar = new JMenuBar();
    JMenu menu = menu("menu.view", KeyEvent.VK_V);
    appearance(menu);
    bar.add(menu);
    bar.add(help());
    return bar;
  }

  private JMenuItem item(String key, Runnable action) {
    JMenuItem item = new JMenuItem(words.text(key));
    item.setName(key);
    item.addActionListener(e -> action.run());
    return item;
  }

  private JMenuItem item(String key, int code, int modifiers, Runnable action) {
    JMenuItem item = item(key, action);
    item.setAccelerator(KeyStroke.getKeyStroke(code, modifiers));
    return item;
  }

  private JMenu menu(String key, int mnemonic) {
    JMenu menu = new JMenu(words.text(key));
    menu.setName(key);
    menu.setMnemonic(mnemonic);
    return menu;
  }

  private JMenu bench() {
    JMenu menu = menu("menu.bench", KeyEvent.VK_B);
    JMenu shipped = new JMenu(words.text("menu.shipped"));
    for (Bench bench : ShippedBenches.all()) {
      JMenuItem item = new JMenuItem(words.text("bench." + bench.name()));
      item.setName("bench." + bench.name());
      words.sentences().bench(bench.name()).ifPresent(item::setToolTipText);
      item.addActionListener(e -> files.openShipped(bench));
      shipped.add(item);
    }
    menu.add(shipped);
    menu.add(boards());
    menu.addSeparator();
    menu.add(item("menu.open", KeyEvent.VK_O, InputEvent.CTRL_DOWN_MASK, files::askOpen));
    menu.add(
        RecentFiles.menu(
            words, "menu.open-recent", "menu.no-recent", recent, files::openIfAllowed));
    menu.add(item("menu.save", KeyEvent.VK_S, InputEvent.CTRL_DOWN_MASK, files::save));
    menu.add(
        item(
            "menu.save-as",
            KeyEvent.VK_S,
            InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK,
            files::saveAs));
    menu.addSeparator();
    menu.add(item("menu.quit", KeyEvent.VK_Q, InputEvent.CTRL_DOWN_MASK, quit));
    return menu;
  }

  /**
   * Which boards fit depends on the bench, so they are looked up when someone wants to see them.
   */
  private JMenu boards() {
    JMenu menu = new JMenu(words.text("menu.board"));
    menu.setName("menu.board");
    menu.addMenuListener(new Opened(() -> fillBoards(menu)));
    return menu;
  }

  private void fillBoards(JMenu menu) {
    menu.removeAll();
    if (!workbench.ready()) {
      return;
    }
    ButtonGroup group = new ButtonGroup();
    BoardSettings on = workbench.shown().moment().settings();
    for (BoardSettings board : BarView.boards(workbench.shown().moment().bench())) {
      String name = words.sentences().board(board.name()).orElse(board.name());
      JRadioButtonMenuItem item =
          new JRadioButtonMenuItem(Wording.capital(name), board.name().equals(on.name()));
      item.addActionListener(a -> files.changeBoard(board));
      group.add(item);
      menu.add(item);
    }
  }

  private JMenu edit() {
    JMenu menu = menu("menu.edit", KeyEvent.VK_E);
    menu.addMenuListener(new Opened(() -> EditWords.tell(menu, words, workbench)));
    menu.add(
        item(
            "bar.undo",
            KeyEvent.VK_Z,
            InputEvent.CTRL_DOWN_MASK,
            () -> workbench.want(new Intent.Undo())));
    menu.add(
        item(
            "bar.redo",
            KeyEvent.VK_Z,
            InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK,
            () -> workbench.want(new Intent.Redo())));
    return menu;
  }

  private JMenu look() {
    JMenu menu = menu("menu.view", KeyEvent.VK_V);
    ButtonGroup views = new ButtonGroup();
    menu.add(view(views, "menu.above", DrawnView.ABOVE));
    menu.add(view(views, "menu.side", DrawnView.SIDE));
    menu.add(item("menu.projector", KeyEvent.VK_F11, 0, projector));
    menu.addSeparator();
    appearance(menu);
    return menu;
  }

  private void appearance(JMenu menu) {
    ButtonGroup look = new ButtonGroup();
    menu.add(
        choice(
            look,
            "menu.light",
            words.text("menu.light"),
            !settings.dark(),
            s -> s.withDark(false)));
    menu.add(
        choice(look, "menu.dark", words.text("menu.dark"), settings.dark(), s -> s.withDark(true)));
    JCheckBoxMenuItem sways = new JCheckBoxMenuItem(words.text("menu.motion"), motion);
    sways.setName("menu.motion");
    sways.addActionListener(e -> changed.accept(s -> s.withMotion(sways.isSelected())));
    menu.add(sways);
    JMenu size = new JMenu(words.text("menu.text-size"));
    ButtonGroup sizes = new ButtonGroup();
    for (double ratio : Settings.TEXT_RATIOS) {
      size.add(
          choice(
              sizes,
              "text." + Math.round(100 * ratio),
              Math.round(100 * ratio) + " %",
              settings.textRatio() == ratio,
              s -> s.withTextRatio(ratio)));
    }
    menu.add(size);
    menu.addSeparator();
    JMenu language = new JMenu(words.text("menu.language"));
    ButtonGroup languages = new ButtonGroup();
    for (Locale locale : Sentences.LANGUAGES) {
      String tag = locale.toLanguageTag();
      language.add(
          choice(
              languages,
              "language." + tag,
              Wording.capital(locale.getDisplayLanguage(locale)),
              words.locale().getLanguage().equals(locale.getLanguage()),
              s -> s.withLanguage(tag)));
    }
    menu.add(language);
    JMenu units = new JMenu(words.text("menu.units"));
    ButtonGroup systems = new ButtonGroup();
    for (UnitSystem system : UnitSystem.values()) {
      String key = "menu." + system.name().toLowerCase(Locale.ROOT);
      units.add(
          choice(
              systems, key, words.text(key), settings.units() == system, s -> s.withUnits(system)));
    }
    menu.add(units);
  }

  /** From where the flame zone is seen; the one that is chosen is marked. */
  private JMenuItem view(ButtonGroup group, String key, DrawnView from) {
    JRadioButtonMenuItem item = new JRadioButtonMenuItem(words.text(key), drawing.view() == from);
    item.setName(key);
    item.addActionListener(e -> drawing.view(from));
    group.add(item);
    return item;
  }

  /** Changes one setting of those that hold by then: others may have changed meanwhile. */
  private JMenuItem choice(
      ButtonGroup group, String key, String name, boolean on, UnaryOperator<Settings> change) {
    JRadioButtonMenuItem item = new JRadioButtonMenuItem(name, on);
    item.setName(key);
    item.addActionListener(e -> changed.accept(change));
    group.add(item);
    return item;
  }

  private JMenu help() {
    JMenu menu = menu("menu.help", KeyEvent.VK_H);
    menu.add(item("menu.topics", KeyEvent.VK_F1, 0, help::here));
    menu.add(item("menu.keys", () -> help.open("keyboard")));
    menu.add(item("menu.glossary", () -> help.open("glossary")));
    menu.add(item("menu.cautions", () -> help.open("cautions")));
    menu.add(item("menu.about", () -> help.open("about")));
    return menu;
  }
}
