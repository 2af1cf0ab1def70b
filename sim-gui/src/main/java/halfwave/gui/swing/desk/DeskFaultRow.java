package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.FaultCard;
import halfwave.gui.presentation.desk.CallDraft;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Theme;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** A hidden fault and how severe it is. */
final class DeskFaultRow {

  private final Wording words;
  private final List<FaultCard> cards;
  private final JComboBox<String> kind = new JComboBox<>();
  private final QuietField severity = new QuietField();

  DeskFaultRow(Theme theme, Wording words, JPanel into, String key, String none) {
    this.words = words;
    cards = FaultCard.found("", words);
    kind.addItem(words.text(none));
    cards.forEach(c -> kind.addItem(c.name()));
    kind.addActionListener(e -> free());
    DeskRows.labelled(theme, words, into, key, kind, "growx, wmin 0, wrap");
    DeskRows.labelled(theme, words, into, key + "-severity", severity, "growx, wmin 0, wrap");
    free();
  }

  private @Nullable FaultCard card() {
    int index = kind.getSelectedIndex() - 1;
    return index < 0 ? null : cards.get(index);
  }

  private void free() {
    FaultCard card = card();
    boolean scaled = card != null && card.scale() != null;
    severity.setEnabled(scaled);
    if (!scaled) {
      severity.setText("");
    }
    severity.setToolTipText(
        card != null && scaled ? words.text("desk.severity-tip", card.range(words)) : null);
  }

  /** What stands there; nothing where no fault is chosen. */
  Optional<CallDraft.Typed> typed() {
    return Optional.ofNullable(card())
        .map(c -> new CallDraft.Typed(c.kind(), severity.getText().strip()));
  }

  void show(CallDraft.@Nullable Typed fault) {
    int index = 0;
    for (int k = 0; k < cards.size() && fault != null; k++) {
      index = cards.get(k).kind() == fault.kind() ? k + 1 : index;
    }
    kind.setSelectedIndex(index);
    severity.setText(fault == null ? "" : fault.severity());
  }
}
