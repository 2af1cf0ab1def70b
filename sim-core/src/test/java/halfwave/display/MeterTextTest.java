package halfwave.display;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.circuit.Failure;
import halfwave.circuit.Part;
import halfwave.circuit.SteadyState;
import halfwave.instrument.Figure;
import halfwave.instrument.Shown;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Displays as text. */
class MeterTextTest {

  private static final Sentences ENGLISH = Sentences.in(Locale.ENGLISH);

  private static Figure figure(double si, double resolution, Dimension dimension) {
    return new Figure.Value(new Quantity(si, dimension), new Quantity(resolution, dimension));
  }

  private static String amps(double amps, double resolution) {
    return MeterText.text(new Shown.Direct(figure(amps, resolution, Dimension.CURRENT)), ENGLISH);
  }

  private static String ohms(double ohms, double resolution) {
    return MeterText.text(
        new Shown.Ohms(figure(ohms, resolution, Dimension.RESISTANCE), true, false), ENGLISH);
  }

  @Test
  void everyRangeHasItsUnitAndDecimals() {
    assertThat(amps(2.5e-6, 0.01e-6)).isEqualTo("2.50 µA DC");
    assertThat(amps(-2.5e-6, 0.1e-6)).isEqualTo("−2.5 µA DC");
    assertThat(amps(0, 0.1e-6)).isEqualTo("0.0 µA DC");
    assertThat(amps(1e-5, 1e-5)).isEqualTo("0.01 mA DC");
    assertThat(amps(0.4, 1e-4)).isEqualTo("400.0 mA DC");
    assertThat(ohms(0.2, 0.1)).isEqualTo("0.2 Ω");
    assertThat(ohms(2200, 1)).isEqualTo("2.200 kΩ");
    assertThat(ohms(220_000, 100)).isEqualTo("220.0 kΩ");
    assertThat(ohms(2.2e6, 1000)).isEqualTo("2.200 MΩ");
    assertThat(ohms(50e6, 1e4)).isEqualTo("50.00 MΩ");
    assertThat(MeterText.text(new Shown.Alternating(figure(98.1, 0.1, Dimension.VOLTAGE)), ENGLISH))
        .isEqualTo("98.1 V AC");
  }

  @Test
  void theRest() {
    Figure over = new Figure.OverRange(Dimension.CURRENT);
    Figure dc = figure(2.53e-6, 0.01e-6, Dimension.CURRENT);
    assertThat(MeterText.text(new Shown.Both(over, dc), ENGLISH)).isEqualTo("OL AC, 2.53 µA DC");
    assertThat(MeterText.text(new Shown.Both(over, dc), Sentences.in(Locale.forLanguageTag("es"))))
        .isEqualTo("OL CA, 2,53 µA CC");
    Figure near = figure(0.2, 0.1, Dimension.RESISTANCE);
    assertThat(MeterText.text(new Shown.Ohms(near, true, true), ENGLISH)).isEqualTo("0.2 Ω, tone");
    Shown open = new Shown.Ohms(new Figure.OverRange(Dimension.RESISTANCE), false, false);
    assertThat(MeterText.text(open, ENGLISH)).isEqualTo("OL, jumping");
    assertThat(MeterText.text(new Shown.Nothing(), ENGLISH)).isEqualTo("dead display");
    Shown unsolved =
        new Shown.Unsolved(new SteadyState.Failed(Failure.NOT_CONVERGED, Part.ROD_FILM, 0, 9));
    assertThat(MeterText.text(unsolved, ENGLISH)).contains("film on the rod");
  }
}
