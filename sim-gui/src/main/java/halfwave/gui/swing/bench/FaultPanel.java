package halfwave.gui.swing.bench;

import halfwave.bench.Bench;
import halfwave.bench.Trigger;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.FaultCard;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.PresentFault;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Says;
import halfwave.gui.swing.widget.Theme;
import halfwave.gui.swing.widget.Typing;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Kinds of faults to search through and to put on the bench. */
public final class FaultPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private static final int ROW_PX = 25;

  /** So many kinds are in sight wherever the panel is not squeezed more than that. */
  private static final int LEAST_KINDS = 3;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Workbench workbench;
  private final JTextField search = new QuietField();
  private final DefaultListModel<FaultCard> found = new DefaultListModel<>();
  private final JList<FaultCard> list = new JList<>(found);
  private final JLabel severityName;
  private final KnobSlider severity;
  private final JTextField severityField = new QuietField();
  private final JTextArea range;
  private final JComboBox<String> trigger = new JComboBox<>();
  private final JTextArea repairs;
  private final JButton add;
  private final JTextArea again;
  private final JTextArea summary;
  private final JPanel present =
      new JPanel(
          new MigLayout("insets 0, gap 4 2, fillx, wrap 2, novisualpadding", "[grow,fill,0::][]"));
  private @Nullable transient Bench shown;
  private double chosenSeverity;

  /** A panel. */
  public FaultPanel(Theme theme, Wording words, Workbench workbench) {
    super(new MigLayout("insets 0, gap 0, fill", "[grow,fill]", "[][grow][shrinkprio 200][]"));
    this.theme = theme;
    this.words = words;
    this.workbench = workbench;
    setOpaque(false);
    severityName =
        Lettering.label(words.text("fault.severity"), theme.body(), theme.palette().ink());
    severity = new KnobSlider(theme, (place, gesture) -> slide(place));
    range = Lettering.paragraph(" ", theme.note(), theme.palette().softInk());
    repairs = Lettering.paragraph(" ", theme.note(), theme.palette().softInk());
    add = new JButton(words.text("fault.add"));
    again = Lettering.paragraph("", theme.note(), theme.palette().ink());
    summary = Lettering.paragraph(" ", theme.note(), theme.palette().ink());
    add(head(), "growx, wrap");
    add(kinds(), "grow, push, hmin " + theme.px(LEAST_KINDS * ROW_PX + 4) + "px, wrap");
    Column below = new Column(theme);
    below.add(foot(), "growx, wmin 0, wrap");
    add(below.scrolled(), "grow, hmin " + theme.px(56) + "px, wrap");
    // below what grows with every fault, and where it stays
    add(add, "growx, gap 4 4 4 2");
  }

  private JPanel head() {
    JPanel head = new JPanel(new MigLayout("insets 8 4 6 4, fillx", "[][grow]"));
    head.setOpaque(false);
    JLabel name = new JLabel(words.text("fault.search"));
    name.setLabelFor(search);
    search.setName("fault.search");
    search.putClientProperty("JTextField.placeholderText", words.text("fault.search-hint"));
    search.putClientProperty("JTextField.showClearButton", true);
    Typing.on(search, this::refill);
    search.addActionListener(e -> list.requestFocusInWindow());
    head.add(name);
    head.add(search, "growx");
    return head;
  }

  private JScrollPane kinds() {
    list.setName("fault.kinds");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.getAccessibleContext().setAccessibleName(words.text("fault.kinds"));
    list.setCellRenderer(new Kind());
    list.addListSelectionListener(e -> choose());
    list.setFixedCellHeight(theme.px(ROW_PX));
    list.setVisibleRowCount(LEAST_KINDS);
    JScrollPane pane = new JScrollPane(list);
    pane.getVerticalScrollBar().setUnitIncrement(theme.px(ROW_PX));
    return pane;
  }

  private JPanel foot() {
    JPanel foot =
        new JPanel(
            new MigLayout(
                "insets 8 4 2 4, fillx, hidemode 3",
                "[][grow,fill][" + theme.px(92) + "px!,fill]"));
    foot.setOpaque(false);
    severityField.setName("fault.severity");
    severityField.getAccessibleContext().setAccessibleName(words.text("fault.severity"));
    severityField.addActionListener(e -> type());
    severity.setName("fault.slider");
    severity.getAccessibleContext().setAccessibleName(words.text("fault.severity"));
    foot.add(severityName);
    foot.add(severity);
    foot.add(severityField, "wrap");
    foot.add(range, "span, growx, wmin 0, wrap");
    JLabel when = new JLabel(words.text("fault.trigger"));
    when.setLabelFor(trigger);
    trigger.setName("fault.trigger");
    foot.add(when);
    foot.add(trigger, "span, growx, wmin 0, wrap");
    add.setName("fault.add");
    add.addActionListener(e -> add());
    again.setName("fault.again");
    again.setVisible(false);
    foot.add(again, "span, growx, wmin 0, wrap");
    foot.add(repairs, "span, growx, wmin 0, wrap");
    present.setOpaque(false);
    foot.add(summary, "span, growx, wmin 0, wrap");
    foot.add(present, "span, growx, wmin 0");
    return foot;
  }

  private void refill() {
    FaultCard before = list.getSelectedValue();
    List<FaultCard> cards = FaultCard.found(search.getText(), words);
    found.clear();
    cards.forEach(found::addElement);
    int same = cards.indexOf(before);
    if (!cards.isEmpty()) {
      list.setSelectedIndex(Math.max(0, same));
    }
    choose();
  }

  private void choose() {
    FaultCard card = list.getSelectedValue();
    add.setEnabled(card != null);
    add.setToolTipText(card == null ? words.text("fault.none-found") : null);
    if (card == null) {
      repairs.setText(words.text("fault.none-found"));
      return;
    }
    boolean measured = card.scale() != null;
    severityName.setVisible(measured);
    severity.setVisible(measured);
    severityField.setVisible(measured);
    severe(card, card.kind().typical());
    range.setText(measured ? card.range(words) : words.text("fault.no-severity"));
    trigger.removeAllItems();
    Trigger own = card.trigger();
    if (own == null) {
      trigger.addItem(words.text("fault.always"));
    }
    for (Trigger t : triggers(card)) {
      trigger.addItem(words.text("fault.during", words.sentences().name(t)));
    }
    trigger.setSelectedIndex(0);
    repairs.setText(words.text("fault.repairs", card.repairs()));
    sayAgain();
    revalidate();
  }

  private void sayAgain() {
    FaultCard card = list.getSelectedValue();
    String said = card == null || shown == null ? "" : card.again(shown, words);
    again.setVisible(!said.isEmpty());
    again.setText(said);
  }

  /** Its own trigger first, where it has one. */
  private static List<Trigger> triggers(FaultCard card) {
    List<Trigger> triggers = new ArrayList<>(List.of(Trigger.values()));
    Trigger own = card.trigger();
    if (own != null) {
      triggers.remove(own);
      triggers.add(0, own);
    }
    return triggers;
  }

  private void severe(FaultCard card, double si) {
    chosenSeverity = si;
    severityField.putClientProperty("JComponent.outline", null);
    severityField.setText(card.severity(si, words));
    if (card.scale() != null) {
      severity.show(card.scale().place(si), card.scale().place(card.kind().typical()));
    }
  }

  private void slide(double place) {
    FaultCard card = list.getSelectedValue();
    if (card != null && card.scale() != null) {
      double si = card.scale().value(place);
      severe(card, Math.max(card.kind().least(), Math.min(card.kind().most(), si)));
    }
  }

  private boolean type() {
    FaultCard card = list.getSelectedValue();
    if (card == null || card.scale() == null) {
      return true;
    }
    if (severityField.getText().equals(card.severity(chosenSeverity, words))) {
      return true;
    }
    OptionalDouble typed = card.typed(severityField.getText(), chosenSeverity, words);
    if (typed.isPresent()) {
      severe(card, typed.getAsDouble());
      return true;
    }
    severityField.putClientProperty("JComponent.outline", "error");
    Says.beside(severityField, theme, words.text("knob.refused", card.name(), card.range(words)));
    return false;
  }

  private void add() {
    FaultCard card = list.getSelectedValue();
    if (card == null) {
      return;
    }
    if (!type()) {
      Says.beside(add, theme, words.text("fault.not-added", card.name(), card.range(words)));
      return;
    }
    workbench.want(new Intent.Act(card.deeds(chosenSeverity, chosenTrigger(card)), 0));
    // another key meets the next search, not the same button again
    search.requestFocusInWindow();
    search.selectAll();
  }

  private @Nullable Trigger chosenTrigger(FaultCard card) {
    int index = trigger.getSelectedIndex();
    int first = card.trigger() == null ? 1 : 0;
    return index < first ? null : triggers(card).get(index - first);
  }

  /** A kind with its group behind it. */
  private final class Kind extends DefaultListCellRenderer {

    private static final long serialVersionUID = 1L;

    @Override
    public Component getListCellRendererComponent(
        JList<?> from, Object value, int index, boolean selected, boolean focused) {
      FaultCard card = (FaultCard) value;
      super.getListCellRendererComponent(from, card.name(), index, selected, focused);
      setToolTipText(card.group() + ": " + card.name());
      getAccessibleContext().setAccessibleName(card.name() + ", " + card.group());
      return this;
    }
  }

  /** Fills in what is wrong now, each with a button that takes it away. */
  private void list(List<PresentFault> faults) {
    present.removeAll();
    for (PresentFault fault : faults) {
      JButton remove = new JButton(words.text("fault.remove"));
      remove.setName("fault.remove." + fault.aspect().name().toLowerCase(Locale.ROOT));
      remove
          .getAccessibleContext()
          .setAccessibleName(words.text("fault.remove-named", fault.name()));
      remove.addActionListener(e -> workbench.want(new Intent.Act(fault.removal(), 0)));
      present.add(
          Lettering.label(fault.name(), theme.body(), theme.palette().ink()), "growx, wmin 0");
      present.add(remove);
    }
    present.revalidate();
    summary.setText(words.text(faults.isEmpty() ? "condition.healthy" : "fault.wrong-now"));
  }

  /** Lists what is wrong on the bench now. */
  public void show(State state) {
    if (shown == null) {
      refill();
    }
    if (shown == null || !shown.equals(state.moment().bench())) {
      shown = state.moment().bench();
      list(PresentFault.of(shown, words));
      sayAgain();
      revalidate();
    }
  }
}
