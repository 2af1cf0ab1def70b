package halfwave.picture.chart;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.ShippedBenches;
import halfwave.display.Sentences;
import halfwave.forecast.Calendar;
import halfwave.forecast.Forecast;
import halfwave.forecast.Logged;
import halfwave.forecast.Question;
import halfwave.picture.Palette;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What stands in the picture of a forecast. */
class ForecastChartTest {

  private static final int WIDTH = 900;
  private static final int HEIGHT = 500;
  private static final double HOUR = 3600;

  private static Forecast forecast(double serviceSeconds) {
    Question question =
        new Question(
            ShippedBenches.standard(),
            List.of(new Logged.Read(0, 2.5e-6), new Logged.Read(500 * HOUR, 2.2e-6)),
            false,
            20e-9,
            Map.of(),
            2000 * HOUR,
            1e-6,
            0.95,
            1);
    List<Forecast.Point> band =
        List.of(
            new Forecast.Point(500 * HOUR, 2e-6, 2.2e-6, 2.4e-6),
            new Forecast.Point(2500 * HOUR, 0.5e-6, 1.2e-6, 2e-6));
    return new Forecast(
        question,
        band.get(0),
        band,
        List.of(new Forecast.Plan(null, band.get(0), serviceSeconds, Double.POSITIVE_INFINITY)),
        List.of(),
        100,
        1);
  }

  private static BufferedImage painted(Forecast forecast, Palette palette) {
    Calendar calendar = new Calendar(LocalDate.of(2025, 10, 4), 0.1);
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    ForecastChart.picture(forecast, calendar, Sentences.in(Locale.ENGLISH), palette, WIDTH, HEIGHT)
        .paint(g);
    g.dispose();
    return image;
  }

  private static long count(BufferedImage image, Color colour) {
    long count = 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        count += (image.getRGB(x, y) & 0xFFFFFF) == (colour.getRGB() & 0xFFFFFF) ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void bandLimitAndServiceAreThere() {
    BufferedImage image = painted(forecast(1500 * HOUR), Palette.LIGHT);
    // a dashed line over most of the width, and an upright line over most of the height, both 2
    // wide
    assertThat(count(image, Palette.LIGHT.danger())).isGreaterThan(WIDTH / 2);
    assertThat(count(image, Palette.LIGHT.accent())).isGreaterThan(HEIGHT / 2);
    assertThat(count(image, Palette.LIGHT.microamps())).isGreaterThan(WIDTH / 2);
  }

  @Test
  void withoutServiceThereIsNoMark() {
    BufferedImage image = painted(forecast(Double.POSITIVE_INFINITY), Palette.LIGHT);
    assertThat(count(image, Palette.LIGHT.accent())).isZero();
  }

  @Test
  void theDarkLookIsDark() {
    BufferedImage image = painted(forecast(1500 * HOUR), Palette.DARK);
    assertThat(count(image, Palette.DARK.sheet())).isGreaterThan(WIDTH * HEIGHT / 3);
  }
}
