package halfwave.gui.presentation.charts;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.QuantityText;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class ChartAxisTest {

  private static final QuantityText NUMBERS = ChartStates.ENGLISH.sentences().quantities();

  /** Places go through a logarithm and back. */
  private static final Offset<Double> ROUNDING = Offset.offset(1e-9);

  @Test
  void roundNumbersStandBesideIt() {
    ChartAxis axis = ChartAxis.rounded("volts, V", -143, 126, 4, NUMBERS);
    assertThat(axis.low()).isEqualTo(-200);
    assertThat(axis.high()).isEqualTo(200);
    assertThat(axis.marks()).extracting(ChartAxis.Mark::words).contains("−100", "0", "200");
  }

  @Test
  void itCanRunBackwards() {
    ChartAxis axis = ChartAxis.linear("sideways, mm", 30, -30, 4, NUMBERS);
    assertThat(axis.place(30)).isEqualTo(0);
    assertThat(axis.place(-30)).isEqualTo(1);
    assertThat(axis.marks()).allMatch(m -> m.at() >= 0 && m.at() <= 1);
  }

  @Test
  void decadesStandAtEqualDistances() {
    ChartAxis axis = ChartAxis.decades("film, µm", 0.1, 1000, NUMBERS);
    assertThat(axis.place(10)).isCloseTo(0.5, ROUNDING);
    assertThat(axis.value(0.25)).isCloseTo(1, ROUNDING);
    assertThat(axis.marks()).extracting(ChartAxis.Mark::words).contains("0.1", "1", "10", "1000");
  }
}
