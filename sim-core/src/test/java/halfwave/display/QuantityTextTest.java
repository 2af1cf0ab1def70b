package halfwave.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Numbers in the units a person reads. */
class QuantityTextTest {

  private static final QuantityText METRIC = QuantityText.of(Locale.ENGLISH, UnitSystem.METRIC);
  private static final QuantityText INCH = QuantityText.of(Locale.ENGLISH, UnitSystem.INCH);
  private static final QuantityText SPANISH =
      QuantityText.of(Locale.forLanguageTag("es"), UnitSystem.METRIC);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4.8213e-6|CURRENT|4.82 µA",
        "-4.8213e-6|CURRENT|−4.82 µA",
        "0.0985e-6|CURRENT|0.0985 µA",
        "9.9e-9|CURRENT|9.90 nA",
        "-3.7e-22|CURRENT|0.0000 nA",
        "0|CURRENT|0 µA",
        "999.6e-6|CURRENT|1.00 mA",
        "999.4e-6|CURRENT|999 µA",
        "119.96|VOLTAGE|120 V",
        "0.25|VOLTAGE|0.250 V",
        "0.0251|VOLTAGE|25.1 mV",
        "12345|VOLTAGE|12.3 kV",
        "1.041e7|RESISTANCE|10.4 MΩ",
        "999.7|RESISTANCE|1.00 kΩ",
        "0|RESISTANCE|0 Ω",
        "2.425e-11|CAPACITANCE|24.3 pF",
        "4.7e-9|CAPACITANCE|4.70 nF",
        "0.0127|LENGTH|12.7 mm",
        "5e-5|LENGTH|50.0 µm",
        "872|PRESSURE|872 Pa",
        "2200|TEMPERATURE|1927 °C",
        "50|FREQUENCY|50.0 Hz",
        "23400|POWER|23.4 kW",
        "0.123|RATIO|12.3 %",
        "2.5|TIME|2.50 s",
        "0.8|TIME|800 ms",
        "3.2e17|NUMBER_DENSITY|3.20 × 10¹¹ cm⁻³"
      })
  void quantityIsReadable(double si, Dimension dimension, String text) {
    assertThat(METRIC.text(si, dimension)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.0127|LENGTH|0.500 in",
        "0.0003|LENGTH|0.0118 in",
        "0.000005|LENGTH|0.197 mil",
        "0|LENGTH|0 in",
        "872|PRESSURE|3.50 in w.c.",
        "373.15|TEMPERATURE|212 °F",
        "23400|POWER|79,844 Btu/h"
      })
  void inchUnitsAreReadable(double si, Dimension dimension, String text) {
    assertThat(INCH.text(si, dimension)).isEqualTo(text);
  }

  @Test
  void gasPressuresCanBeInMillibars() {
    QuantityText millibars = QuantityText.of(Locale.forLanguageTag("es"), UnitSystem.MILLIBAR);
    assertThat(millibars.text(872, Dimension.PRESSURE)).isEqualTo("8,72 mbar");
    assertThat(millibars.text(0.0127, Dimension.LENGTH)).isEqualTo("12,7 mm");
    assertThat(millibars.text(0, Dimension.LENGTH)).isEqualTo("0 mm");
  }

  @Test
  void languageHasItsDecimalSign() {
    assertThat(SPANISH.text(-4.8213e-6, Dimension.CURRENT)).isEqualTo("−4,82 µA");
  }

  @Test
  void fixedDecimalsRoundAwayTheSignOfNothing() {
    assertThat(METRIC.fixed(-0.004, 2)).isEqualTo("0.00");
    assertThat(METRIC.fixed(-0.005, 2)).isEqualTo("−0.01");
    assertThat(METRIC.fixed(-2.5e-6, DisplayUnit.MICROAMP, 4)).isEqualTo("−2.5000 µA");
  }

  /** A unit that is scaled and shifted back gives the number again. */
  @ParameterizedTest
  @EnumSource(DisplayUnit.class)
  void unitsGoBothWays(DisplayUnit unit) {
    double si = unit.toSi(12.5);

    assertThat(unit.fromSi(si)).isCloseTo(12.5, within(1e-10));
    assertThat(unit.fromSi(unit.toSi(0))).isCloseTo(0, within(1e-10));
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void everyDimensionHasUnitsOfItsOwn(Dimension dimension) {
    for (UnitSystem system : UnitSystem.values()) {
      assertThat(DisplayUnit.usual(dimension, system))
          .isNotEmpty()
          .allSatisfy(unit -> assertThat(unit.dimension()).isEqualTo(dimension));
    }
  }

  @Test
  void nothingIsShownForWhatIsNoNumber() {
    assertThatThrownBy(() -> new Quantity(Double.NaN, Dimension.CURRENT))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Quantity(Double.POSITIVE_INFINITY, Dimension.CURRENT))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
