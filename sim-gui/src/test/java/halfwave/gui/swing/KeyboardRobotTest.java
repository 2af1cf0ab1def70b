package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Spot;
import halfwave.instrument.MeterFunction;
import halfwave.sequence.Hooked;
import halfwave.sequence.Moment;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Objects;
import javax.swing.AbstractButton;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The whole way with keys alone: no mouse event in this class. */
class KeyboardRobotTest extends WithWindow {

  @BeforeEach
  void begin() {
    hand.takeKeyboard();
  }

  private Hooked hooked() {
    return Objects.requireNonNull(open.shown().moment().hooked(), "no meter is on");
  }

  @Test
  void callPowerAndClock() {
    hand.key(KeyEvent.VK_F2);
    assertThat(open.shown().moment().call()).isFalse();
    hand.key(KeyEvent.VK_F2);
    assertThat(open.shown().moment().call()).isTrue();
    hand.key(KeyEvent.VK_F3);
    assertThat(open.shown().moment().supply()).isFalse();
    hand.key(KeyEvent.VK_F3);
    assertThat(open.shown().moment().supply()).isTrue();
    long before = open.shown().moment().timeMillis();
    hand.key(KeyEvent.VK_PERIOD);
    assertThat(open.shown().moment().timeMillis()).isEqualTo(before + 1000);
  }

  @Test
  void leadsAndDial() {
    hand.key(KeyEvent.VK_F4);
    assertThat(hand.there(Spot.TERMINAL_TO_COMMON.key())).isTrue();
    for (int k = 0; k <= Spot.TERMINAL_TO_COMMON.ordinal(); k++) {
      hand.key(KeyEvent.VK_DOWN);
    }
    hand.key(KeyEvent.VK_ENTER);
    assertThat(Spot.TERMINAL_TO_COMMON.holds(hooked().hookUp())).isTrue();
    assertThat(hooked().function()).as("the dial stays").isEqualTo(MeterFunction.DC_MICROAMPS);
    hand.key(KeyEvent.VK_2, InputEvent.CTRL_DOWN_MASK);
    assertThat(hooked().function()).isEqualTo(MeterFunction.DC_VOLTS);
  }

  @Test
  void aValueIsTypedRefusedTypedAgainAndUndone() {
    Moment first = open.shown().moment();
    hand.key(KeyEvent.VK_1, InputEvent.ALT_DOWN_MASK);
    hand.tabTo("value." + Parameter.GAS_PRESSURE.id());
    hand.key(KeyEvent.VK_A, InputEvent.CTRL_DOWN_MASK);
    hand.type("much");
    hand.key(KeyEvent.VK_ENTER);
    assertThat(open.shown().moment()).as("nonsense changes nothing").isEqualTo(first);
    hand.key(KeyEvent.VK_A, InputEvent.CTRL_DOWN_MASK);
    hand.type("0.5");
    hand.key(KeyEvent.VK_ENTER);
    assertThat(Parameter.GAS_PRESSURE.of(open.shown().moment().bench())).isEqualTo(0.5);
    hand.key(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK);
    assertThat(open.shown().moment()).isEqualTo(first);
    hand.key(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK);
    assertThat(Parameter.GAS_PRESSURE.of(open.shown().moment().bench())).isEqualTo(0.5);
  }

  @Test
  void aSliderIsSteppedAsOneAct() {
    hand.key(KeyEvent.VK_1, InputEvent.ALT_DOWN_MASK);
    hand.tabTo("knob." + Parameter.GAS_PRESSURE.id());
    for (int k = 0; k < 5; k++) {
      hand.key(KeyEvent.VK_RIGHT);
    }
    // five steps of a hundredth of the way from 0 to 4
    assertThat(Parameter.GAS_PRESSURE.of(open.shown().moment().bench())).isBetween(1.19, 1.21);
    assertThat(open.shown().history().done()).hasSize(1);
  }

  @Test
  void aFaultIsSoughtAddedAndRepaired() {
    hand.key(KeyEvent.VK_3, InputEvent.ALT_DOWN_MASK);
    hand.tabTo("fault.search");
    hand.type("ground");
    hand.key(KeyEvent.VK_ENTER);
    assertThat(hand.focusOwner().getName()).isEqualTo("fault.kinds");
    hand.tabTo("fault.add");
    hand.key(KeyEvent.VK_SPACE);
    assertThat(open.shown().unsaved()).isTrue();
    hand.key(KeyEvent.VK_4, InputEvent.ALT_DOWN_MASK);
    hand.tabTo("work.sort.look");
    hand.tabTo("work.sort.repair");
    hand.key(KeyEvent.VK_SPACE);
    hand.tabTo("work." + halfwave.work.Repair.RESTORE_BOND.id());
    hand.key(KeyEvent.VK_SPACE);
    assertThat(open.shown().unsaved()).isFalse();
  }

