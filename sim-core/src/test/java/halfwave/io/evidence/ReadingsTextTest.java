package halfwave.io.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.ShippedBenches;
import halfwave.instrument.ShippedMeters;
import halfwave.io.AtomicFile;
import halfwave.matching.ReadingKind;
import halfwave.matching.Setting;
import halfwave.matching.Sight;
import halfwave.matching.TakenReading;
import halfwave.matching.Unknown;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written is read again; values are placed where the fit has them. */
class ReadingsTextTest {

  @TempDir Path folder;

  @Test
  void readingsComeBackAsTheyWere() {
    List<TakenReading> readings =
        List.of(
            TakenReading.of(
                new Sight(ReadingKind.SERIES_DC, Setting.AS_FOUND, ShippedMeters.service()),
                -2.4e-6),
            TakenReading.of(
                new Sight(
                    ReadingKind.LEAD_OFF_VOLTS,
                    new Setting(true, 1e-3, -2e-3, 5e-3),
                    ShippedMeters.plain()),
                84));
    Path file = folder.resolve("readings.json");

    AtomicFile.write(file, ReadingsText.of(readings));

    assertThat(ReadingsFile.read(file)).isEqualTo(readings);
  }

  @Test
  void coordinatesGoBackToValues() {
    var bench = ShippedBenches.standard();
    for (Unknown unknown : Unknown.values()) {
      for (double u : new double[] {0.1, 0.5, 0.9}) {
        // a hundred roundings of doubles about one
        assertThat(unknown.u(bench, unknown.si(bench, u)))
            .as(unknown.name())
            .isCloseTo(u, Offset.offset(1e-12));
      }
    }
    assertThat(Unknown.LEAKAGE.u(bench, Double.POSITIVE_INFINITY)).isZero();
  }
}
