package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.CallDraft;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Theme;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;

/** What may be wrong on a call: a list of alternatives, one of which is seen at a time. */
final class DeskAlternatives {

  private final Wording words;
  private final JComboBox<String> choice = new JComboBox<>();
  private final JButton add;
  private final JButton remove;
  private final DeskFaultRow first;
  private final DeskFaultRow second;
  private final List<List<CallDraft.Typed>> all = new ArrayList<>();
  private int at;
  private boolean showing;

  /** Rows of a form of two columns. */
  DeskAlternatives(Theme theme, Wording words, JPanel into) {
    this.words = words;
    DeskRows.labelled(theme, words, into, "desk.alternative", choice, "growx, wmin 0, wrap");
    choice.setToolTipText(words.text("desk.alternative-tip"));
    choice.addActionListener(e -> chosen());
    add = Forms.button(words, "desk.add-alternative", "desk.add-alternative-tip", this::added);
    remove =
        Forms.button(
            words, "desk.remove-alternative", "desk.remove-alternative-tip", this::removed);
    into.add(add, "skip, growx 0, wmin 0, wrap");
    into.add(remove, "skip, growx 0, wmin 0, wrap");
    first = new DeskFaultRow(theme, words, into, "desk.first", "desk.no-fault");
    second = new DeskFaultRow(theme, words, into, "desk.second", "desk.no-second");
  }

  /** All of them as they stand there. */
  List<List<CallDraft.Typed>> typed() {
    keep();
    return List.copyOf(all);
  }

  void show(List<List<CallDraft.Typed>> alternatives) {
    all.clear();
    all.addAll(alternatives);
    go(0);
  }

  private void keep() {
    if (at < all.size()) {
      List<CallDraft.Typed> faults = new ArrayList<>();
      first.typed().ifPresent(faults::add);
      second.typed().ifPresent(faults::add);
      all.set(at, faults);
    }
  }

  private void chosen() {
    int wanted = choice.getSelectedIndex();
    if (!showing && wanted >= 0 && wanted != at) {
      keep();
      go(wanted);
    }
  }

  /** Begins with what is seen: an alternative is most often a little other than another. */
  private void added() {
    keep();
    all.add(at + 1, all.get(at));
    go(at + 1);
  }

  private void removed() {
    all.remove(at);
    go(Math.min(at, all.size() - 1));
  }

  private void go(int index) {
    at = index;
    showing = true;
    choice.removeAllItems();
    for (int k = 1; k <= all.size(); k++) {
      choice.addItem(words.text("desk.alternative-of", k, all.size()));
    }
    choice.setSelectedIndex(at);
    showing = false;
    List<CallDraft.Typed> faults = all.get(at);
    first.show(faults.isEmpty() ? null : faults.get(0));
    second.show(faults.size() < 2 ? null : faults.get(1));
    add.setEnabled(all.size() < CallDraft.MOST_ALTERNATIVES);
    remove.setEnabled(all.size() > 1);
  }
}
