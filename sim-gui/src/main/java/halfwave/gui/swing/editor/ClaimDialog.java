package halfwave.gui.swing.editor;

import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.display.DisplayUnit;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.ClaimForm;
import halfwave.gui.presentation.editor.ClaimForm.Kind;
import halfwave.gui.presentation.editor.ClaimForm.Subject;
import halfwave.gui.presentation.editor.ClaimWords;
import halfwave.gui.presentation.editor.Found;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.gui.swing.widget.Typing;
import halfwave.lesson.Claim;
import halfwave.lesson.Reading;
import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Asks for a claim; what the bench shows is filled in already. */
final class ClaimDialog {

  private static final double[] MARGINS = {0.05, 0.1, 0.2};

  private final Component over;
  private final Theme theme;
  private final Wording words;
  private final Found found;
  private final JPanel panel =
      new JPanel(new MigLayout("insets 4, gap 8 6, hidemode 3, novisualpadding", "[][grow,fill]"));
  private final JComboBox<Subject> subject;
  private final JPanel margins = new JPanel(new MigLayout("insets 0, gap 6, novisualpadding"));
  private final JTextField least = new JTextField(10);
  private final JTextField most = new JTextField(10);
  private final JComboBox<Stage> stage;
  private final JComboBox<StatusCode> code;
  private final JTextArea said;
  private final JTextArea truth;
  private final JButton take;
  private boolean filling;

  ClaimDialog(Component over, Theme theme, Wording words, Found found) {
    this.over = over;
    this.theme = theme;
    this.words = words;
    this.found = found;
    subject = choice("claim-subject", ClaimForm.subjects(found), s -> s.name(words));
    stage = choice("claim-stage", List.of(Stage.values()), words::heading);
    code = choice("claim-code", List.of(StatusCode.values()), words::heading);
    least.setName("claim.least");
    most.setName("claim.most");
    said = Lettering.paragraph(" ", theme.body(), theme.palette().ink());
    truth = Lettering.paragraph(" ", theme.note(), theme.palette().softInk());
    take = new JButton(words.text("claim.take"));
    take.setName("claim.take");
  }

  /** The reading that a claim is about, or null. */
  static @Nullable Reading reading(Claim claim) {
    if (claim instanceof Claim.Between between) {
      return between.reading();
    }
    return claim instanceof Claim.Compared compared ? compared.reading() : null;
  }

  private <T> JComboBox<T> choice(String name, List<T> of, Function<T, String> text) {
    JComboBox<T> box = new JComboBox<>();
    of.forEach(box::addItem);
    box.setName(name);
    box.setMaximumRowCount(20);
    box.setRenderer(
        new DefaultListCellRenderer() {
          private static final long serialVersionUID = 1L;

          @Override
          @SuppressWarnings("unchecked")
          public Component getListCellRendererComponent(
              JList<?> list, Object value, int index, boolean selected, boolean focused) {
            String shown = value == null ? "" : text.apply((T) value);
            return super.getListCellRendererComponent(list, shown, index, selected, focused);
          }
        });
    return box;
  }

  /** Asks; old is the claim that is to be changed, or null for a new one. */
  Optional<Claim> ask(@Nullable Claim old) {
    lay();
    show(
        old == null
            ? ClaimForm.of(subject.getItemAt(0), found, MARGINS[1], words)
            : ClaimForm.of(old, found, words));
    subject.addActionListener(e -> margin(MARGINS[1]));
    stage.addActionListener(e -> say());
    code.addActionListener(e -> say());
    Typing.on(least, this::say);
    Typing.on(most, this::say);
    JButton cancel = new JButton(words.text("file.cancel"));
    JOptionPane pane =
        new JOptionPane(
            panel,
            JOptionPane.PLAIN_MESSAGE,
            JOptionPane.DEFAULT_OPTION,
            null,
            new Object[] {take, cancel},
            take);
    take.addActionListener(e -> pane.setValue(take));
    cancel.addActionListener(e -> pane.setValue(cancel));
    var dialog = pane.createDialog(over, words.text("claim.dialog"));
    dialog.setVisible(true);
    dialog.dispose();
    return pane.getValue() == take ? form().claim(words) : Optional.empty();
  }

  private void lay() {
    row("claim.subject-label", subject);
    row("claim.least-label", least);
    row("claim.most-label", most);
    margins.setOpaque(false);
    for (double margin : MARGINS) {
      String share = words.sentences().quantities().fixed(margin, DisplayUnit.PERCENT, 0);
      JButton button = new JButton(words.text("claim.margin", share));
      button.setName("claim.margin." + Math.round(100 * margin));
      button.addActionListener(e -> margin(margin));
      margins.add(button);
    }
    row("claim.margin-label", margins);
    row("claim.stage-label", stage);
    row("claim.light-label", code);
    panel.add(said, "span, growx, wmin 0, w " + theme.px(430) + "px!, gaptop 8, wrap");
    panel.add(
        truth, "span, growx, wmin 0, w " + theme.px(430) + "px!, hmin " + theme.px(34) + "px");
  }

  private void row(String key, JComponent control) {
    JLabel label = new JLabel(words.text(key));
    label.setLabelFor(control);
    control.putClientProperty("label", label);
    panel.add(label);
    panel.add(control, "wrap");
  }

  private void margin(double ratio) {
    Subject chosen = (Subject) subject.getSelectedItem();
    if (chosen != null && !filling) {
      show(ClaimForm.of(chosen, found, ratio, words));
    }
  }

  private void show(ClaimForm form) {
    filling = true;
    subject.setSelectedItem(form.subject());
    least.setText(form.least());
    most.setText(form.most());
    stage.setSelectedItem(form.stage());
    code.setSelectedItem(form.code());
    filling = false;
    say();
  }

  private ClaimForm form() {
    Subject chosen = (Subject) subject.getSelectedItem();
    return new ClaimForm(
        chosen == null ? subject.getItemAt(0) : chosen,
        least.getText(),
        most.getText(),
        stage.getItemAt(Math.max(0, stage.getSelectedIndex())),
        code.getItemAt(Math.max(0, code.getSelectedIndex())));
  }

  private void say() {
    if (filling) {
      return;
    }
    ClaimForm form = form();
    Kind kind = form.subject().kind();
    boolean numbers = kind == Kind.READING || kind == Kind.SHARE || kind == Kind.ENTERS;
    visible(least, numbers);
    visible(most, numbers);
    visible(margins, kind == Kind.READING || kind == Kind.SHARE);
    visible(stage, kind == Kind.STAGE || kind == Kind.ENTERS);
    visible(code, kind == Kind.LIGHT);
    Optional<Claim> claim = form.claim(words);
    take.setEnabled(claim.isPresent());
    said.setText(claim.map(c -> ClaimWords.sentence(c, words)).orElse(words.text("claim.nothing")));
    truth.setText(claim.map(c -> words.text(ClaimForm.truth(c, found))).orElse(" "));
    java.awt.Window dialog = SwingUtilities.getWindowAncestor(panel);
    if (dialog != null) {
      dialog.pack();
    }
  }

  private static void visible(JComponent control, boolean seen) {
    control.setVisible(seen);
    ((JLabel) control.getClientProperty("label")).setVisible(seen);
  }
}
