package halfwave.gui.presentation.charts;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.Solved;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.WaveView.Tap;
import java.util.Arrays;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class WaveViewTest {

  /** A number goes to a unit, to a place and back. */
  private static final Offset<Double> ROUNDING = Offset.offset(1e-9);

  @Test
  void showsWhatTheCircuitSolverFound() {
    State state = ChartStates.running();
    Solved solved = (Solved) state.readout().steady();
    for (Tap tap : Tap.values()) {
      WaveView view = WaveView.of(state, null, tap, ChartStates.ENGLISH, 500);
      double[] amps = solved.currentAmps(Part.FLAME);
      double[] shown = view.samples().microamps();
      assertThat(shown).hasSize(amps.length + 1);
      assertThat(shown[shown.length - 1]).isEqualTo(shown[0]);
      for (int k = 0; k < amps.length; k++) {
        assertThat(1e-6 * shown[k]).isCloseTo(amps[k], Offset.offset(1e-15));
        assertThat(view.amps().value(view.current().levels()[k])).isCloseTo(shown[k], ROUNDING);
      }
    }
    WaveView source = WaveView.of(state, null, Tap.SOURCE, ChartStates.ENGLISH, 500);
    double[] emf = solved.voltageVolts(Point.EMF, Point.COMMON);
    assertThat(Arrays.copyOf(source.samples().volts(), emf.length)).isEqualTo(emf);
    assertThat(1e-6 * source.amps().value(source.mean()))
        .isCloseTo(solved.currentMeanAmps(Part.CONNECTOR), Offset.offset(1e-15));
  }

  @Test
  void aHealthyBenchHasNoGhost() {
    State state = ChartStates.running();
    WaveView view =
        WaveView.of(state, ChartStates.healthy(state), Tap.TERMINAL, ChartStates.ENGLISH, 500);
    assertThat(view.healthyCurrent()).isNull();
  }

  @Test
  void aFilmOnTheRodShowsAgainstTheHealthyBench() {
    State state = ChartStates.turned(Parameter.ROD_FILM, 100e-6);
    WaveView view =
        WaveView.of(state, ChartStates.healthy(state), Tap.TERMINAL, ChartStates.ENGLISH, 500);
    assertThat(view.healthyCurrent()).isNotNull();
    double healthy = Arrays.stream(view.healthyCurrent().levels()).max().orElseThrow();
    assertThat(healthy).isGreaterThan(Arrays.stream(view.current().levels()).max().orElseThrow());
  }

  @Test
  void theCursorReadsOutWhatIsThere() {
    State state = ChartStates.running();
    WaveView view = WaveView.of(state, null, Tap.TERMINAL, ChartStates.ENGLISH, 500);
    Probe probe = view.probe(0.25, ChartStates.ENGLISH);
    assertThat(probe.words()).contains("ms").contains("V").contains("µA");
    assertThat(probe.at()).isCloseTo(0.25, Offset.offset(1.0 / 128));
    assertThat(view.table().lines()).hasSize(view.samples().millis().length + 1);
  }
}
