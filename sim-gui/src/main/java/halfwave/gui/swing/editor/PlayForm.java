package halfwave.gui.swing.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.presentation.editor.EditorWords;
import halfwave.gui.presentation.editor.PlayNumbers;
import halfwave.gui.presentation.editor.PlayWaits;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Says;
import halfwave.gui.swing.widget.Theme;
import halfwave.lesson.Play;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** What is played: its acts, length and speed. */
final class PlayForm extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;

  /**
   * A form.
   *
   * @param play what is played now
   * @param withSpeed whether its speed can be chosen
   * @param changed takes what comes of it
   * @param waited takes what comes of other waiting
   */
  PlayForm(
      Theme theme,
      Wording words,
      Play play,
      boolean withSpeed,
      Consumer<Play> changed,
      Consumer<Play> waited) {
    super(new MigLayout("insets 0, gap 6 3, fillx, novisualpadding", "[grow,fill][][]"));
    this.theme = theme;
    this.words = words;
    setOpaque(false);
    List<String> lines = EditorWords.acts(play, words);
    if (lines.isEmpty()) {
      add(
          Lettering.paragraph(
              words.text(play.lasts() ? "editor.no-acts" : "editor.no-play"),
              theme.body(),
              theme.palette().softInk()),
          "span, wmin 0, growx, wrap");
    }
    if (!lines.isEmpty()) {
      add(note("editor.acts"), "wmin 0, growx");
      add(note("editor.waits"), "span 2, wrap");
    }
    for (int k = 0; k < lines.size(); k++) {
      int act = k;
      String line = lines.get(k);
      add(Lettering.paragraph(line, theme.body(), theme.palette().ink()), "wmin 0, growx");
      wait(play, k, words.text("editor.wait-before", line), waited);
      var remove =
          Forms.remove(
              theme,
              words.text("editor.remove", line),
              () -> changed.accept(PlayNumbers.without(play, act)));
      remove.setName("act.remove." + k);
      add(remove, "wrap");
    }
    if (!lines.isEmpty()) {
      add(note("editor.then-waits"), "wmin 0, growx");
      wait(play, lines.size(), words.text("editor.then-waits"), waited);
      add(new JLabel(), "wrap");
    }
    if (!lines.isEmpty()) {
      JButton shorten =
          Forms.button(
              words,
              "editor.shorten",
              "editor.shorten-hint",
              () -> waited.accept(PlayWaits.shortened(play)));
      // one that went would take its room from under the mouse
      shorten.setEnabled(PlayWaits.canShorten(play));
      add(shorten, "span, growx 0, wrap");
    }
    JPanel numbers = new JPanel(new MigLayout("insets 4 0 0 0, gap 6, novisualpadding"));
    numbers.setOpaque(false);
    number(
        numbers,
        "editor.length",
        PlayNumbers.length(play, words),
        PlayNumbers.lengths(play, words),
        text -> PlayNumbers.withLength(play, text, words),
        changed);
    if (withSpeed) {
      number(
          numbers,
          "editor.speed",
          PlayNumbers.speed(play, words),
          PlayNumbers.speeds(words),
          text -> PlayNumbers.withSpeed(play, text, words),
          changed);
    }
    add(numbers, "span");
  }

  private void number(
      JPanel into,
      String key,
      String value,
      String range,
      Function<String, Optional<Play>> read,
      Consumer<Play> changed) {
    JTextField field = field(key, words.text(key), 7, value, range, read, changed);
    JLabel label = Lettering.label(words.text(key), theme.body(), theme.palette().ink());
    label.setLabelFor(field);
    into.add(label);
    into.add(field, "gapright 14");
  }

  private JLabel note(String key) {
    return Lettering.label(words.text(key), theme.note(), theme.palette().softInk());
  }

  private void wait(Play play, int act, String name, Consumer<Play> waited) {
    add(
        field(
            "act.wait." + act,
            name,
            5,
            PlayWaits.typed(play, act, words),
            PlayWaits.range(play, act, words),
            text -> PlayWaits.with(play, act, text, words),
            waited),
        "growx 0");
  }

  /** A field that keeps what is typed when it is left, or says what may be typed. */
  private JTextField field(
      String key,
      String name,
      int columns,
      String value,
      String range,
      Function<String, Optional<Play>> read,
      Consumer<Play> changed) {
    JTextField field = new JTextField(value, columns);
    field.setName(key);
    field.setToolTipText(words.text("editor.number", name, range));
    field.getAccessibleContext().setAccessibleName(name);
    Runnable take =
        () -> {
          if (field.getText().equals(value)) {
            return;
          }
          Optional<Play> other = read.apply(field.getText());
          field.putClientProperty("JComponent.outline", other.isPresent() ? null : "error");
          if (other.isPresent()) {
            changed.accept(other.get());
          } else {
            Says.beside(field, theme, words.text("knob.refused", name, range));
          }
        };
    field.addActionListener(e -> take.run());
    // before it closes the editor it takes back what is typed
    Keys.bind(
        field,
        JComponent.WHEN_FOCUSED,
        KeyEvent.VK_ESCAPE,
        () -> !field.getText().equals(value),
        () -> {
          field.setText(value);
          field.putClientProperty("JComponent.outline", null);
        });
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            take.run();
          }
        });
    return field;
  }

  /** What a step shows. */
  static PlayForm ofStep(Theme theme, Wording words, EditorModel model) {
    int step = model.step();
    return new PlayForm(
        theme,
        words,
        model.draft().steps().get(step).play(),
        true,
        play -> {
          var changed = model.draft().steps().get(step).with(play);
          model.change(model.draft().with(step, changed), step, null);
        },
        model::changeWaits);
  }

  /** What is played before the first step. */
  static PlayForm ofStart(Theme theme, Wording words, EditorModel model) {
    return new PlayForm(
        theme,
        words,
        model.draft().start(),
        false,
        play -> model.change(model.draft().withStart(play), model.step(), null),
        model::changeWaits);
  }
}
