package halfwave.display;

/** Which units a person is used to; electrical units are the same in all. */
public enum UnitSystem {
  /** Millimeters, pascals, degrees Celsius, kilowatts. */
  METRIC,
  /** The same, with gas pressures in millibars. */
  MILLIBAR,
  /** Inches, inches of water column, degrees Fahrenheit, Btu per hour. */
  INCH
}
