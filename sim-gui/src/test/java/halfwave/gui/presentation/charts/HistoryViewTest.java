package halfwave.gui.presentation.charts;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.sequence.Sample;
import halfwave.work.Look;
import halfwave.work.Repair;
import java.util.Arrays;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class HistoryViewTest {

  @Test
  void theLatestStandsFirstAndRepairsStandOnce() {
    Workbench workbench = ChartStates.workbench();
    workbench.want(ChartStates.act(Parameter.GROUND, 1e6));
    workbench.want(new Intent.StepOn(2000L));
    workbench.want(new Intent.Labor(Look.ROD));
    workbench.want(new Intent.StepOn(2000L));
    workbench.want(new Intent.Labor(Repair.values()[0]));
    HistoryView view = HistoryView.of(workbench.shown(), null, ChartStates.ENGLISH, 300);
    assertThat(view.lines()).hasSize(3);
    assertThat(view.lines().get(1).words()).startsWith(ChartStates.ENGLISH.heading(Look.ROD));
    assertThat(view.lines().get(2).words()).containsIgnoringCase("ground");
    assertThat(view.lines().get(0).at()).isGreaterThan(view.lines().get(2).at());
  }

  @Test
  void theSignalIsThatOfTheRecording() {
    State state = ChartStates.running();
    HistoryView view = HistoryView.of(state, ChartStates.healthy(state), ChartStates.ENGLISH, 80);
    double most =
        state.recording().samples().stream().mapToDouble(Sample::filteredAmps).max().orElseThrow();
    double shown = Arrays.stream(view.signal().levels()).max().orElseThrow();
    assertThat(1e-6 * view.amps().value(shown)).isCloseTo(most, Offset.offset(1e-12));
    assertThat(HistoryView.table(state, ChartStates.ENGLISH, 0).lines())
        .hasSize(state.recording().samples().size() + 1);
    // a warm furnace on a healthy bench reads what the healthy bench reads, but for noise
    double healthy = view.amps().value(view.healthy());
    assertThat(1e6 * state.moment().filter().meanAmps()).isCloseTo(healthy, Offset.offset(0.1));
  }
}
