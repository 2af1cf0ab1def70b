package halfwave.quantity;

/** What kind of quantity an SI number is; the display chooses its unit by it. */
public enum Dimension {
  /** Volts. */
  VOLTAGE,
  /** Amperes. */
  CURRENT,
  /** Ohms; infinity is an open circuit. */
  RESISTANCE,
  /** Farads. */
  CAPACITANCE,
  /** Meters, for what a ruler measures in a burner compartment. */
  LENGTH,
  /** Radians. */
  ANGLE,
  /** Square meters. */
  AREA,
  /** Pascals, for gas and air pressure. */
  PRESSURE,
  /** Kelvin, absolute. */
  TEMPERATURE,
  /** Kelvin, a difference. */
  TEMPERATURE_DIFFERENCE,
  /** Hertz. */
  FREQUENCY,
  /** Watts, for heat input. */
  POWER,
  /** Meters per second. */
  SPEED,
  /** Seconds. */
  TIME,
  /** Per cubic meter. */
  NUMBER_DENSITY,
  /** Kilograms per cubic meter, for traces in air. */
  MASS_DENSITY,
  /** A share of a whole, shown in per cent. */
  RATIO,
  /** A bare number. */
  NUMBER
}
