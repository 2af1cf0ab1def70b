package halfwave.gui.swing.lesson;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.gui.presentation.lesson.LessonNotes;
import halfwave.gui.presentation.lesson.LessonView;
import halfwave.gui.swing.widget.CautionPlate;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Rows;
import halfwave.gui.swing.widget.Theme;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Playthrough;
import halfwave.picture.scene.DrawnPart;
import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.HierarchyEvent;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** The player of demonstrations: says, asks, counts votes, shows. */
public final class LessonPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient LessonModel model;
  private final transient Consumer<Set<DrawnPart>> light;
  private final transient BooleanSupplier mayBegin;
  private final transient LessonDesk desk;
  private final LessonSheet sheet;
  private final Column column;
  private final JPanel head;
  private final JPanel foot;
  private @Nullable JButton onward;

  /** What came out: the answer that is right, or else the explanation; null before. */
  private @Nullable JComponent came;

  private @Nullable transient LessonView shown;
  private final JComponent below;
  private boolean listed;
  private boolean notes;
  private transient List<LessonDesk.Own> listedFiles = List.of();

  /**
   * A player.
   *
   * @param light lights parts of the drawing
   * @param mayBegin whether the bench may be left for a demonstration
   * @param below stands below the list of demonstrations
   */
  public LessonPanel(
      Theme theme,
      Wording words,
      LessonModel model,
      Consumer<Set<DrawnPart>> light,
      BooleanSupplier mayBegin,
      LessonDesk desk,
      JComponent below) {
    super(new BorderLayout());
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.light = light;
    this.mayBegin = mayBegin;
    this.desk = desk;
    this.below = below;
    setOpaque(false);
    sheet = new LessonSheet(theme);
    column = sheet.said();
    add(sheet, BorderLayout.CENTER);
    head = new JPanel(new BorderLayout(theme.px(6), 0));
    head.setOpaque(false);
    add(head, BorderLayout.NORTH);
    foot = new JPanel(new Rows(theme.px(6), theme.px(6), 0));
    foot.setOpaque(false);
    int side = theme.px(4);
    foot.setBorder(BorderFactory.createEmptyBorder(side, side, 0, side));
    head.setBorder(BorderFactory.createEmptyBorder(side, side, 0, side));
    add(foot, BorderLayout.SOUTH);
    addHierarchyListener(
        e -> {
          if ((e.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && isShowing()) {
            refresh();
          }
        });
  }

  /** Shows where the demonstration stands. */
  public void refresh() {
    FocusKeeper.around(this, () -> onward, this::look);
  }

  private void look() {
    Playthrough at = model.at();
    if (at == null) {
      if (model.preparing()) {
        waiting();
      } else if (mayOffer() && (!listed || !listedFiles.equals(desk.own()))) {
        offer();
      }
      return;
    }
    LessonView view = LessonView.of(at, words);
    if (!view.equals(shown) || model.preparing()) {
      LessonView before = shown;
      shown = view;
      listed = false;
      fill(view, before != null && view.sameSheet(before));
      light.accept(view.lit());
    }
  }

  /** At first there is nothing to put away, and nothing is read until somebody looks. */
  private boolean mayOffer() {
    return isShowing() || column.getComponentCount() > 0;
  }

  /** What only the instructor should see, while the class looks at the wall. */
  public void notes(boolean on) {
    notes = on;
    shown = null;
    refresh();
  }

  /** Lights once more what this step speaks of, after another panel has lit something else. */
  public void relight() {
    if (shown != null) {
      light.accept(shown.lit());
    }
  }

  private void waiting() {
    clear();
    listed = false;
    column.add(
        Lettering.paragraph(words.text("lesson.preparing"), theme.body(), theme.palette().ink()),
        "gaptop 8, growx, wmin 0");
    redraw();
  }

  private void offer() {
    listed = true;
    listedFiles = desk.own();
    shown = null;
    light.accept(Set.of());
    clear();
    column.add(LessonOffers.desk(theme, words, desk), "growx, wmin 0, wrap");
    for (LessonDesk.Own file : listedFiles) {
      column.add(LessonOffers.file(theme, words, desk, file), "growx, wmin 0, wrap");
    }
    for (Demonstration demonstration : ShippedDemonstrations.all()) {
      Runnable begin =
          () -> {
            if (mayBegin.getAsBoolean()) {
              model.begin(demonstration);
            }
          };
      column.add(
          LessonOffers.shipped(theme, words, desk, demonstration, begin),
          "gaptop 4, growx, wmin 0, wrap");
    }
    column.add(below, "gaptop 8, growx, wmin 0");
    redraw();
  }

  /**
   * Shows a step.
   *
   * @param stays whether only votes have changed: then nothing moves
   */
  private void fill(LessonView view, boolean stays) {
    Point place = sheet.place();
    clear();
    var p = theme.palette();
    JPanel names = new JPanel(new BorderLayout());
    names.setOpaque(false);
    names.add(
        Lettering.paragraph(view.title() + " · " + view.position(), theme.note(), p.softInk()),
        BorderLayout.NORTH);
    names.add(Lettering.paragraph(view.heading(), theme.second(), p.ink()), BorderLayout.CENTER);
    head.add(names, BorderLayout.CENTER);
    head.add(button("lesson.stop", model::end, true), BorderLayout.EAST);
    column.add(Lettering.paragraph(view.say(), theme.lesson(), p.ink()), "growx, wmin 0, wrap");
    if (!view.ask().isEmpty()) {
      ask(view, view.revealed() ? column : sheet.asked());
    }
    if (!view.explanation().isEmpty()) {
      JComponent explanation = Lettering.paragraph(view.explanation(), theme.lesson(), p.ink());
      column.add(explanation, "gaptop 8, growx, wmin 0, wrap");
      came = came == null ? explanation : came;
    }
    if (notes && model.at() != null) {
      CautionPlate plate = new CautionPlate(theme, words.text("lesson.notes"));
      plate.setName("lesson.notes");
      plate.show(LessonNotes.of(model.at(), words));
      column.add(plate, "gaptop 8, growx, wmin 0, wrap");
    }
    foot.add(button("lesson.back", model::back, view.hasBack()));
    foot.add(button("lesson.come-back", model::comeBack, true));
    JButton forward =
        new JButton(model.preparing() ? words.text("lesson.preparing") : view.forward());
    forward.setName("lesson.forward");
    forward.setRequestFocusEnabled(false);
    forward.setFont(theme.heading());
    forward.setEnabled(!model.preparing());
    forward.addActionListener(
        e -> {
          if (view.ended()) {
            model.end();
          } else {
            model.forward();
          }
        });
    foot.add(forward);
    onward = forward;
    redraw();
    if (stays) {
      sheet.place(place);
    } else {
      sheet.begin(came);
      // where the panels scroll as well, a step is brought into sight
      SwingUtilities.invokeLater(
          () -> scrollRectToVisible(new Rectangle(0, 0, getWidth(), getHeight())));
    }
  }

  private void clear() {
    came = null;
    head.removeAll();
    sheet.clear();
    foot.removeAll();
  }

  private void ask(LessonView view, Column into) {
    into.add(
        Lettering.paragraph(
            view.ask(), theme.lesson().deriveFont(Font.BOLD), theme.palette().ink()),
        "gaptop 4, growx, wmin 0, wrap");
    for (int k = 0; k < view.choices().size(); k++) {
      int index = k;
      ChoiceRow row = new ChoiceRow(theme, words, view.choices().get(k), () -> model.vote(index));
      row.setEnabled(view.takesVotes());
      into.add(row, "growx, wmin 0, wrap 2");
      came = view.choices().get(k).right() ? row : came;
    }
  }

  private JButton button(String key, Runnable action, boolean can) {
    JButton button = new JButton(words.text(key));
    button.setName(key);
    button.setRequestFocusEnabled(false);
    button.setEnabled(can);
    button.addActionListener(e -> action.run());
    return button;
  }

  private void redraw() {
    revalidate();
    repaint();
  }
}
