package halfwave.gui.swing.bench;

import halfwave.circuit.Point;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.gui.presentation.bench.Placing;
import halfwave.gui.presentation.bench.Spot;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.CautionPlate;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Reserved;
import halfwave.gui.swing.widget.Theme;
import halfwave.instrument.HookUp;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.MeterModel;
import halfwave.instrument.ShippedMeters;
import halfwave.sequence.Deed;
import halfwave.sequence.Hooked;
import java.awt.Insets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The meter: the largest reading of the window, its dial and its leads. */
public final class MeterPanel extends Plate {

  private static final long serialVersionUID = 1L;

  /** Two warnings; where the leads are and what meter it is need less (px). */
  private static final double WORDS_HEIGHT = 86;

  private final transient Wording words;
  private final transient Workbench workbench;
  private final JLabel number;
  private final JLabel unit;
  private final JLabel beside;
  private final JTextArea alarm;
  private final JTextArea place;
  private final JTextArea details;
  private final JButton leads;
  private final JButton fuse;
  private final CautionPlate caution;
  private final Reserved said;
  private final Map<MeterFunction, JToggleButton> dial = new EnumMap<>(MeterFunction.class);
  private @Nullable transient State state;

  /** A panel. */
  public MeterPanel(Theme theme, Wording words, Workbench workbench) {
    super(theme, words.text("meter.title"));
    setName("meter");
    this.words = words;
    this.workbench = workbench;
    var p = theme.palette();
    JPanel face =
        new JPanel(
            new MigLayout("insets 0, gap 4, fillx, hidemode 3, novisualpadding", "[grow][]"));
    face.setOpaque(false);
    number = Lettering.label("– – –", theme.reading(), p.ink());
    unit = Lettering.label(" ", theme.second(), p.softInk());
    beside = Lettering.label(" ", theme.body(), p.softInk());
    alarm = Lettering.paragraph("", theme.heading(), p.danger());
    place = Lettering.paragraph(" ", theme.body(), p.ink());
    details = Lettering.paragraph(" ", theme.note(), p.softInk());
    number.setName("meter.number");
    unit.setName("meter.unit");
    alarm.setName("meter.alarm");
    alarm.setVisible(false);
    place.setName("meter.place");
    // beside the reading there is room for it: nothing moves when it comes
    JPanel corner = new JPanel(new MigLayout("insets 0, gap 4, hidemode 3, novisualpadding"));
    corner.setOpaque(false);
    corner.add(Lettering.label(words.text("meter.title"), theme.heading(), p.ink()), "wrap");
    fuse = button("meter.new-fuse", this::renew);
    fuse.setVisible(false);
    corner.add(fuse);
    face.add(corner, "top");
    JPanel shown = new JPanel(new MigLayout("insets 0, gap 6 0, novisualpadding", "[][]"));
    shown.setOpaque(false);
    shown.add(beside, "aligny baseline, gapright 8");
    shown.add(number, "aligny baseline");
    shown.add(unit, "aligny baseline");
    shown.setToolTipText(words.text("meter.healthy"));
    number.setToolTipText(words.text("meter.healthy"));
    face.add(shown, "alignx right, top, h " + theme.px(62) + "px!, wrap");
    caution = new CautionPlate(theme, words.text("meter.caution"));
    caution.setName("meter.caution");
    said = new Reserved(theme, WORDS_HEIGHT, alarm, caution, place, details);
    face.add(said, "span, growx, wmin 0, wrap");
    face.add(dial(), "span, growx, wmin 0, gaptop 4, wrap");
    leads = new JButton(words.text("meter.choose-place") + "…");
    leads.setName("meter.leads");
    leads.addActionListener(e -> spots().show(leads, 0, leads.getHeight()));
    JButton swap = button("meter.swap", this::swap);
    JButton off = button("meter.take-off", () -> act(new Deed.TakeOff()));
    JPanel hands = new JPanel(new MigLayout("insets 0, gap 6, hidemode 3, novisualpadding"));
    hands.setOpaque(false);
    hands.add(leads);
    hands.add(swap);
    hands.add(off);
    face.add(hands, "span, wmin 0");
    add(face);
  }

  private JButton button(String key, Runnable action) {
    JButton button = new JButton(words.text(key));
    button.setName(key);
    button.addActionListener(e -> action.run());
    return button;
  }

