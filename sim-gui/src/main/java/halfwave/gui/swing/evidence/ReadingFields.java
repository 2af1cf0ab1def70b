package halfwave.gui.swing.evidence;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.evidence.MatchModel;
import halfwave.gui.presentation.evidence.ReadingForm;
import halfwave.gui.presentation.evidence.ReadingForm.Field;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.matching.ReadingKind;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Takes down a reading. */
final class ReadingFields extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient MatchModel model;
  private final JComboBox<ReadingKind> kind = new JComboBox<>(ReadingKind.values());
  private final JCheckBox cleaned;
  private final Map<Field, JTextField> fields = new EnumMap<>(Field.class);
  private final JLabel unit;
  private final JLabel wrong;

  ReadingFields(Theme theme, Wording words, MatchModel model) {
    super(
        new MigLayout("insets 0, gap 6, fillx, hidemode 3, novisualpadding", "[][grow,fill][][]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    setOpaque(false);
    kind.setName("match.kind");
    kind.getAccessibleContext().setAccessibleName(words.text("match.kind"));
    kind.setToolTipText(words.text("match.kind"));
    DefaultListCellRenderer names = new DefaultListCellRenderer();
    kind.setRenderer(
        (list, value, index, selected, focused) -> {
          names.getListCellRendererComponent(list, value, index, selected, focused);
          names.setText(words.heading(value));
          return names;
        });
    kind.addActionListener(e -> chosen());
    cleaned = new JCheckBox(words.text("match.cleaned"));
    cleaned.setName("match.cleaned");
    cleaned.setToolTipText(words.text("match.cleaned-tip"));
    cleaned.setOpaque(false);
    unit = label(" ");
    wrong = Lettering.label(" ", theme.note(), theme.palette().danger());
    wrong.setName("match.wrong");
    wrong.setVisible(false);
    lay();
    chosen();
  }

  private void lay() {
    add(kind, "span, growx, wmin 0, wrap");
    add(cleaned, "span, wrap, hmin " + theme.px(24) + "px");
    String length = ReadingForm.lengths(words).symbol();
    add(label(words.text("match.moved", length)), "span, wrap");
    JPanel moved = new JPanel(new MigLayout("insets 0, gap 6, novisualpadding"));
    moved.setOpaque(false);
    moved(moved, Field.ACROSS, "match.across", length);
    moved(moved, Field.UP, "match.up", length);
    moved(moved, Field.ALONG, "match.along", length);
    add(moved, "span, wrap");
    JTextField value = field(Field.VALUE, "match.value", 7);
    add(label(words.text("match.value")));
    add(value, "wmin 0");
    add(unit);
    add(Forms.button(words, "match.add", this::take), "wrap");
    add(wrong, "span, wmin 0");
  }

  private void moved(JPanel into, Field field, String key, String length) {
    JTextField made = field(field, key, 3);
    made.setToolTipText(words.text("match.moved-tip", words.text(key), length));
    into.add(label(words.text(key)));
    into.add(made);
  }

  private JTextField field(Field field, String name, int columns) {
    JTextField made = new JTextField(columns);
    made.setName(name);
    made.getAccessibleContext().setAccessibleName(words.text(name));
    made.addActionListener(e -> take());
    fields.put(field, made);
    return made;
  }

  private JLabel label(String text) {
    return Lettering.label(text, theme.body(), theme.palette().ink());
  }

  private ReadingKind kind() {
    return kind.getItemAt(kind.getSelectedIndex());
  }

  private JTextField at(Field field) {
    JTextField found = fields.get(field);
    if (found == null) {
      throw new IllegalStateException("no field " + field);
    }
    return found;
  }

  private void chosen() {
    unit.setText(ReadingForm.unit(kind()).symbol());
    at(Field.VALUE)
        .setToolTipText(
            words.text(
                "match.value-tip",
                ReadingForm.range(kind(), words),
                ReadingForm.usual(kind(), words)));
    tell(null, "");
  }

  private void tell(@Nullable Field at, String refusal) {
    fields.forEach(
        (field, text) ->
            text.putClientProperty("JComponent.outline", field == at ? "error" : null));
    wrong.setText(refusal.isEmpty() ? " " : refusal);
    wrong.setToolTipText(refusal.isEmpty() ? null : refusal);
    wrong.setVisible(!refusal.isEmpty());
    revalidate();
  }

  private void take() {
    ReadingForm.Read read =
        new ReadingForm(
                kind(),
                cleaned.isSelected(),
                at(Field.VALUE).getText(),
                at(Field.ACROSS).getText(),
                at(Field.UP).getText(),
                at(Field.ALONG).getText())
            .read(words);
    tell(read.wrong(), read.refusal());
    if (read.reading() != null) {
      model.add(read.reading());
      at(Field.VALUE).setText("");
      at(Field.VALUE).requestFocusInWindow();
    } else if (read.wrong() != null) {
      at(read.wrong()).requestFocusInWindow();
      at(read.wrong()).selectAll();
    }
  }
}