  private int height(String name) {
    AbstractButton button = hand.now(AbstractButton.class, name);
    return OpenWindow.onScreen(() -> button.getLocationOnScreen().y);
  }

  @Test
  void aFaultIsRemovedAndARefusedSeverityAddsNothing() {
    hand.key(KeyEvent.VK_3, InputEvent.ALT_DOWN_MASK);
    hand.tabTo("fault.search");
    hand.type("ground");
    hand.tabTo("fault.add");
    int stands = height("fault.add");
    hand.key(KeyEvent.VK_SPACE);
    assertThat(open.shown().unsaved()).isTrue();
    assertThat(hand.there("fault.again")).isTrue();
    assertThat(height("fault.add")).as("where it stood before").isEqualTo(stands);
    assertThat(hand.focusOwner().getName()).isEqualTo("fault.search");
    hand.key(KeyEvent.VK_ENTER);
    assertThat(open.shown().history().done()).as("a stray Enter adds nothing").hasSize(1);
    hand.tabTo("fault.remove.ground");
    hand.key(KeyEvent.VK_SPACE);
    assertThat(open.shown().unsaved()).isFalse();
    assertThat(hand.there("fault.again")).isFalse();
    hand.tabTo("fault.search");
    hand.key(KeyEvent.VK_A, InputEvent.CTRL_DOWN_MASK);
    hand.type("corroded");
    hand.tabTo("fault.severity");
    hand.key(KeyEvent.VK_A, InputEvent.CTRL_DOWN_MASK);
    hand.type("much");
    hand.tabTo("fault.add");
    hand.key(KeyEvent.VK_SPACE);
    assertThat(open.shown().unsaved()).isFalse();
  }

  @Test
  void theRodMovesByArrowsAndItsPartOpens() {
    for (int k = 0; k < 60 && !"drawing".equals(hand.focusOwner().getName()); k++) {
      hand.key(KeyEvent.VK_TAB);
    }
    assertThat(hand.focusOwner().getName()).isEqualTo("drawing");
    hand.key(KeyEvent.VK_UP);
    hand.key(KeyEvent.VK_UP);
    // two nudges of a millimetre
    assertThat(Parameter.ROD_ACROSS.of(open.shown().moment().bench())).isEqualTo(-0.002);
    hand.letter('n');
    hand.key(KeyEvent.VK_ENTER);
    assertThat(hand.there("part.name")).isTrue();
  }

  @Test
  void theClockPlaysAndStandsBySpace() {
    hand.key(KeyEvent.VK_F6);
    hand.key(KeyEvent.VK_F6, InputEvent.SHIFT_DOWN_MASK);
    for (int k = 0; k < 60 && !"drawing".equals(hand.focusOwner().getName()); k++) {
      hand.key(KeyEvent.VK_TAB);
    }
    hand.key(KeyEvent.VK_SPACE);
    assertThat(open.shown().clock().running()).isTrue();
    hand.key(KeyEvent.VK_SPACE);
    assertThat(open.shown().clock().running()).isFalse();
    open.want(new Intent.Play(false));
  }

  /** No key falls beside the seal: next to it lie the switches of call and power. */
  @Test
  void aFaultIsSealedDrawnAnsweredAndRevealed() {
    hand.key(KeyEvent.VK_1, InputEvent.ALT_DOWN_MASK);
    hand.key(KeyEvent.VK_F8);
    assertThat(open.shown().sealed()).isTrue();
    on("seal.draw");
    hand.letter(' ');
    open.await("the fault", () -> open.shown().seal().drawn() != null);
    on("seal.answer");
    hand.tabTo("seal.reveal");
    hand.letter(' ');
    open.settle();
    assertThat(open.shown().sealed()).isFalse();
    on("seal.end");
    hand.letter(' ');
    open.settle();
    assertThat(open.shown().seal()).isNull();
    assertThat(open.shown().moment().supply()).isTrue();
    open.await(
        "the keyboard under the tabs",
        () ->
            SwingUtilities.isDescendingFrom(
                hand.focusOwner(), hand.find(JTabbedPane.class, "tabs")));
  }

  private void on(String name) {
    open.await("the keyboard on " + name, () -> name.equals(hand.focusOwner().getName()));
  }
}