  private JPanel dial() {
    JPanel row =
        new JPanel(
            new MigLayout("insets 0, gap 4, wrap 5, fillx, novisualpadding", "[grow,fill,sg,0::]"));
    row.setOpaque(false);
    for (MeterFunction function : MeterFunction.values()) {
      String key = MeterView.key(function);
      JToggleButton button = new JToggleButton(words.text(key));
      button.setName(key);
      button.setToolTipText(words.heading(function));
      button.getAccessibleContext().setAccessibleName(words.heading(function));
      button.setMargin(new Insets(2, 2, 2, 2));
      button.addActionListener(e -> turn(function));
      dial.put(function, button);
      row.add(button, "wmin 0, hmin " + theme().px(26) + "px");
    }
    return row;
  }

  /** Turns the dial; the leads stay where they are. */
  public void turn(MeterFunction function) {
    workbench.want(new Intent.Turn(function));
  }

  private void swap() {
    if (state != null && state.moment().hooked() != null) {
      var hooked = state.moment().hooked();
      workbench.want(
          new Intent.Measure(hooked.function(), new Placing.At(hooked.hookUp().swapped())));
    }
  }

  private void renew() {
    if (state != null) {
      Meter meter = state.standing().meter();
      workbench.want(
          new Intent.HandOver(meter.alive() ? meter.withNewFuse() : Meter.fresh(meter.model())));
    }
  }

  private void act(Deed deed) {
    workbench.want(new Intent.Act(List.of(deed), 0));
  }

  /** Opens the list of places, as the keyboard does. */
  public void openSpots() {
    leads.doClick();
  }

  private JPopupMenu spots() {
    JPopupMenu menu = new JPopupMenu(words.text("meter.choose-place"));
    Hooked on = state == null ? null : state.moment().hooked();
    JMenuItem custom = new JRadioButtonMenuItem(words.text("meter.custom"), on != null);
    for (Spot spot : Spot.values()) {
      boolean there = on != null && spot.holds(on.hookUp());
      custom.setSelected(custom.isSelected() && !there);
      JMenuItem item = new JRadioButtonMenuItem(words.text(spot.key()), there);
      item.setName(spot.key());
      item.addActionListener(e -> workbench.want(new Intent.Lead(spot.placing(), spot.function())));
      menu.add(item);
    }
    menu.addSeparator();
    custom.setName("meter.custom");
    custom.addActionListener(e -> askPoints());
    menu.add(custom);
    menu.addSeparator();
    for (MeterModel model : ShippedMeters.all()) {
      boolean inHand = state != null && state.standing().meter().model().equals(model);
      JMenuItem item =
          new JRadioButtonMenuItem(
              Wording.capital(words.sentences().meter(model.name()).orElse(model.name())), inHand);
      item.setName("meter." + model.name());
      item.addActionListener(e -> workbench.want(new Intent.HandOver(Meter.fresh(model))));
      menu.add(item);
    }
    return menu;
  }

  private void askPoints() {
    State now = state;
    if (now == null) {
      return;
    }
    List<Point> points =
        Stream.of(Point.values())
            .filter(HookUp.REACHABLE::contains)
            .filter(p -> p != Point.PROBE || now.moment().bench().design().spark() != null)
            .toList();
    Hooked on = now.moment().hooked();
    HookUp.Across first =
        on != null && on.hookUp() instanceof HookUp.Across across
            ? across
            : new HookUp.Across(Point.ROD, Point.CHASSIS);
    new PointsDialog(this, theme(), words, points, first)
        .ask()
        .ifPresent(
            across ->
                workbench.want(
                    new Intent.Lead(new Placing.At(across), MeterView.of(now, words).function())));
  }

  /** Shows the meter of a state. */
  public void show(State newState) {
    state = newState;
    MeterView view = MeterView.of(newState, words);
    number.setText(view.number());
    number.setFont(view.number().length() > 7 ? theme().second() : theme().reading());
    unit.setText(view.unit());
    beside.setText(view.beside());
    if (!place.getText().equals(view.place())) {
      place.setText(view.place());
    }
    alarm.setVisible(!view.alarm().isEmpty());
    // never by colour alone
    alarm.setText("⚠ " + view.alarm());
    if (!details.getText().equals(view.details())) {
      details.setText(view.details());
    }
    number.getAccessibleContext().setAccessibleName(view.spoken());
    // in no button group: the Tab key would pass over all but the chosen one
    dial.forEach((function, button) -> button.setSelected(function == view.function()));
    // who is warned need not be told as well which meter it is, nor twice what the drawing shows
    int warnings = view.cautions().size() + (view.alarm().isEmpty() ? 0 : 1);
    details.setVisible(warnings == 0);
    place.setVisible(warnings < 2);
    caution.small(warnings > 1);
    fuse.setVisible(!view.fuseIntact() || !view.alive());
    fuse.setText(words.text(view.alive() ? "meter.new-fuse" : "meter.new-meter"));
    if (caution.show(view.cautions())) {
      said.toTop();
    }
  }
}
