package halfwave.picture.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.display.Sentences;
import halfwave.explain.Axis;
import halfwave.explain.Sweep;
import halfwave.picture.Painted;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Charts of sweeps have their size, their words in each language, and something on them. */
class SweepChartTest {

  private static final Sweep ONE =
      Sweep.of(
          ShippedBenches.standard(), List.of(Axis.linear(Parameter.ROD_ALONG, -0.02, 0.02, 21)));

  private static final Sweep TWO =
      Sweep.of(
          ShippedBenches.standard(),
          List.of(
              Axis.linear(Parameter.ROD_UP, -0.01, 0.02, 9),
              Axis.logarithmic(Parameter.CONNECTOR, 1e4, 1e9, 7)));

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
  void pictureHasTheUsualSize() {
    BufferedImage image = Painted.image(SweepChart.picture(ONE, Sentences.in(Locale.ENGLISH)), 2);

    assertThat(image.getWidth()).isEqualTo(SweepChart.WIDTH);
    assertThat(image.getHeight()).isEqualTo(SweepChart.HEIGHT);
    // two curves of 3 pixels and more over two thirds of the width
    assertThat(count(image, 0xB4530A)).isGreaterThan(2000);
    assertThat(count(image, 0xFBFAF6)).isGreaterThan(image.getWidth() * image.getHeight() / 4);
  }

  @Test
  void mapIsColoured() {
    BufferedImage image = SweepChart.image(TWO, Sentences.in(Locale.ENGLISH), 960, 600);

    assertThat(image.getWidth()).isEqualTo(960);
    assertThat(image.getHeight()).isEqualTo(600);
    assertThat(image.getRaster().getPixels(100, 100, 700, 400, (int[]) null))
        .satisfies(
            pixels ->
                assertThat(java.util.Arrays.stream(pixels).distinct()).hasSizeGreaterThan(50));
  }

  @ParameterizedTest
  @CsvSource({
    "en, Current in series against rod shift along the burner axis,"
        + " Rod shift along the burner axis (mm), Current in series (µA)",
    "es, Corriente en serie según: avance de la varilla por el eje del quemador,"
        + " Avance de la varilla por el eje del quemador (mm), Corriente en serie (µA)"
  })
  void curvesHaveTitlesWithUnits(String language, String title, String across, String up) {
    JFreeChart chart = SweepChart.chart(ONE, Sentences.in(Locale.forLanguageTag(language)));
    XYPlot plot = chart.getXYPlot();

    assertThat(chart.getTitle().getText()).isEqualTo(title);
    assertThat(plot.getDomainAxis().getLabel()).isEqualTo(across);
    assertThat(plot.getRangeAxis().getLabel()).isEqualTo(up);
  }

  @ParameterizedTest
  @CsvSource({
    "en, DC in series against rod shift upwards and resistance at the connector,"
        + " Rod shift upwards (mm), Resistance at the connector (MΩ)",
    "es, CC en serie según: elevación de la varilla; resistencia del conector,"
        + " Elevación de la varilla (mm), Resistencia del conector (MΩ)"
  })
  void mapsHaveTitlesWithUnits(String language, String title, String across, String up) {
    JFreeChart chart = SweepChart.chart(TWO, Sentences.in(Locale.forLanguageTag(language)));
    XYPlot plot = chart.getXYPlot();

    assertThat(chart.getTitle().getText()).isEqualTo(title);
    assertThat(plot.getDomainAxis().getLabel()).isEqualTo(across);
    assertThat(plot.getRangeAxis().getLabel()).isEqualTo(up);
  }

  /** Meaning never hangs on colour alone. */
  @Test
  void curvesDifferInStroke() {
    XYPlot plot = SweepChart.chart(ONE, Sentences.in(Locale.ENGLISH)).getXYPlot();

    assertThat(plot.getRenderer().getItemStroke(0, 0))
        .isNotEqualTo(plot.getRenderer().getItemStroke(1, 0));
  }

  @Test
  void aSweepWithoutAnyReadingIsDrawn() {
    Sweep none =
        Sweep.of(
            ShippedBenches.standard(), List.of(Axis.linear(Parameter.ROD_ALONG, -0.03, -0.02, 3)));

    assertThat(
            count(
                Painted.image(SweepChart.picture(none, Sentences.in(Locale.ENGLISH)), 1), 0xFBFAF6))
        .isPositive();
  }

  @Test
  void tooSmallIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SweepChart.image(ONE, Sentences.in(Locale.ENGLISH), 100, 100));
  }
}
