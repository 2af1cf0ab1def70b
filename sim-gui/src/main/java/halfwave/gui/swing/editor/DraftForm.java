package halfwave.gui.swing.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.presentation.editor.EditorWords;
import halfwave.gui.presentation.editor.LitChoices;
import halfwave.gui.swing.widget.CautionPlate;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Reserved;
import halfwave.gui.swing.widget.TextCell;
import halfwave.gui.swing.widget.Theme;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftPlace;
import halfwave.lesson.DraftPlace.Field;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The chosen step, or what belongs to the whole, as a form to be filled in. */
final class DraftForm extends JPanel {

  private static final long serialVersionUID = 1L;

  /** Two lines; what the model does otherwise may take more, and is scrolled (px). */
  private static final double DOUBTS_HEIGHT = 50;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient EditorModel model;
  private final Column column;
  private final JScrollPane scroll;
  private final CautionPlate doubts;
  private final Reserved doubted;
  private transient List<Locale> languages;
  private transient DraftTexts texts;
  private @Nullable RecordForm record;
  private @Nullable JButton rebench;
  private @Nullable transient Shape shown;

  /** What decides which controls there are. */
  private record Shape(Draft wordless, int step, List<Locale> languages) {}

  DraftForm(Theme theme, Wording words, EditorModel model) {
    super(new BorderLayout());
    this.theme = theme;
    this.words = words;
    this.model = model;
    languages = DraftTexts.all();
    texts = new DraftTexts(theme, words, model, languages);
    doubts = new CautionPlate(theme, words.text("editor.doubts"));
    doubts.setName("editor.doubts");
    setOpaque(false);
    column = new Column(theme);
    scroll = column.scrolled();
    // the names of the languages stand above their columns, whether there is a bar or not
    scroll.setVerticalScrollBarPolicy(ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS);
    add(scroll, BorderLayout.CENTER);
    // below the form and always there: it comes and goes while somebody types
    doubted = new Reserved(theme, DOUBTS_HEIGHT, doubts);
    doubted.setBorder(BorderFactory.createEmptyBorder(theme.px(4), 0, 0, 0));
    add(doubted, BorderLayout.SOUTH);
  }

  /** In these languages. */
  void speak(List<Locale> chosen) {
    languages = List.copyOf(chosen);
    texts = new DraftTexts(theme, words, model, languages);
    refresh();
  }

  /** Shows what the draft has. */
  void refresh() {
    if (!model.open()) {
      return;
    }
    Shape now = new Shape(model.draft().wordless(), model.step(), languages);
    List<String> found =
        EditorWords.of(model.step(), EditorWords.doubts(model.draft(), model.checked(), words))
            .stream()
            .map(EditorWords.Doubt::text)
            .collect(Collectors.toList());
    if (doubts.show(found)) {
      doubted.toTop();
    }
    if (now.equals(shown)) {
      texts.refresh();
      if (record != null) {
        record.refresh();
      }
      seal();
      return;
    }
    boolean same = shown != null && shown.step() == now.step();
    Focus focus = Focus.within(this);
    shown = now;
    build();
    Rectangle top = new Rectangle(0, 0, 1, 1);
    SwingUtilities.invokeLater(
        () -> {
          if (same) {
            focus.bringBack(this);
          } else {
            column.scrollRectToVisible(top);
          }
        });
  }

  private void build() {
    column.removeAll();
    texts.forget();
    record = null;
    rebench = null;
    if (model.step() == DraftPlace.WHOLE) {
      whole();
    } else {
      step();
    }
    revalidate();
    repaint();
  }

  private void whole() {
    put(texts.row(DraftPlace.whole(Field.TITLE), words.text("editor.title"), 1));
    put(texts.row(DraftPlace.whole(Field.ABOUT), words.text("editor.about"), 3));
    section("editor.start");
    String bench = model.draft().bench().name();
    put(
        Lettering.paragraph(
            words.text("editor.bench-is", words.sentences().bench(bench).orElse(bench)),
            theme.body(),
            theme.palette().ink()));
    put(PlayForm.ofStart(theme, words, model));
    JPanel row = new JPanel(new MigLayout("insets 0, novisualpadding"));
    row.setOpaque(false);
    rebench = Forms.button(words, "editor.rebench", model::rebench);
    seal();
    row.add(rebench);
    put(row);
  }

