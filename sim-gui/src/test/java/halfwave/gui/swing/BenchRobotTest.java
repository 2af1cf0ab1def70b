package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Change;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.board.Stage;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.bench.FaultCard;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.swing.bench.BenchParts;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.scene.DrawnPart;
import halfwave.picture.scene.RodGrip;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** A hand breaks the furnace, watches what it does, and puts it right. */
class BenchRobotTest extends WithWindow {

  private DrawingPanel panel() {
    return hand.find(DrawingPanel.class, "drawing");
  }

  @Test
  void whatIsOutOfOrderIsMarkedUnlessTheBenchIsSealed() {
    Change broken = new Change.Upset(Disorder.IGNITER_BROKEN, true);
    open.want(new Intent.Act(List.of(new Deed.Alter(broken)), 0));
    String said = "igniter or spark circuit broken";
    assertThat(drawing(panel()).description()).contains(said);
    assertThat(tip(DrawnPart.IGNITER)).contains(said);
    open.want(new Intent.Hide());
    assertThat(drawing(panel()).description()).doesNotContain(said);
    assertThat(tip(DrawnPart.IGNITER)).doesNotContain(said);
  }

  private String tip(DrawnPart part) {
    DrawingPanel panel = panel();
    return OpenWindow.onScreen(
        () -> {
          Rectangle2D box =
              Objects.requireNonNull(BenchParts.drawing(panel)).shape(part).getBounds2D();
          return panel.getToolTipText(
              new MouseEvent(
                  panel,
                  MouseEvent.MOUSE_MOVED,
                  0,
                  0,
                  (int) box.getCenterX(),
                  (int) box.getCenterY(),
                  0,
                  false));
        });
  }

  private static BenchDrawing drawing(DrawingPanel panel) {
    return OpenWindow.onScreen(() -> Objects.requireNonNull(BenchParts.drawing(panel)));
  }

  /** Somewhere on a part where a click means that part. */
  private static Point on(DrawingPanel panel, DrawnPart part) {
    BenchDrawing d = drawing(panel);
    return somewhere(
        d.shape(part).getBounds2D(), p -> d.partAt(p).filter(part::equals).isPresent());
  }

  private static Point somewhere(Rectangle2D bounds, java.util.function.Predicate<Point> right) {
    for (double y = 0.05; y < 1; y += 0.05) {
      for (double x = 0.05; x < 1; x += 0.05) {
        Point p =
            new Point(
                (int) Math.round(bounds.getX() + x * bounds.getWidth()),
                (int) Math.round(bounds.getY() + y * bounds.getHeight()));
        if (right.test(p)) {
          return p;
        }
      }
    }
    throw new AssertionError("no such place in " + bounds);
  }

  private double microamps() {
    JLabel label = hand.find(JLabel.class, "meter.number");
    return Double.parseDouble(OpenWindow.onScreen(label::getText).replace('−', '-'));
  }

  @Test
  void theRodDraggedOutOfTheFlameMakesTheMeterFall() {
    double before = microamps();
    assertThat(before).isGreaterThan(1.5);
    Moment moment = open.shown().moment();
    DrawingPanel panel = panel();
    BenchDrawing d = drawing(panel);
    Point grip =
        somewhere(
            d.shape(DrawnPart.ROD).getBounds2D(),
            p -> d.gripAt(p).filter(g -> g == RodGrip.BODY).isPresent());
    hand.drag(panel, grip, new Point(grip.x, grip.y - panel.getHeight() / 4), 12);
    assertThat(Parameter.ROD_ACROSS.of(open.shown().moment().bench())).isNotZero();
    assertThat(open.shown().history().done()).as("a drag is one act").hasSize(1);
    // what the meter averages and how often it shows takes some tenths of a second
    open.want(new Intent.StepOn(2000L));
    assertThat(microamps()).isLessThan(0.7 * before);
    hand.click("bar.undo");
    assertThat(open.shown().moment()).isEqualTo(moment);
    assertThat(microamps()).isEqualTo(before);
  }

