package halfwave.gui.presentation.charts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TraceTest {

  @Test
  void whatStandsOutForAMomentIsKept() {
    for (long seed = 1; seed <= 20; seed++) {
      Random random = new Random(seed);
      int count = 5000;
      double[] at = new double[count];
      double[] levels = new double[count];
      for (int k = 0; k < count; k++) {
        at[k] = k / (count - 1.0);
        levels[k] = random.nextGaussian();
      }
      Trace trace = Trace.reduced(at, levels, 200);
      assertThat(trace.at().length).as("seed " + seed).isLessThanOrEqualTo(4 * 201);
      assertThat(Arrays.stream(trace.levels()).max()).isEqualTo(Arrays.stream(levels).max());
      assertThat(Arrays.stream(trace.levels()).min()).isEqualTo(Arrays.stream(levels).min());
      assertThat(trace.at()).isSorted();
      assertThat(trace.at()[0]).isEqualTo(0);
      assertThat(trace.at()[trace.at().length - 1]).isEqualTo(1);
    }
  }

  @Test
  void fewPointsAreLeftAsTheyAre() {
    double[] at = {0, 0.5, 1};
    assertThat(Trace.reduced(at, at, 100).at()).isSameAs(at);
  }
}
