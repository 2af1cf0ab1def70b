package halfwave.gui.swing;

import halfwave.gui.presentation.EditorModel;
import halfwave.gui.presentation.EditorWords;
import halfwave.gui.presentation.PlayNumbers;
import halfwave.gui.presentation.Wording;
import halfwave.lesson.Play;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
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
   */
  PlayForm(Theme theme, Wording words, Play play, boolean withSpeed, Consumer<Play> changed) {
    super(new MigLayout("insets 0, gap 6 3, fillx, novisualpadding", "[grow,fill][]"));
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
    for (int k = 0; k < lines.size(); k++) {
      int act = k;
      String line = lines.get(k);
      add(Lettering.paragraph(line, theme.body(), theme.palette().ink()), "wmin 0, growx");
      var remove =
          Forms.remove(
              theme,
              words.text("editor.remove", line),
              () -> changed.accept(PlayNumbers.without(play, act)));
      remove.setName("act.remove." + k);
      add(remove, "wrap");
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
    JTextField field = new JTextField(value, 7);
    field.setName(key);
    field.setToolTipText(words.text("editor.number", words.text(key), range));
    JLabel label = Lettering.label(words.text(key), theme.body(), theme.palette().ink());
    label.setLabelFor(field);
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
            Says.beside(field, theme, words.text("knob.refused", words.text(key), range));
          }
        };
    field.addActionListener(e -> take.run());
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            take.run();
          }
        });
    into.add(label);
    into.add(field, "gapright 14");
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
        });
  }

  /** What is played before the first step. */
  static PlayForm ofStart(Theme theme, Wording words, EditorModel model) {
    return new PlayForm(
        theme,
        words,
        model.draft().start(),
        false,
        play -> model.change(model.draft().withStart(play), model.step(), null));
  }
}