  @Test
  void withoutGroundTheBoardLocksOutAndThePowerSwitchResetsIt() {
    DrawingPanel panel = panel();
    hand.click(panel, on(panel, DrawnPart.GROUND_STRAP));
    JLabel name = hand.find(JLabel.class, "part.name");
    assertThat(OpenWindow.onScreen(name::getText)).isEqualTo("Ground strap");
    hand.click("action.0");
    assertThat(Parameter.GROUND.of(open.shown().moment().bench())).isInfinite();
    JComboBox<?> speed = hand.find(JComboBox.class, "bar.speed");
    OpenWindow.onScreen(
        () -> {
          speed.setSelectedItem(300.0);
          return null;
        });
    hand.click("bar.play");
    open.await("the lockout", () -> headline().startsWith("Soft lockout"));
    hand.click("bar.play");
    assertThat(open.shown().moment().board().stage()).isEqualTo(Stage.SOFT_LOCKOUT);
    hand.click("action.0");
    assertThat(Parameter.GROUND.of(open.shown().moment().bench())).isFinite();
    hand.click("bar.power");
    open.want(new Intent.StepOn(10_000L));
    assertThat(open.shown().moment().board().stage()).isEqualTo(Stage.OFF);
    hand.click("bar.power");
    open.want(new Intent.StepOn(120_000L));
    assertThat(open.shown().moment().board().stage()).isEqualTo(Stage.RUN);
    assertThat(headline()).startsWith("Run");
  }

  private String headline() {
    JLabel label = hand.find(JLabel.class, "board.headline");
    return OpenWindow.onScreen(label::getText);
  }

  @Test
  void aFaultIsAddedFromItsListAndPutRightByItsWork() {
    hand.tab("Faults");
    JTextField search = hand.find(JTextField.class, "fault.search");
    hand.takeKeyboard();
    hand.click(search);
    hand.type("broken");
    JList<?> kinds = hand.find(JList.class, "fault.kinds");
    assertThat(OpenWindow.onScreen(kinds.getModel()::getSize)).isLessThan(10);
    choose(kinds, FaultKind.LEAD_BROKEN);
    hand.click("fault.add");
    assertThat(open.shown().moment().bench()).isNotEqualTo(open.shown().paper().bench());
    assertThat(open.shown().unsaved()).isTrue();
    assertThat(open.frame().getTitle()).contains("(changed)");
    hand.tab("Work");
    hand.click("work.sort.repair");
    hand.click("work." + halfwave.work.Repair.REPLACE_LEAD.id());
    assertThat(open.shown().moment().bench().condition().leadExtraOhms()).isZero();
    assertThat(open.shown().standing().work()).hasSize(1);
  }

  private void choose(JList<?> kinds, FaultKind kind) {
    Rectangle cell =
        OpenWindow.onScreen(
            () -> {
              int index =
                  IntStream.range(0, kinds.getModel().getSize())
                      .filter(k -> ((FaultCard) kinds.getModel().getElementAt(k)).kind() == kind)
                      .findFirst()
                      .orElseThrow();
              kinds.ensureIndexIsVisible(index);
              return kinds.getCellBounds(index, index);
            });
    hand.click(kinds, new Point(cell.x + 20, cell.y + cell.height / 2));
    assertThat(((FaultCard) OpenWindow.onScreen(kinds::getSelectedValue)).kind()).isEqualTo(kind);
  }

  @Test
  void undoLeadsBackToTheHealthyBenchAndRedoForwardAgain() {
    State first = open.shown();
    hand.tab("Faults");
    JList<?> kinds = hand.find(JList.class, "fault.kinds");
    for (FaultKind kind :
        new FaultKind[] {FaultKind.GROUND_CORRODED, FaultKind.ROD_SILICA, FaultKind.GAS_SHUT}) {
      choose(kinds, kind);
      hand.click("fault.add");
      hand.click("bar.step");
    }
    hand.click("bar.call");
    assertThat(open.shown().history().done()).hasSize(4);
    Moment last = open.shown().moment();
    for (int k = 0; k < 4; k++) {
      hand.click("bar.undo");
    }
    assertThat(open.shown().moment()).isEqualTo(first.moment());
    assertThat(open.shown().moment().bench().condition())
        .isEqualTo(first.moment().bench().condition());
    assertThat(open.shown().unsaved()).isFalse();
    assertThat(OpenWindow.onScreen(() -> hand("bar.undo").isEnabled())).isFalse();
    for (int k = 0; k < 4; k++) {
      hand.click("bar.redo");
    }
    assertThat(open.shown().moment()).isEqualTo(last);
  }

  private static java.awt.Component hand(String name) {
    return Hand.seen().stream().filter(c -> name.equals(c.getName())).findFirst().orElseThrow();
  }

  @Test
  void everythingIsHealedByOneButton() {
    open.want(new Intent.Act(FaultCard.found("ground", words()).get(0).deeds(1e7, null), 0));
    hand.tab("Condition");
    hand.click("condition.all-healthy");
    assertThat(open.shown().moment().bench().condition()).isEqualTo(Condition.HEALTHY);
  }

  private static halfwave.gui.presentation.Wording words() {
    return halfwave.gui.presentation.Wording.of(
        java.util.Locale.ENGLISH, halfwave.display.UnitSystem.METRIC);
  }
}
