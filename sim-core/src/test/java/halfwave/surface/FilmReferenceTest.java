package halfwave.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Films against the numbers of the model's section 3; they are quoted to one or two digits. */
class FilmReferenceTest {

  @Test
  void denseSilicaOfTenMicrometers() {
    ContaminationFilm film = ContaminationFilm.silica(10e-6, 1);
    // memory, closed form: 10 µm on 1 cm²: 10 MΩ at 400 °C, 6 kΩ at 800 °C, 0.34 nF
    assertThat(film.resistanceOhms(1e-4, 673.15)).isCloseTo(10e6, within(0.5e6));
    assertThat(film.resistanceOhms(1e-4, 1073.15)).isCloseTo(6e3, within(0.5e3));
    assertThat(film.capacitanceFarads(1e-4)).isCloseTo(0.34e-9, within(0.5e-11));
  }

  @Test
  void activationEnergy() {
    // seen: Del Frate et al., Radiat. Eff. Defects Solids 151 (1999) 859: 1.15 to 1.25 eV; the
    // model's 13300 K times k/e is 1.146 eV, which rounds to the lower end
    double slope =
        StrictMath.log(
                ContaminationFilm.silicaOhmMeters(700) / ContaminationFilm.silicaOhmMeters(1000))
            / (1.0 / 700 - 1.0 / 1000);
    double electronVolts = slope * 8.617333262e-5;
    assertThat(electronVolts).isBetween(1.145, 1.25);
  }

  @Test
  void growth() {
    // calc: about 20 µm per 1000 h and per mg of silicon in a cubic metre
    assertThat(ContaminationFilm.grownMeters(1e-6, 3.6e6)).isCloseTo(20e-6, within(1e-12));
  }

  @Test
  void growthByAir() {
    // a cubic metre of methane burns with 9.52 of air: 2 CH4's worth of oxygen, 21 % of air
    assertThat(ContaminationFilm.grownFromAirMeters(1e-6, 3.6e6))
        .isCloseTo(9.52 * 20e-6, within(1e-12));
  }

  @Test
  void porousFilmIsTheDenseOneTimesItsFactor() {
    double dense = ContaminationFilm.silica(20e-6, 1).resistanceOhms(1e-4, 1100);
    double porous = ContaminationFilm.silica(20e-6, 1e3).resistanceOhms(1e-4, 1100);
    assertThat(porous).isCloseTo(1e3 * dense, within(1e-6 * porous));
    assertThat(ContaminationFilm.CLEAN.clean()).isTrue();
    assertThat(ContaminationFilm.CLEAN.resistanceOhms(1e-4, 1100)).isZero();
  }

  @Test
  void refusesWhatIsNoFilm() {
    assertThatThrownBy(() -> ContaminationFilm.silica(Double.NaN, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ContaminationFilm.silica(1e-6, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ContaminationFilm.CLEAN.resistanceOhms(0, 1000))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
