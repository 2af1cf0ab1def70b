package halfwave.picture.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.picture.Painted;
import halfwave.sequence.Moment;
import halfwave.sequence.Sample;
import halfwave.sequence.Script;
import halfwave.sequence.Segment;
import halfwave.sequence.Sequence;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Timelines have their size, their words in each language, and lose nothing that sticks out. */
class SequenceChartTest {

  private static final long UNTIL = 70_000;

  private static final Moment COLD =
      Moment.cold(ShippedBenches.standard(), ShippedBoards.all().get(0), 1);

  private static final Segment CALL =
      new Sequence().advance(COLD, UNTIL, Script.withStart(List.of()));

  private static SequenceChart chart() {
    SequenceChart chart = new SequenceChart(COLD, UNTIL, List.of());
    chart.add(CALL);
    return chart;
  }

  private static List<?> plots(JFreeChart chart) {
    return ((CombinedDomainXYPlot) chart.getPlot()).getSubplots();
  }

  private static int count(BufferedImage image, int rgb) {
    int found = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        found += (image.getRGB(x, y) & 0xFFFFFF) == rgb ? 1 : 0;
      }
    }
    return found;
  }

  @Test
  void pictureHasTheUsualSizeAndAFlameOnIt() {
    BufferedImage image = Painted.image(chart().picture(Sentences.in(Locale.ENGLISH)), 2);

    assertThat(image.getWidth()).isEqualTo(SequenceChart.WIDTH);
    assertThat(image.getHeight()).isEqualTo(SequenceChart.HEIGHT);
    // a bar of some 40 by 500 pixels
    assertThat(count(image, 0x3E7CC4)).isGreaterThan(10_000);
    assertThat(count(image, 0xB4530A)).isGreaterThan(2000);
  }

  @ParameterizedTest
  @CsvSource({
    "en, Sequence of bench: hot-surface-natural-gas, Time (s), DC behind the filter (µA)",
    "es, Secuencia del banco: hot-surface-natural-gas, Tiempo (s), CC tras el filtro (µA)"
  })
  void titlesHaveUnits(String language, String title, String across, String up) {
    JFreeChart chart = chart().chart(Sentences.in(Locale.forLanguageTag(language)));

    assertThat(chart.getTitle().getText()).isEqualTo(title);
    ValueAxis time = ((CombinedDomainXYPlot) chart.getPlot()).getDomainAxis();
    assertThat(time.getLabel()).isEqualTo(across);
    assertThat(time.isAutoTickUnitSelection()).isFalse();
    assertThat(((XYPlot) plots(chart).get(1)).getRangeAxis().getLabel()).isEqualTo(up);
  }

  /** Every limit has its own stroke, so that none is known by its place or colour alone. */
  @Test
  void limitsDifferInStroke() {
    XYPlot currents = (XYPlot) plots(chart().chart(Sentences.in(Locale.ENGLISH))).get(1);

    assertThat(
            currents.getRangeMarkers(Layer.BACKGROUND).stream()
                .map(marker -> ((Marker) marker).getStroke())
                .distinct())
        .hasSize(3);
  }

  /** However few columns there are, the highest and the lowest value are still there. */
  @ParameterizedTest
  @CsvSource({"1", "7", "1400"})
  void reductionKeepsWhatSticksOut(int columns) {
    CurrentColumns current = new CurrentColumns(0, UNTIL, columns);
    CALL.samples().forEach(current::add);
    XYSeries series = current.series(new TimeScale(UNTIL), "current");
    double highest = CALL.samples().stream().mapToDouble(Sample::filteredAmps).max().orElseThrow();

    assertThat(series.getMaxY()).isEqualTo(DisplayUnit.MICROAMP.fromSi(highest));
    assertThat(series.getMinY()).isZero();
    assertThat(series.getItemCount()).isLessThanOrEqualTo(4 * columns + 1);
    assertThat(series.getMaxX()).isEqualTo(UNTIL / 1000.0);
  }

  @ParameterizedTest
  @CsvSource({"1000", "120000", "400000", "420000", "3600000", "18000000", "86400000", "604800000"})
  void numbersAlongTheTimeHaveRoom(long millis) {
    TimeScale time = new TimeScale(millis);

    assertThat(time.shown(millis) / time.step()).isBetween(4.0, 14.0);
  }

  static List<Bench> benches() {
    return ShippedBenches.all();
  }

  /** Also with nothing on it, in the smallest size. */
  @ParameterizedTest
  @MethodSource("benches")
  void everyBenchIsDrawn(Bench bench) {
    Moment cold = Moment.cold(bench, ShippedBoards.standard(bench.design().ignition()), 1);

    assertThat(
            new SequenceChart(cold, 1000, List.of()).image(Sentences.in(Locale.ENGLISH), 600, 450))
        .isNotNull();
  }

  @Test
  void tooSmallIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> chart().image(Sentences.in(Locale.ENGLISH), 100, 100));
  }
}
