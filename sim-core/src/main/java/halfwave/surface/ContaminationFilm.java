package halfwave.surface;

import static halfwave.quantity.Constants.VACUUM_PERMITTIVITY_FARADS_PER_METER;

import halfwave.quantity.Guard;
import org.apache.commons.math3.util.FastMath;

/**
 * An insulating film on a rod or burner: a resistance parallel to a capacitance.
 *
 * <p>{@code R = K_por·ρ(T)·t/A}, {@code C = ε_r·ε₀·A/t}. A dense hot film does not block a rod; a
 * porous one (K_por 10² to 10⁴) or a cold rod does.
 *
 * @param thicknessMeters t (m); zero for a clean surface
 * @param porosityRatio K_por, resistivity over that of the dense material (1); a free parameter,
 *     one or above
 * @param permittivityRatio ε_r (1); above zero
 */
public record ContaminationFilm(
    double thicknessMeters, double porosityRatio, double permittivityRatio) {

  /** ε_r of silica (1). */
  public static final double SILICA_PERMITTIVITY_RATIO = 3.8;

  /** A clean surface. */
  public static final ContaminationFilm CLEAN =
      new ContaminationFilm(0, 1, SILICA_PERMITTIVITY_RATIO);

  private static final double GROWTH_METERS_PER_SECOND = 20e-6 / (1000 * 3600.0);
  private static final double REFERENCE_SILICON_KILOGRAMS_PER_CUBIC_METER = 1e-6;

  /** Air burnt with a cubic metre of natural gas (1) [calc: its stoichiometric ratio]. */
  private static final double AIR_RATIO = 9.52;

  /** Checks the domain. */
  public ContaminationFilm {
    Guard.notNegative("thicknessMeters", thicknessMeters);
    Guard.inRange("porosityRatio", porosityRatio, 1, 1e9);
    Guard.positive("permittivityRatio", permittivityRatio);
  }

  /** A silica film. */
  public static ContaminationFilm silica(double thicknessMeters, double porosityRatio) {
    return new ContaminationFilm(thicknessMeters, porosityRatio, SILICA_PERMITTIVITY_RATIO);
  }

  /**
   * Thickness a rod gains, about 20 µm per 1000 h and per mg of silicon in a cubic metre of gas,
   * factor 5 [calc].
   *
   * @param siliconKilogramsPerCubicMeter silicon in the gas (kg/m³); zero or above
   * @param burningSeconds time with flame (s); zero or above
   * @return thickness (m)
   */
  public static double grownMeters(double siliconKilogramsPerCubicMeter, double burningSeconds) {
    return GROWTH_METERS_PER_SECOND
        * Guard.notNegative("siliconKilogramsPerCubicMeter", siliconKilogramsPerCubicMeter)
        / REFERENCE_SILICON_KILOGRAMS_PER_CUBIC_METER
        * Guard.notNegative("burningSeconds", burningSeconds);
  }

  /**
   * The same where the silicon comes with the air of the house, some ten times as much air as gas.
   * Of another gas as much air makes as much heat, hence the same film.
   *
   * @param siliconKilogramsPerCubicMeter silicon in the air (kg/m³); zero or above
   * @param burningSeconds time with flame (s); zero or above
   * @return thickness (m)
   */
  public static double grownFromAirMeters(
      double siliconKilogramsPerCubicMeter, double burningSeconds) {
    return grownMeters(AIR_RATIO * siliconKilogramsPerCubicMeter, burningSeconds);
  }

  /**
   * Resistivity of dense silica, {@code ρ = 6.3e4·exp(13300·(1/T − 1/1073))} [memory]; activation
   * energy 1.15 to 1.25 eV [seen: Del Frate et al., Radiat. Eff. Defects Solids 151 (1999) 859].
   *
   * @param kelvin temperature T (K); above zero
   * @return ρ (Ω·m); grows beyond any insulator near room temperature, as silica's does
   */
  public static double silicaOhmMeters(double kelvin) {
    return 6.3e4 * FastMath.exp(13300 * (1 / Guard.positive("kelvin", kelvin) - 1.0 / 1073));
  }

  /** Whether there is no film: then {@link #resistanceOhms} is zero and there is no capacitance. */
  public boolean clean() {
    return thicknessMeters == 0;
  }

  /**
   * Resistance R.
   *
   * @param areaSquareMeters covered area in contact with flame A (m²); above zero
   * @param kelvin temperature (K); above zero
   * @return R (Ω), zero for a clean surface
   */
  public double resistanceOhms(double areaSquareMeters, double kelvin) {
    return porosityRatio
        * silicaOhmMeters(kelvin)
        * thicknessMeters
        / Guard.positive("areaSquareMeters", areaSquareMeters);
  }

  /**
   * Capacitance C.
   *
   * @param areaSquareMeters covered area in contact with flame A (m²); above zero
   * @return C (F); infinite for a clean surface, which is a short
   */
  public double capacitanceFarads(double areaSquareMeters) {
    return permittivityRatio
        * VACUUM_PERMITTIVITY_FARADS_PER_METER
        * Guard.positive("areaSquareMeters", areaSquareMeters)
        / thicknessMeters;
  }
}
