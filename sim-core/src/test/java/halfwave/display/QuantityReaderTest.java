package halfwave.display;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.quantity.Dimension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as typed. */
class QuantityReaderTest {

  @ParameterizedTest
  @CsvSource({
    "5mm, LENGTH, 0.005",
    "-10mm, LENGTH, -0.01",
    "−10 mm, LENGTH, -0.01",
    "0.5in, LENGTH, 0.0127",
    "20µm, LENGTH, 2e-5",
    "20um, LENGTH, 2e-5",
    "1m, LENGTH, 1",
    "3e-3, LENGTH, 0.003",
    ".5, NUMBER, 0.5",
    "95%, NUMBER, 0.95",
    "2.2M, RESISTANCE, 2.2e6",
    "2.2MΩ, RESISTANCE, 2.2e6",
    "2.2Mohm, RESISTANCE, 2.2e6",
    "10k, RESISTANCE, 1e4",
    "50ohm, RESISTANCE, 50",
    "80p, CAPACITANCE, 8e-11",
    "4.7nF, CAPACITANCE, 4.7e-9",
    "0.1kV, VOLTAGE, 100",
    "900°C, TEMPERATURE, 1173.15",
    "900C, TEMPERATURE, 1173.15",
    "300K, TEMPERATURE, 300",
    "90°, ANGLE, 1.5707963267948966",
    "-45deg, ANGLE, -0.7853981633974483",
    "1.5, ANGLE, 1.5",
    "100ug/m3, MASS_DENSITY, 1e-7",
    "0.1 mg/m³, MASS_DENSITY, 1e-7"
  })
  void unitsAreRead(String typed, Dimension dimension, double si) {
    // fifteen digits are kept
    assertThat(QuantityReader.si(typed, dimension))
        .hasValueCloseTo(si, org.assertj.core.api.Assertions.withinPercentage(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "'', LENGTH",
    "mm, LENGTH",
    "5ohm, LENGTH",
    "5MM, LENGTH",
    "1e999, LENGTH",
    "NaN, LENGTH",
    "Infinity, RESISTANCE",
    "'2,2', RESISTANCE",
    "5m, RESISTANCE",
    "1 2, LENGTH",
    "5 3, NUMBER",
    "5mm3, LENGTH",
    "0x10, LENGTH"
  })
  void othersAreNot(String typed, Dimension dimension) {
    assertThat(QuantityReader.si(typed, dimension)).isEmpty();
  }
}
