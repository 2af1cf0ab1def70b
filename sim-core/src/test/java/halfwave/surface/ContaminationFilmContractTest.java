package halfwave.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import halfwave.quantity.RejectedValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every film: monotone, passive, finite, continuous to clean, NaN refused. */
class ContaminationFilmContractTest {

  private static final double AREA = 1e-4;

  private static ContaminationFilm film(double meters) {
    return ContaminationFilm.silica(meters, 1000);
  }

  @Test
  void thickerIsMoreOhmsAndFewerFarads() {
    double ohms = 0;
    double farads = Double.POSITIVE_INFINITY;
    for (double t = 1e-9; t <= 1e-3; t *= 1.5) {
      double r = film(t).resistanceOhms(AREA, 1000);
      double c = film(t).capacitanceFarads(AREA);
      assertThat(r).isGreaterThan(ohms).isFinite();
      assertThat(c).isLessThan(farads).isPositive();
      ohms = r;
      farads = c;
    }
  }

  @Test
  void hotterAndLargerIsFewerOhms() {
    double before = Double.POSITIVE_INFINITY;
    for (double kelvin = 280; kelvin <= 1600; kelvin += 20) {
      double r = film(1e-5).resistanceOhms(AREA, kelvin);
      assertThat(r).isPositive().isFinite().isLessThan(before);
      assertThat(film(1e-5).resistanceOhms(2 * AREA, kelvin)).isLessThan(r);
      before = r;
    }
  }

  @Test
  void fadesToACleanSurface() {
    assertThat(ContaminationFilm.CLEAN.resistanceOhms(AREA, 1000)).isZero();
    // R is proportional to thickness: a millionth of it has a millionth of the ohms
    assertThat(film(1e-12).resistanceOhms(AREA, 1000))
        .isLessThan(2e-6 * film(1e-6).resistanceOhms(AREA, 1000));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e-6})
  void refusesWhatIsNoThickness(double meters) {
    assertThatThrownBy(() -> film(meters)).isInstanceOf(RejectedValueException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 0, -300})
  void refusesWhatIsNoTemperature(double kelvin) {
    assertThatThrownBy(() -> film(1e-5).resistanceOhms(AREA, kelvin))
        .isInstanceOf(RejectedValueException.class);
  }
}
