package halfwave.gui.presentation.charts;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.charts.StripView.Signal;
import org.junit.jupiter.api.Test;

/** The timeline's own arithmetic. */
class StripViewTest {

  /** Nothing, then a jump to the middle, which lasts to the end. */
  private static final Signal JUMP =
      new Signal(
          new double[] {0, 0.5, 0.5, 1}, new double[] {0, 0, 0.5, 0.5}, 0.1, 0.2, "", "", "", "");

  @Test
  void wordsAreNotPutWhereTheCurveRuns() {
    assertThat(JUMP.crosses(0.8, 1, 0.4, 0.6)).isTrue();
    assertThat(JUMP.crosses(0.8, 1, 0.2, 0.4)).isFalse();
    assertThat(JUMP.crosses(0, 0.2, 0.2, 0.4)).isFalse();
    assertThat(JUMP.crosses(0.45, 0.55, 0.2, 0.4)).as("the jump itself").isTrue();
  }
}
