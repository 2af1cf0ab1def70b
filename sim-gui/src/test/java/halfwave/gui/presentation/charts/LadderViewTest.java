package halfwave.gui.presentation.charts;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.circuit.Solved;
import halfwave.explain.Rung;
import halfwave.explain.VoltageLadder;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.LadderView.Side;
import halfwave.gui.presentation.charts.LadderView.Step;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class LadderViewTest {

  /** The solver closes Kirchhoff's voltage law to this (V). */
  private static final Offset<Double> CLOSED = Offset.offset(1e-6);

  @Test
  void theStepsLeadToTheSourcesVolts() {
    State state = ChartStates.turned(Parameter.ROD_FILM, 50e-6);
    VoltageLadder ladder =
        VoltageLadder.rodPositive(
            (Solved) state.readout().steady(), state.readout().flame().path());
    for (int most = 2; most <= 12; most++) {
      LadderView view = LadderView.of(state, null, ChartStates.ENGLISH, most);
      Side side = view.positive();
      assertThat(side.steps()).hasSize(Math.min(most, Rung.values().length));
      double at = 0;
      for (Step step : side.steps()) {
        assertThat(step.from()).isCloseTo(at, Offset.offset(1e-9));
        at = step.to();
      }
      assertThat(view.volts().value(at)).isCloseTo(ladder.sourceVolts(), CLOSED);
    }
  }

  @Test
  void oneStepOfEachSideIsTheLargest() {
    State state = ChartStates.running();
    LadderView view = LadderView.of(state, null, ChartStates.ENGLISH, 9);
    for (Side side : new Side[] {view.positive(), view.negative()}) {
      assertThat(side.steps()).filteredOn(Step::largest).hasSize(1);
      Step largest = side.steps().stream().filter(Step::largest).findFirst().orElseThrow();
      assertThat(side.steps())
          .allMatch(s -> s.to() - s.from() <= largest.to() - largest.from() + 1e-12);
    }
  }

  @Test
  void theGhostShowsOnlyWhereItDiffers() {
    State well = ChartStates.running();
    State ill = ChartStates.turned(Parameter.ROD_FILM, 100e-6);
    Healthy healthy = ChartStates.healthy(well);
    assertThat(LadderView.of(well, healthy, ChartStates.ENGLISH, 9).positive().steps())
        .allMatch(s -> Double.isNaN(s.healthyFrom()));
    assertThat(LadderView.of(ill, healthy, ChartStates.ENGLISH, 9).positive().steps())
        .noneMatch(s -> Double.isNaN(s.healthyFrom()));
  }

  @Test
  void withoutACurrentThereIsNoLadder() {
    State open = ChartStates.turned(Parameter.CONNECTOR, Double.POSITIVE_INFINITY);
    assertThat(LadderView.of(open, null, ChartStates.ENGLISH, 9)).isNull();
  }
}
