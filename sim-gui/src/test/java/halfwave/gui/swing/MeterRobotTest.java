package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.gui.presentation.bench.Spot;
import halfwave.instrument.MeterFunction;
import java.awt.event.KeyEvent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;

/** A hand measures, well and badly. */
class MeterRobotTest extends WithWindow {

  private void put(Spot spot) {
    hand.click(MeterView.key(spot.function()));
    hand.click("meter.leads");
    hand.click(spot.key());
    // to put a meter in series opens the lead: the flame is lost, and a new start takes a while
    open.want(new Intent.StepOn(150_000L));
  }

  private double number() {
    return Double.parseDouble(text("meter.number").replace('−', '-'));
  }

  private String text(String name) {
    JLabel label = hand.find(JLabel.class, name);
    return OpenWindow.onScreen(label::getText);
  }

  private String place() {
    JTextArea area = hand.find(JTextArea.class, "meter.place");
    return OpenWindow.onScreen(area::getText);
  }

  @Test
  void measuresInSeriesAtTheTerminalAndWithAWireInTheFlame() {
    put(Spot.SERIES_AT_BOARD);
    assertThat(text("meter.unit")).startsWith("µA");
    // the usual range of a healthy flame
    assertThat(number()).isBetween(1.5, 6.0);
    put(Spot.TERMINAL_TO_COMMON);
    assertThat(text("meter.unit")).startsWith("V");
    // less than the 110 V of the source, which stands behind megohms
    assertThat(number()).isBetween(5.0, 110.0);
    assertThat(place()).contains("sense terminal");
    put(Spot.FLAME_TO_ROD);
    assertThat(text("meter.unit")).startsWith("V");
    assertThat(place()).contains("flame");
    hand.click("meter.swap");
    assertThat(place()).contains("red on");
    assertThat(hand.there("meter.caution")).isFalse();
  }

  @Test
  void aBlownFuseIsSeenAndANewOneConducts() {
    put(Spot.LINE_TO_NEUTRAL);
    assertThat(number()).as("line voltage").isBetween(105.0, 130.0);
    assertThat(hand.there("meter.new-fuse")).isFalse();
    hand.click("function.dc-microamps");
    assertThat(open.shown().standing().meter().fuseIntact()).isFalse();
    assertThat(hand.there("meter.caution")).isTrue();
    hand.click("meter.take-off");
    assertThat(text("meter.number")).contains("–");
    assertThat(hand.there("meter.alarm")).isTrue();
    hand.click("meter.new-fuse");
    assertThat(open.shown().standing().meter().fuseIntact()).isTrue();
    assertThat(hand.there("meter.new-fuse")).isFalse();
    assertThat(hand.there("meter.alarm")).isFalse();
    put(Spot.SERIES_AT_BOARD);
    assertThat(number()).isBetween(1.5, 6.0);
  }

  @Test
  void ohmsOnALiveCircuitShowACaution() {
    put(Spot.TERMINAL_TO_COMMON);
    assertThat(hand.there("meter.caution")).isFalse();
    hand.click("function.ohms");
    assertThat(hand.there("meter.caution")).isTrue();
    hand.click("function.ac-volts");
    assertThat(hand.there("meter.caution")).isFalse();
  }

  @Test
  void besideTheBenchOnlyTheDialTurns() {
    hand.click("meter.take-off");
    hand.click("function.ohms");
    assertThat(open.shown().moment().hooked()).isNull();
    assertThat(text("meter.unit")).isEqualTo("Ω");
  }

  @Test
  void theDialTurnsByKeysToo() {
    hand.takeKeyboard();
    hand.key(KeyEvent.VK_2, KeyEvent.CTRL_DOWN_MASK);
    assertThat(open.shown().moment().hooked().function()).isEqualTo(MeterFunction.DC_VOLTS);
  }
}
