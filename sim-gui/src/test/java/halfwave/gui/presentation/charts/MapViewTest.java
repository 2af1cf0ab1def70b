package halfwave.gui.presentation.charts;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.bench.RodPosition;
import halfwave.bench.Stages;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.MapView.Kind;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Microammeter;
import halfwave.sequence.Deed;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class MapViewTest {

  private static MapView coarse(State state) {
    ChartStates.Ear<RodMap.Answer> ear = new ChartStates.Ear<>(1);
    new RodMap().answer(RodMap.Question.of(state), ear);
    assertThat(ear.told).as("given up after the first").hasSize(1);
    return MapView.of(
        ear.last(),
        state.moment().bench().condition().rodPosition(),
        state.moment().settings().sensing(),
        ChartStates.ENGLISH);
  }

  @Test
  void aPlaceReadsWhatAMeterReadsThere() {
    State state = ChartStates.running();
    MapView view = coarse(state);
    // the sixth column of nine is 30 mm along, the third line of seven 10 mm to one side
    RodPosition there = RodPosition.shifted(-0.01, 0, 0.03);
    var bench = state.moment().bench();
    MeterReading reading =
        Microammeter.SERVICE.read(
            new Stages().circuit(bench.with(bench.condition().withRodPosition(there))));
    assertThat(1e-6 * view.microamps()[5][2])
        .isCloseTo(((MeterReading.Amps) reading).meanAmps(), Offset.offset(1e-12));
    Probe probe = view.probe(5 / 8.0, 4 / 6.0, ChartStates.ENGLISH);
    assertThat(probe.words()).contains("30.0").contains("−10.0").contains("µA");
  }

  @Test
  void aClickMovesTheRodThereInTheMapsPlaneOnly() {
    State state = ChartStates.turned(Parameter.ROD_UP, 0.002);
    MapView view = coarse(state);
    RodPosition from = state.moment().bench().condition().rodPosition();
    RodPosition to = view.moved(from, 5 / 8.0, 4 / 6.0, ChartStates.ENGLISH);
    assertThat(to.alongMeters()).isCloseTo(0.03, Offset.offset(1e-12));
    assertThat(to.acrossMeters()).isCloseTo(-0.01, Offset.offset(1e-12));
    assertThat(to.upMeters()).isEqualTo(0.002);
    Intent intent = view.click(from, 5 / 8.0, 4 / 6.0, ChartStates.ENGLISH);
    assertThat(intent).isInstanceOf(Intent.Act.class);
    assertThat(((Intent.Act) intent).deeds()).hasSize(2).allMatch(d -> d instanceof Deed.Alter);
    assertThat(view.click(from, 0, 0.5, ChartStates.ENGLISH)).as("inside metal").isNull();
  }

  @Test
  void linesOfEqualReadingLieBetweenHigherAndLower() {
    double[][] cone = new double[21][21];
    for (int i = 0; i < 21; i++) {
      for (int j = 0; j < 21; j++) {
        cone[i][j] = Math.hypot(i - 10, j - 10);
      }
    }
    List<double[]> lines = ContourLines.at(cone, 6.3);
    assertThat(lines).as("a circle is one line").hasSize(1);
    double[] line = lines.get(0);
    assertThat(line[0]).isEqualTo(line[line.length - 2]);
    for (int k = 0; k < line.length; k += 2) {
      // straight pieces between crossings that are interpolated on edges of the grid
      assertThat(Math.hypot(line[k] - 10, line[k + 1] - 10)).isCloseTo(6.3, Offset.offset(0.03));
    }
  }

  @Test
  void theLimitIsALineOfItsOwn() {
    MapView view = coarse(ChartStates.running());
    assertThat(view.contours()).filteredOn(c -> c.kind() == Kind.DROP_OUT).hasSize(1);
    assertThat(view.contours()).noneMatch(c -> c.kind() == Kind.HEALTHY_DROP_OUT);
    assertThat(view.table(ChartStates.ENGLISH).lines()).hasSize(10);
  }
}
