package halfwave.gui.swing.editor;

import halfwave.display.Sentences;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.presentation.editor.EditorWords;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.TextCell;
import halfwave.gui.swing.widget.Theme;
import halfwave.lesson.DraftPlace;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The texts of a form, each in all chosen languages side by side. */
final class DraftTexts {

  private final Theme theme;
  private final Wording words;
  private final EditorModel model;
  private final List<Locale> languages;
  private final List<Bound> bound = new ArrayList<>();

  /** A cell and what it shows. */
  private record Bound(DraftPlace place, String tag, TextCell cell) {}

  DraftTexts(Theme theme, Wording words, EditorModel model, List<Locale> languages) {
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.languages = List.copyOf(languages);
  }

  /** Name of a language in itself. */
  static String name(Locale language) {
    return Wording.capital(language.getDisplayLanguage(language));
  }

  /** Columns of the same width, one for each language. */
  static String columns(int count) {
    return "[grow,fill,sg l]".repeat(count);
  }

  void forget() {
    bound.clear();
  }

  /** A label and the cells below it. */
  JComponent row(DraftPlace place, String label, int rows) {
    JPanel row = cells(place, label, rows);
    JLabel name = Lettering.label(label, theme.note(), theme.palette().softInk());
    name.setLabelFor(bound.get(bound.size() - languages.size()).cell());
    row.add(name, "cell 0 0, spanx, wrap");
    return row;
  }

  /** The cells alone. */
  JPanel cells(DraftPlace place, String label, int rows) {
    JPanel row =
        new JPanel(
            new MigLayout("insets 0, gap 8 2, fillx, novisualpadding", columns(languages.size())));
    row.setOpaque(false);
    for (int k = 0; k < languages.size(); k++) {
      String tag = languages.get(k).toLanguageTag();
      TextCell cell =
          new TextCell(
              theme,
              "draft." + key(place) + "." + tag,
              words.text("editor.field", label, name(languages.get(k))),
              model.draft().text(place).in(tag),
              rows,
              text -> type(place, tag, text));
      bound.add(new Bound(place, tag, cell));
      row.add(cell, "cell " + k + " 1, wmin 0, growx, top");
    }
    return row;
  }

  private static String key(DraftPlace place) {
    String field = place.field().name().toLowerCase(Locale.ROOT);
    return place.field() == DraftPlace.Field.ANSWER
        ? field + EditorWords.letter(place.answer())
        : field;
  }

  private void type(DraftPlace place, String tag, String text) {
    // word by word: so much is lost by one step back
    int typedWords = text.split("\\s+", -1).length;
    model.change(
        model.draft().with(place, model.draft().text(place).with(tag, text)),
        model.step(),
        key(place) + "/" + place.step() + "/" + tag + "/" + typedWords);
  }

  /** Shows texts that changed otherwise than by typing. */
  void refresh() {
    for (Bound one : bound) {
      one.cell().show(model.draft().text(one.place()).in(one.tag()));
    }
  }

  /** All languages there are. */
  static List<Locale> all() {
    return Sentences.LANGUAGES;
  }
}
