package halfwave.gui.swing.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.ClaimWords;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.lesson.Claim;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Claims of a step or of an answer, one line each. */
final class ClaimsForm extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient EditorModel model;
  private final @Nullable Integer answer;

  /** The step that was chosen when this was made; another may be by the time an answer comes. */
  private final int step;

  ClaimsForm(Theme theme, Wording words, EditorModel model, @Nullable Integer answer) {
    super(new MigLayout("insets 0, gap 6 2, fillx, novisualpadding", "[grow,fill][][]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.answer = answer;
    step = model.step();
    setOpaque(false);
    String of = answer == null ? "step" : "answer" + answer;
    List<Claim> claims = model.draft().claims(step, answer);
    for (int k = 0; k < claims.size(); k++) {
      int index = k;
      String sentence = ClaimWords.sentence(claims.get(k), words);
      add(Lettering.paragraph(sentence, theme.body(), theme.palette().ink()), "wmin 0, growx");
      JButton change = Forms.button(words, "editor.claim-change", () -> change(index));
      change.setName("claim.change." + of + "." + k);
      change.getAccessibleContext().setAccessibleName(change.getText() + ": " + sentence);
      add(change);
      JButton remove =
          Forms.remove(theme, words.text("editor.remove", sentence), () -> drop(index));
      remove.setName("claim.remove." + of + "." + k);
      add(remove, "wrap");
    }
    JButton more = Forms.button(words, "editor.claim-add", this::addOne);
    more.setName("claim.add." + of);
    more.setToolTipText(words.text("editor.claim-add-hint"));
    add(more, "growx 0, span");
  }

  private void addOne() {
    model.find(
        null,
        found -> {
          if (present()) {
            new ClaimDialog(this, theme, words, found)
                .ask(null)
                .ifPresent(claim -> change(all -> all.add(claim)));
          }
        });
  }

  private void change(int index) {
    if (!present()) {
      return;
    }
    Claim old = model.draft().claims(step, answer).get(index);
    model.find(
        ClaimDialog.reading(old),
        found -> {
          if (present()) {
            new ClaimDialog(this, theme, words, found)
                .ask(old)
                .ifPresent(claim -> change(all -> all.set(index, claim)));
          }
        });
  }

  private void drop(int index) {
    change(all -> all.remove((int) index));
  }

  /** Whether this still stands for what it was made of: the draft may have moved on meanwhile. */
  private boolean present() {
    return isDisplayable() && model.step() == step;
  }

  private void change(Consumer<List<Claim>> how) {
    if (present()) {
      List<Claim> all = new ArrayList<>(model.draft().claims(step, answer));
      how.accept(all);
      model.changeClaims(answer, all);
    }
  }
}
