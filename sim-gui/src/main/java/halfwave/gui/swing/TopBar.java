package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.BarView;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Rows;
import halfwave.gui.swing.widget.Switch;
import halfwave.gui.swing.widget.Theme;
import halfwave.sequence.Deed;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;

/** Bench, call, power, clock, undo: what stands above all panels. */
final class TopBar extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final transient Workbench workbench;
  private final JTextArea bench;
  private final Switch call;
  private final Switch power;
  private final JButton play;
  private final JLabel clock;
  private final JComboBox<Double> speed;
  private final JButton undo;
  private final JButton redo;
  private boolean showing;

  TopBar(Theme theme, Wording words, Workbench workbench) {
    super(new Rows(theme.px(8), theme.px(16), theme.px(130)));
    this.words = words;
    this.workbench = workbench;
    setOpaque(false);
    int side = theme.px(14);
    setBorder(BorderFactory.createEmptyBorder(theme.px(8), side, theme.px(8), side));
    bench = Lettering.paragraph(" ", theme.heading(), theme.palette().ink());
    call = new Switch(theme, words.text("bar.call"));
    call.setName("bar.call");
    call.addActionListener(e -> act(new Deed.Call(call.isSelected())));
    power = new Switch(theme, words.text("bar.power"));
    power.setName("bar.power");
    power.addActionListener(e -> act(new Deed.Supply(power.isSelected())));
    play = button("bar.play", this::togglePlay);
    JButton step = button("bar.step", () -> workbench.want(new Intent.StepOn(1000L)));
    step.setToolTipText(words.text("bar.step-hint"));
    JButton next = button("bar.next", () -> workbench.want(new Intent.StepOn(null)));
    next.setToolTipText(words.text("bar.next-hint"));
    clock = Lettering.label("0:00.0", theme.body(), theme.palette().ink());
    clock.setToolTipText(words.text("bar.clock"));
    speed = new JComboBox<>(BarView.SPEEDS.toArray(Double[]::new));
    speed.setName("bar.speed");
    speed.setMaximumRowCount(BarView.SPEEDS.size());
    speed.setToolTipText(words.text("bar.speed-name"));
    speed.getAccessibleContext().setAccessibleName(words.text("bar.speed-name"));
    speed.setRenderer(new Speeds());
    speed.addActionListener(e -> chooseSpeed());
    undo = button("bar.undo", () -> workbench.want(new Intent.Undo()));
    redo = button("bar.redo", () -> workbench.want(new Intent.Redo()));
    // neither a later time nor the other word moves what stands behind it
    roomFor(clock, "888:88.8");
    roomFor(play, words.text("bar.pause"));
    // a long name takes a second line before the rest takes a second row
    add(bench);
    add(call);
    add(power);
    add(play, Rows.GROUP);
    add(step);
    add(next);
    add(speed);
    add(clock);
    add(undo, Rows.GROUP);
    add(redo);
  }

  private JButton button(String key, Runnable action) {
    JButton button = new JButton(words.text(key));
    button.setName(key);
    button.addActionListener(e -> action.run());
    return button;
  }

  private static void roomFor(JLabel label, String text) {
    label.setMinimumSize(wide(new JLabel(text), label));
  }

  private static void roomFor(JButton button, String text) {
    Dimension now = button.getPreferredSize();
    Dimension other = wide(new JButton(text), button);
    button.setMinimumSize(new Dimension(Math.max(now.width, other.width), now.height));
  }

  private static Dimension wide(JComponent sample, JComponent like) {
    sample.setFont(like.getFont());
    return sample.getPreferredSize();
  }

  private void act(Deed deed) {
    workbench.want(new Intent.Act(List.of(deed), 0));
  }

  void togglePlay() {
    if (workbench.ready()) {
      workbench.want(new Intent.Play(!workbench.shown().clock().running()));
    }
  }

  void toggleCall() {
    act(new Deed.Call(!workbench.shown().moment().call()));
  }

  void togglePower() {
    act(new Deed.Supply(!workbench.shown().moment().supply()));
  }

  /** One speed faster, or slower. */
  void faster(int by) {
    int at = speed.getSelectedIndex() + by;
    if (at >= 0 && at < speed.getItemCount()) {
      speed.setSelectedIndex(at);
    }
  }

  private void chooseSpeed() {
    Double chosen = (Double) speed.getSelectedItem();
    if (!showing && chosen != null) {
      workbench.want(new Intent.Speed(chosen));
    }
  }

  void show(State state) {
    BarView view = BarView.of(state, words);
    showing = true;
    // the mark of a changed bench stays with the last word
    String name = view.bench() + (view.unsaved() ? "\u00a0•" : "");
    if (!bench.getText().equals(name)) {
      bench.setText(name);
    }
    bench.setToolTipText(view.title());
    call.setSelected(view.call());
    power.setSelected(view.power());
    play.setText(words.text(view.running() ? "bar.pause" : "bar.play"));
    clock.setText(view.clock());
    Double timesReal = state.clock().timesReal();
    if (!timesReal.equals(speed.getSelectedItem())) {
      speed.setSelectedItem(timesReal);
    }
    tell(undo, view.undo(), "bar.nothing-undo");
    tell(redo, view.redo(), "bar.nothing-redo");
    showing = false;
  }

  private void tell(JButton button, @Nullable String what, String nothing) {
    button.setEnabled(what != null);
    button.setToolTipText(what == null ? words.text(nothing) : what);
  }

  /** Speeds in words. */
  private final class Speeds extends DefaultListCellRenderer {

    private static final long serialVersionUID = 1L;

    @Override
    public Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean selected, boolean focused) {
      String name = value == null ? "" : BarView.speed((Double) value, words);
      return super.getListCellRendererComponent(list, name, index, selected, focused);
    }
  }
}
