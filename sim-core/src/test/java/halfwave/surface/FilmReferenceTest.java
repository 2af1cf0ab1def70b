package halfwave.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import org.junit.jupiter.api.Test;

/** Films against the numbers of the model's section 3; they are quoted to one or two digits. */
@Validated(Area.FILMS)
class FilmReferenceTest {

  private static final Reference QUOTED =
      Reference.memory("resistivity of silica, quoted in the model's section 3");
  private static final Reference SILICA =
      Reference.seen("Del Frate et al., Radiat. Eff. Defects Solids 151 (1999) 859");
  private static final Reference GROWTH =
      Reference.calc("growth by silicon in the gas, model's section 3; factor 5");
  private static final Reference BURNING =
      Reference.calc("CH4 + 2 O2, air with 21 % oxygen: 9.52 of air to one of gas");
  private static final String DIGITS = "half of the last digit quoted";

  @Test
  void denseSilicaOfTenMicrometers() {
    ContaminationFilm film = ContaminationFilm.silica(10e-6, 1);
    QUOTED
        .check("10 µm of silica on 1 cm², 400 °C", Unit.MEGOHMS, film.resistanceOhms(1e-4, 673.15))
        .isCloseTo(10e6, 0.5e6, "quoted to one or two digits");
    QUOTED
        .check("10 µm of silica on 1 cm², 800 °C", Unit.OHMS, film.resistanceOhms(1e-4, 1073.15))
        .isCloseTo(6e3, 0.5e3, "quoted to one digit");
    QUOTED
        .check(
            "10 µm of silica on 1 cm²: capacitance", Unit.NANOFARADS, film.capacitanceFarads(1e-4))
        .isCloseTo(0.34e-9, 0.5e-11, DIGITS);
  }

  @Test
  void activationEnergy() {
    double slope =
        StrictMath.log(
                ContaminationFilm.silicaOhmMeters(700) / ContaminationFilm.silicaOhmMeters(1000))
            / (1.0 / 700 - 1.0 / 1000);
    double electronVolts = slope * 8.617333262e-5;
    SILICA
        .check("activation energy of silica's conduction", Unit.ELECTRON_VOLTS, electronVolts)
        .isBetween(1.145, 1.25, "measured 1.15 to 1.25; the model's 1.146 rounds to the lower end");
  }

  @Test
  void growth() {
    GROWTH
        .check(
            "growth in 1000 h at 1 mg of silicon in a m³ of gas",
            Unit.MICROMETERS,
            ContaminationFilm.grownMeters(1e-6, 3.6e6))
        .isCloseTo(20e-6, 1e-12, "rounding");
  }

  @Test
  void growthByAir() {
    BURNING
        .check(
            "growth in 1000 h at 1 mg of silicon in a m³ of air",
            Unit.MICROMETERS,
            ContaminationFilm.grownFromAirMeters(1e-6, 3.6e6))
        .isCloseTo(9.52 * 20e-6, 1e-12, "rounding");
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
