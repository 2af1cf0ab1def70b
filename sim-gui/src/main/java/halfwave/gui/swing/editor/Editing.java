package halfwave.gui.swing.editor;

import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.Settings;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.DraftAutosave;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.presentation.editor.NewDraft;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.gui.presentation.lesson.LessonSource;
import halfwave.gui.presentation.lesson.LessonTitles;
import halfwave.gui.swing.lesson.LessonDesk;
import halfwave.gui.swing.lesson.LessonPanel;
import halfwave.gui.swing.widget.FileChoices;
import halfwave.gui.swing.widget.RememberedBounds;
import halfwave.gui.swing.widget.Theme;
import halfwave.io.lesson.DraftRecoveryFile;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Draft;
import java.awt.Component;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * The window in which demonstrations are made. It does not hold up the main window: what is done
 * there is what is recorded.
 */
public final class Editing implements LessonDesk {

  private final JFrame over;
  private final LessonModel lesson;
  private final EditorModel model;
  private final FileChoices choices;
  private final Supplier<Settings> settings;
  private final Consumer<UnaryOperator<Settings>> remember;
  private final EditorDialog dialog;
  private final DraftAutosave autosave;
  private final LessonTitles titles;
  private @Nullable Face face;

  /** Whether the draft is being shown in the player: the editor comes back after it. */
  private boolean trying;

  /** What is seen of it, made when it is opened. */
  private @Nullable Sheet sheet;

  /**
   * How it looks in one language and look.
   *
   * @param theme colours and type
   * @param menus the menus
   * @param files the file dialogs
   * @param words the words
   * @param player the player
   * @param toPlayer brings it to the front
   * @param mayBegin whether the bench may be left for a demonstration
   */
  private record Face(
      Theme theme,
      EditorMenus menus,
      EditorFiles files,
      Wording words,
      LessonPanel player,
      Runnable toPlayer,
      BooleanSupplier mayBegin) {}

  /**
   * What is in its window.
   *
   * @param panel the panel
   * @param recorder what is seen of it while it records
   * @param bar the menus of its window
   */
  private record Sheet(EditorPanel panel, RecorderPanel recorder, JMenuBar bar) {}

  /**
   * No editor is open yet.
   *
   * @param over the main window
   * @param model the draft
   * @param lesson the player
   * @param background reads and keeps files
   * @param choices asks for files
   * @param settings what is remembered
   * @param remember changes what is remembered
   * @param folder where drafts are kept in case the program crashes
   * @param help opens help about the editor
   */
  public Editing(
      JFrame over,
      EditorModel model,
      LessonModel lesson,
      Executor background,
      FileChoices choices,
      Supplier<Settings> settings,
      Consumer<UnaryOperator<Settings>> remember,
      RecoveryFolder<DraftRecoveryFile> folder,
      Runnable help) {
    this.over = over;
    this.model = model;
    this.lesson = lesson;
    this.choices = choices;
    this.settings = settings;
    this.remember = remember;
    autosave = new DraftAutosave(model, folder, background, SwingUtilities::invokeLater);
    titles = new LessonTitles(background, SwingUtilities::invokeLater, this::titled);
    dialog = new EditorDialog(over, help, this::close);
    model.subscribe(this::refresh);
    lesson.subscribe(this::played);
  }

  /** Another language or look: what is open is made anew, the rest when it is opened. */
  public void dress(
      Theme theme, Wording words, LessonPanel player, Runnable toPlayer, BooleanSupplier mayBegin) {
    EditorFiles files = new EditorFiles(words, model, this::used, choices);
    EditorMenus menus = new EditorMenus(words, model, this);
    face = new Face(theme, menus, files, words, player, toPlayer, mayBegin);
    if (sheet != null) {
      sheet = null;
      dialog.undress();
    }
    refresh();
  }

  private Sheet sheet(Face now) {
    if (sheet == null) {
      EditorPanel panel = new EditorPanel(now.theme(), now.words(), model, this::save, this::tryIt);
      RecorderPanel recorder = new RecorderPanel(now.theme(), now.words(), model);
      sheet = new Sheet(panel, recorder, now.menus().bar(panel));
      dialog.dress(now.theme(), sheet.bar(), panel, settings.get().lessons().frame());
      now.menus().sealed(model.sealed());
    }
    return sheet;
  }

  private Face face() {
    if (face == null) {
      throw new IllegalStateException("not dressed yet");
    }
    return face;
  }

  /** The menu in the main window. */
  public JMenu menu() {
    return face().menus().main();
  }