  /** A draft does not take over what is hidden. */
  private void seal() {
    if (rebench != null) {
      rebench.setEnabled(!model.sealed());
      rebench.setToolTipText(
          words.text(model.sealed() ? "lesson.new-sealed" : "editor.rebench-hint"));
    }
  }

  private void step() {
    int step = model.step();
    put(texts.row(DraftPlace.of(step, Field.HEADING), words.text("editor.heading"), 1));
    put(texts.row(DraftPlace.of(step, Field.SAY), words.text("editor.say"), 3));
    section("editor.question");
    put(new QuestionForm(theme, words, model, texts));
    section("editor.shows");
    record = new RecordForm(theme, words, model);
    put(record);
    put(PlayForm.ofStep(theme, words, model));
    section("editor.afterwards");
    put(texts.row(DraftPlace.of(step, Field.EXPLANATION), words.text("editor.explanation"), 3));
    section("editor.claims");
    put(new ClaimsForm(theme, words, model, null));
    section("editor.lit");
    put(lit());
  }

  private JComponent lit() {
    JPanel all =
        new JPanel(
            new MigLayout(
                "insets 0, gap 10 2, fillx, wrap 2, novisualpadding", "[sg c,grow][sg c,grow]"));
    all.setOpaque(false);
    int step = model.step();
    for (LitChoices.Choice choice : LitChoices.of(model.draft().steps().get(step).lit(), words)) {
      JCheckBox box = new JCheckBox(choice.name(), choice.lit());
      box.setName("lit." + choice.drawn().name());
      box.setOpaque(false);
      box.addActionListener(
          e -> {
            var one = model.draft().steps().get(step);
            var lit = LitChoices.with(one.lit(), choice.drawn(), box.isSelected());
            model.change(model.draft().with(step, one.with(lit)), step, null);
          });
      all.add(box);
    }
    return all;
  }

  private void section(String key) {
    column.add(
        Lettering.label(words.text(key), theme.heading(), theme.palette().ink()),
        "gaptop 10, wrap");
  }

  private void put(JComponent part) {
    column.add(part, "growx, wmin 0, wrap");
  }

  /** Brings the keyboard to a text, wherever it stands. */
  void focus(String name) {
    new Focus(name, 0, scroll.getVerticalScrollBar().getValue()).bringBack(this);
  }

  /**
   * What has the keyboard, by its name: a form that is made anew gives it back.
   *
   * @param name its name, or null
   * @param caret where it writes
   * @param scrolled how far the form is scrolled
   */
  private record Focus(@Nullable String name, int caret, int scrolled) {

    static Focus within(DraftForm form) {
      Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
      boolean inside = owner != null && SwingUtilities.isDescendingFrom(owner, form);
      int caret = owner instanceof TextCell cell ? cell.getCaretPosition() : 0;
      int scrolled = form.scroll.getVerticalScrollBar().getValue();
      return new Focus(inside && owner != null ? owner.getName() : null, caret, scrolled);
    }

    void bringBack(DraftForm form) {
      form.validate();
      form.scroll.getVerticalScrollBar().setValue(scrolled);
      Component owner = name == null ? null : named(form, name);
      if (owner != null) {
        owner.requestFocusInWindow();
      }
      if (owner instanceof TextCell cell) {
        cell.setCaretPosition(Math.min(caret, cell.getText().length()));
      }
    }

    private static @Nullable Component named(Container within, String name) {
      for (Component c : within.getComponents()) {
        Component found =
            name.equals(c.getName()) ? c : c instanceof Container inner ? named(inner, name) : null;
        if (found != null) {
          return found;
        }
      }
      return null;
    }
  }
}
