package halfwave.quantity;

/** Physical constants, in SI, each with its source. */
public final class Constants {

  /** Elementary charge e (C). Exact by the SI definition of 2019. */
  public static final double ELEMENTARY_CHARGE_COULOMBS = 1.602176634e-19;

  /** Vacuum permittivity ε₀ (F/m). CODATA 2018. */
  public static final double VACUUM_PERMITTIVITY_FARADS_PER_METER = 8.8541878128e-12;

  /** Stefan–Boltzmann constant σ (W/m²K⁴). CODATA 2018, exact by definition. */
  public static final double STEFAN_BOLTZMANN_WATTS_PER_SQUARE_METER_KELVIN4 = 5.670374419e-8;

  /** Standard acceleration of gravity g (m/s²). Defined by the third CGPM, 1901. */
  public static final double STANDARD_GRAVITY_METERS_PER_SECOND2 = 9.80665;

  private Constants() {}
}
