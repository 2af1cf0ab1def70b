package halfwave.display;

/** Which units a person is used to; electrical units are the same in both. */
public enum UnitSystem {
  /** Millimeters, pascals, degrees Celsius, kilowatts. */
  METRIC,
  /** Inches, inches of water column, degrees Fahrenheit, Btu per hour. */
  INCH
}
