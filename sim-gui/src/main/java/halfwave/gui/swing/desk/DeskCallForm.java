package halfwave.gui.swing.desk;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.CallDraft;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.presentation.desk.DeskNumber;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Theme;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import halfwave.quiz.ServiceCall;
import halfwave.work.Recollection;
import halfwave.work.Work;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One call of a quiz, to be written and changed. */
final class DeskCallForm extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final int ROWS = 3;
  private static final String WIDE = "growx, wmin 0, wrap";

  private final transient Theme theme;
  private final transient Wording words;
  private final transient DeskModel model;
  private final transient Consumer<String> named;
  private final JTextArea hint;
  private final JPanel fields;
  private final JScrollPane all;
  private final QuietField titleEnglish = new QuietField();
  private final QuietField titleSpanish = new QuietField();
  private final JTextArea english = new JTextArea(ROWS, 0);
  private final JTextArea spanish = new JTextArea(ROWS, 0);
  private final JComboBox<String> bench = new JComboBox<>();
  private final transient DeskAlternatives alternatives;
  private final transient Map<Work, JCheckBox> closed = new LinkedHashMap<>();
  private final NumberField minutes;
  private final NumberField parts;
  private final JComboBox<String> objective = new JComboBox<>();
  private final JComboBox<String> level = new JComboBox<>();
  private final JComboBox<String> since = new JComboBox<>();
  private final JButton keep;
  private transient List<Bench> benches = List.of();
  private transient @Nullable ServiceCall shown;

  /**
   * A form without a call.
   *
   * @param named takes the name that a call is about to have
   */
  DeskCallForm(Theme theme, Wording words, DeskModel model, Consumer<String> named) {
    super(
        new MigLayout(
            "insets 0, gap 6, fill, hidemode 3, novisualpadding",
            "[grow,fill]",
            "[][grow,fill][]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.named = named;
    setOpaque(false);
    hint =
        Lettering.paragraph(
            words.text("desk.choose-call"), theme.body(), theme.palette().softInk());
    add(hint, WIDE + ", gapleft 4, gaptop 8");
    fields =
        new JPanel(
            new MigLayout(
                "insets 0, gap 8 6, fillx, hidemode 3, novisualpadding", "[][grow,fill]"));
    fields.setOpaque(false);
    Column column = Column.sideways(theme);
    column.add(fields, "growx, gaptop 8, wrap");
    all = column.scrolled();
    add(all, "wmin 0, hmin 0, wrap");
    row("desk.call-title-english", titleEnglish);
    area("desk.complaint-english", english);
    row("desk.call-title-spanish", titleSpanish);
    area("desk.complaint-spanish", spanish);
    row("desk.bench", bench);
    alternatives = new DeskAlternatives(theme, words, fields);
    minutes = number("desk.minutes", new DeskNumber(1, CallDraft.MOST_MINUTES, true));
    parts = number("desk.parts", new DeskNumber(0, CallDraft.MOST_UNITS, true));
    for (Objective each : Objective.values()) {
      objective.addItem(words.heading(each));
    }
    for (Level each : Level.values()) {
      level.addItem(words.heading(each));
    }
    row("desk.call-objective", objective);
    row("desk.call-level", level);
    since.addItem(words.text("desk.since-fault"));
    Recollection.ANSWERS.forEach(a -> since.addItem(Wording.capital(words.sentences().name(a))));
    row("desk.since", since);
    keep = Forms.button(words, "desk.keep-call", "desk.keep-call-tip", this::kept);
    fields.add(
        Lettering.label(words.text("desk.closed"), theme.heading(), theme.palette().ink()),
        "span 2, gaptop 8, wrap");
    // always in sight, however long the form
    add(keep, "growx 0, gapleft 4, gapbottom 4");
    seen(false);
  }

  private void seen(boolean call) {
    hint.setVisible(!call);
    all.setVisible(call);
    keep.setVisible(call);
  }

  private void row(String key, JComponent field) {
    DeskRows.labelled(theme, words, fields, key, field, WIDE);
  }

  private void area(String key, JTextArea area) {
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setFont(theme.body());
    area.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createLineBorder(theme.palette().hairline()),
            BorderFactory.createEmptyBorder(3, 5, 3, 5)));
    for (int id :
        List.of(
            KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS,
            KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS)) {
      // nobody writes tabulators into a complaint
      area.setFocusTraversalKeys(id, titleEnglish.getFocusTraversalKeys(id));
    }
    row(key, area);
  }

  private NumberField number(String key, DeskNumber range) {
    NumberField field = new NumberField(theme, words, key, range, v -> {});
    DeskRows.labelled(theme, words, fields, key, field, "growx 0, wrap");
    return field;
  }

  private CallDraft typed() {
    Set<Work> shut = new LinkedHashSet<>();
    closed.forEach(
        (work, box) -> {
          if (box.isSelected()) {
            shut.add(work);
          }
        });
    return new CallDraft(
        new CallDraft.Told(titleEnglish.getText(), english.getText()),
        new CallDraft.Told(titleSpanish.getText(), spanish.getText()),
        benches.get(bench.getSelectedIndex()),
        alternatives.typed(),
        shut,
        (int) minutes.number(),
        (int) parts.number(),
        Objective.values()[objective.getSelectedIndex()],
        Level.values()[level.getSelectedIndex()],
        since.getSelectedIndex() == 0
            ? null
            : Recollection.ANSWERS.get(since.getSelectedIndex() - 1));
  }

  /** False where something is wrong in it. */
  private boolean kept() {
    ServiceCall call = shown;
    if (call == null) {
      return true;
    } else if (!minutes.right() || !parts.right()) {
      return false;
    }
    CallDraft typed = typed();
    boolean sound = typed.trouble(words).isEmpty();
    if (sound) {
      named.accept(model.name(call, typed, words));
    }
    model.change(call, typed, words);
    return sound;
  }

  /** Takes over what was changed; false where something is wrong in it. */
  boolean leave() {
    boolean same = shown == null || (minutes.right() && parts.right() && !changed());
    return same || kept();
  }

  /** Whether something was changed and not taken over. */
  boolean changed() {
    ServiceCall call = shown;
    return call != null
        && (minutes.wrong() || parts.wrong() || !typed().equals(CallDraft.of(call, words)));
  }

  /** Shows the call as it was taken over last. */
  void anew() {
    ServiceCall call = shown;
    shown = null;
    show(call);
  }

  /** Shows a call, or none. */
  void show(@Nullable ServiceCall call) {
    keep.setEnabled(!model.busy());
    if (Objects.equals(call, shown)) {
      return;
    }
    shown = call;
    seen(call != null);
    if (call == null) {
      return;
    }
    CallDraft draft = CallDraft.of(call, words);
    titleEnglish.setText(draft.english().title());
    english.setText(draft.english().complaint());
    titleSpanish.setText(draft.spanish().title());
    spanish.setText(draft.spanish().complaint());
    List<Bench> offered = new ArrayList<>(ShippedBenches.all());
    if (!offered.contains(call.bench())) {
      offered.add(call.bench());
    }
    benches = offered;
    bench.removeAllItems();
    offered.forEach(b -> bench.addItem(words.sentences().bench(b.name()).orElse(b.name())));
    bench.setSelectedIndex(offered.indexOf(call.bench()));
    alternatives.show(draft.alternatives());
    minutes.anew(draft.minutes());
    parts.anew(draft.partsUnits());
    objective.setSelectedIndex(draft.objective().ordinal());
    level.setSelectedIndex(draft.level().ordinal());
    since.setSelectedIndex(
        draft.since() == null ? 0 : Recollection.ANSWERS.indexOf(draft.since()) + 1);
    boxes(call);
    revalidate();
  }

  /** Names of tests depend on how the gas is lit. */
  private void boxes(ServiceCall call) {
    closed.values().forEach(fields::remove);
    closed.clear();
    for (Work work : CallDraft.closable()) {
      JCheckBox box = new JCheckBox(Wording.capital(words.sentences().name(work, call.ignition())));
      box.setName("desk.closed-" + work.id());
      box.setOpaque(false);
      box.setSelected(call.closed().contains(work));
      closed.put(work, box);
      fields.add(box, "span 2, growx, wrap, hmin " + theme.px(24) + "px");
    }
  }
}