  private void refresh() {
    if (face != null) {
      face.menus().sealed(model.sealed());
    }
    if (face != null && model.open()) {
      Sheet open = sheet(face);
      make(face, open, model.bench().recording());
      face.menus().recording(model.bench().recording());
      open.panel().refresh();
      open.recorder().refresh();
      String title =
          model.draft().title().words().map(w -> w.in(face().words().locale())).orElse("");
      dialog.setTitle(
          face.words().text(title.isEmpty() ? "editor.window-new" : "editor.window", title));
    }
  }

  private void make(Face now, Sheet open, boolean room) {
    if (room && !dialog.little()) {
      dialog.makeRoom(now.theme(), open.recorder());
      over.requestFocus();
    } else if (!room && dialog.little()) {
      dialog.whole(open.bar(), open.panel());
      dialog.toFront();
    }
  }

  /** After a trial the editor is there again. */
  private void played() {
    if (trying && lesson.at() == null && !lesson.preparing()) {
      trying = false;
      if (model.open()) {
        dialog.setVisible(true);
      }
    }
  }

  private void used(Path file) {
    Path whole = file.toAbsolutePath();
    titles.forget(whole);
    remember.accept(s -> s.withLessons(s.lessons().withRecent(whole)));
    face().player().refresh();
  }

  private void titled() {
    face().player().refresh();
  }

  private Component front() {
    return dialog.isVisible() ? dialog : over;
  }

  /** Files that were opened or saved, the latest first. */
  List<Path> recent() {
    return settings.get().lessons().recent();
  }

  @Override
  public List<Own> own() {
    Locale locale = face().words().locale();
    return recent().stream().map(file -> new Own(file, titles.of(file, locale))).toList();
  }

  /** The demonstrations that can go on paper. */
  List<LessonSource> sources() {
    Draft edited = model.open() ? model.draft() : null;
    return LessonSource.all(edited, model.file(), recent(), face().words());
  }

  /** The demonstration of a source; nothing where it cannot be read, or nobody chose a file. */
  Optional<Demonstration> read(LessonSource source) {
    if (source.demonstration() != null) {
      return Optional.of(source.demonstration());
    }
    return Optional.ofNullable(source.file())
        .or(() -> face().files().askOpen(over))
        .flatMap(file -> face().files().read(over, file));
  }

  @Override
  public void open() {
    face().files().askOpen(over).ifPresent(this::show);
  }

  @Override
  public void show(Path file) {
    face().files().read(over, file).ifPresent(this::play);
  }

  /** Plays a demonstration, if the bench may be left for it. */
  void play(Demonstration demonstration) {
    if (face().mayBegin().getAsBoolean()) {
      face().toPlayer().run();
      lesson.begin(demonstration);
    }
  }

  @Override
  public void create() {
    if (model.ready() && !model.sealed() && face().files().mayLeave(front())) {
      model.create();
      appear();
    }
  }

  @Override
  public void copy(Demonstration demonstration) {
    begin(NewDraft.copy(demonstration), null);
  }

  @Override
  public void edit(Path file) {
    face().files().read(front(), file).ifPresent(d -> begin(Draft.of(d), file));
  }

  void openToEdit() {
    face().files().askOpen(front()).ifPresent(this::edit);
  }

  private void begin(Draft draft, @Nullable Path file) {
    if (model.ready() && face().files().mayLeave(front())) {
      model.begin(draft, file);
      appear();
    }
  }

  private void appear() {
    refresh();
    dialog.setVisible(true);
    dialog.toFront();
    sheet(face()).panel().steps().focus();
  }

  void save() {
    face().files().save(dialog);
  }

  void saveAs() {
    face().files().saveAs(dialog);
  }

  void tryIt() {
    if (model.tryIt()) {
      trying = true;
      dialog.setVisible(false);
      face().toPlayer().run();
      over.toFront();
    }
  }

  void close() {
    leave(() -> {});
  }

  /**
   * Closes the editor, unless somebody minds.
   *
   * @param then is done once the bench is as it was before
   */
  public void leave(Runnable then) {
    if (!model.open()) {
      then.run();
    } else if (face().files().mayLeave(front())) {
      trying = false;
      List<Integer> frame = RememberedBounds.kept(dialog.wholeBounds());
      remember.accept(s -> s.withLessons(s.lessons().withFrame(frame)));
      dialog.setVisible(false);
      model.leave(then);
    }
  }

  /**
   * A draft may have been left behind by a program that did not end as it should.
   *
   * @param then is done afterwards, in every case
   */
  public void look(Runnable then) {
    autosave.look(
        left ->
            face()
                .files()
                .askBack(
                    over,
                    left,
                    () -> {
                      autosave.bringBack(left);
                      appear();
                    },
                    autosave::leave),
        then);
  }

  /** Time has passed on the wall (ms, of any clock that does not go back). */
  public void tick(long nowMillis) {
    autosave.tick(nowMillis);
  }

  /** Without a question. */
  public void end() {
    autosave.end();
    dialog.dispose();
  }
}
