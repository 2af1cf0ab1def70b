package halfwave.display;

import static halfwave.quantity.Dimension.ANGLE;
import static halfwave.quantity.Dimension.AREA;
import static halfwave.quantity.Dimension.CAPACITANCE;
import static halfwave.quantity.Dimension.CURRENT;
import static halfwave.quantity.Dimension.FREQUENCY;
import static halfwave.quantity.Dimension.LENGTH;
import static halfwave.quantity.Dimension.MASS_DENSITY;
import static halfwave.quantity.Dimension.NUMBER;
import static halfwave.quantity.Dimension.NUMBER_DENSITY;
import static halfwave.quantity.Dimension.POWER;
import static halfwave.quantity.Dimension.PRESSURE;
import static halfwave.quantity.Dimension.RATIO;
import static halfwave.quantity.Dimension.RESISTANCE;
import static halfwave.quantity.Dimension.SPEED;
import static halfwave.quantity.Dimension.TEMPERATURE;
import static halfwave.quantity.Dimension.TEMPERATURE_DIFFERENCE;
import static halfwave.quantity.Dimension.TIME;
import static halfwave.quantity.Dimension.VOLTAGE;

import halfwave.quantity.Dimension;
import java.util.List;

/** A unit that a person reads. The only place where SI numbers are scaled or shifted. */
public enum DisplayUnit {
  /** Millivolts. */
  MILLIVOLT(VOLTAGE, "mV", 1e-3),
  /** Volts. */
  VOLT(VOLTAGE, "V", 1),
  /** Kilovolts. */
  KILOVOLT(VOLTAGE, "kV", 1e3),
  /** Nanoamperes. */
  NANOAMP(CURRENT, "nA", 1e-9),
  /** Microamperes, the trade's unit of flame current. */
  MICROAMP(CURRENT, "µA", 1e-6),
  /** Milliamperes. */
  MILLIAMP(CURRENT, "mA", 1e-3),
  /** Amperes. */
  AMP(CURRENT, "A", 1),
  /** Ohms. */
  OHM(RESISTANCE, "Ω", 1),
  /** Kilohms. */
  KILOHM(RESISTANCE, "kΩ", 1e3),
  /** Megohms. */
  MEGOHM(RESISTANCE, "MΩ", 1e6),
  /** Gigohms. */
  GIGOHM(RESISTANCE, "GΩ", 1e9),
  /** Picofarads. */
  PICOFARAD(CAPACITANCE, "pF", 1e-12),
  /** Nanofarads. */
  NANOFARAD(CAPACITANCE, "nF", 1e-9),
  /** Microfarads. */
  MICROFARAD(CAPACITANCE, "µF", 1e-6),
  /** Micrometers. */
  MICROMETER(LENGTH, "µm", 1e-6),
  /** Millimeters. */
  MILLIMETER(LENGTH, "mm", 1e-3),
  /** Meters. */
  METER(LENGTH, "m", 1),
  /** Thousandths of an inch: films and bends too small for inches. */
  MIL(LENGTH, "mil", 0.0254e-3),
  /** Inches; 25.4 mm by definition. */
  INCH(LENGTH, "in", 0.0254),
  /** Degrees of arc. */
  DEGREE(ANGLE, "°", Math.PI / 180),
  /** Square millimeters. */
  SQUARE_MILLIMETER(AREA, "mm²", 1e-6),
  /** Square centimeters. */
  SQUARE_CENTIMETER(AREA, "cm²", 1e-4),
  /** Pascals. */
  PASCAL(PRESSURE, "Pa", 1),
  /** Millibars; 100 Pa exactly, as a bar is 100 kPa (NIST SP 811, 2008, appendix B.8). */
  MILLIBAR(PRESSURE, "mbar", 100),
  /** Inches of water column; 249.08891 Pa, conventional (NIST SP 811, 2008, appendix B.8). */
  INCH_WATER_COLUMN(PRESSURE, "in w.c.", 249.08891),
  /** Degrees Celsius. */
  DEGREE_CELSIUS(TEMPERATURE, "°C", 1, 273.15),
  /** Degrees Fahrenheit. */
  DEGREE_FAHRENHEIT(TEMPERATURE, "°F", 5.0 / 9, 459.67 * 5 / 9),
  /** Kelvin, for differences. */
  KELVIN(TEMPERATURE_DIFFERENCE, "K", 1),
  /** Hertz. */
  HERTZ(FREQUENCY, "Hz", 1),
  /** Watts. */
  WATT(POWER, "W", 1),
  /** Kilowatts. */
  KILOWATT(POWER, "kW", 1e3),
  /** International-table British thermal units per hour (NIST SP 811, 2008, appendix B.8). */
  BTU_PER_HOUR(POWER, "Btu/h", 1055.05585262 / 3600),
  /** Meters per second. */
  METER_PER_SECOND(SPEED, "m/s", 1),
  /** Milliseconds. */
  MILLISECOND(TIME, "ms", 1e-3),
  /** Seconds. */
  SECOND(TIME, "s", 1),
  /** Minutes. */
  MINUTE(TIME, "min", 60),
  /** Hours. */
  HOUR(TIME, "h", 3600),
  /** Per cubic centimeter. */
  PER_CUBIC_CENTIMETER(NUMBER_DENSITY, "cm⁻³", 1e6),
  /** Micrograms per cubic meter. */
  MICROGRAM_PER_CUBIC_METER(MASS_DENSITY, "µg/m³", 1e-9),
  /** Milligrams per cubic meter. */
  MILLIGRAM_PER_CUBIC_METER(MASS_DENSITY, "mg/m³", 1e-6),
  /** Per cent. */
  PERCENT(RATIO, "%", 1e-2),
  /** No unit. */
  NONE(NUMBER, "", 1);

  private final Dimension dimension;
  private final String symbol;
  private final double scale;
  private final double zero;

  DisplayUnit(Dimension dimension, String symbol, double scale) {
    this(dimension, symbol, scale, 0);
  }

  DisplayUnit(Dimension dimension, String symbol, double scale, double zero) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.scale = scale;
    this.zero = zero;
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Its symbol, the same in every language; empty for bare numbers. */
  public String symbol() {
    return symbol;
  }

  /** The SI number of a number in this unit. */
  public double toSi(double shown) {
    return shown * scale + zero;
  }

  /** The number in this unit of an SI number. */
  public double fromSi(double si) {
    return (si - zero) / scale;
  }

  /** The units that dimension is shown in, smallest first. */
  static List<DisplayUnit> usual(Dimension dimension, UnitSystem system) {
    boolean inch = system == UnitSystem.INCH;
    return switch (dimension) {
      case VOLTAGE -> List.of(MILLIVOLT, VOLT, KILOVOLT);
      case CURRENT -> List.of(NANOAMP, MICROAMP, MILLIAMP, AMP);
      case RESISTANCE -> List.of(OHM, KILOHM, MEGOHM, GIGOHM);
      case CAPACITANCE -> List.of(PICOFARAD, NANOFARAD, MICROFARAD);
      case LENGTH -> inch ? List.of(MIL, INCH) : List.of(MICROMETER, MILLIMETER, METER);
      case ANGLE -> List.of(DEGREE);
      case AREA -> List.of(SQUARE_MILLIMETER, SQUARE_CENTIMETER);
      case PRESSURE ->
          switch (system) {
            case METRIC -> List.of(PASCAL);
            case MILLIBAR -> List.of(MILLIBAR);
            case INCH -> List.of(INCH_WATER_COLUMN);
          };
      case TEMPERATURE -> List.of(inch ? DEGREE_FAHRENHEIT : DEGREE_CELSIUS);
      case TEMPERATURE_DIFFERENCE -> List.of(KELVIN);
      case FREQUENCY -> List.of(HERTZ);
      case POWER -> inch ? List.of(BTU_PER_HOUR) : List.of(WATT, KILOWATT);
      case SPEED -> List.of(METER_PER_SECOND);
      case TIME -> List.of(MILLISECOND, SECOND, MINUTE, HOUR);
      case NUMBER_DENSITY -> List.of(PER_CUBIC_CENTIMETER);
      case MASS_DENSITY -> List.of(MICROGRAM_PER_CUBIC_METER, MILLIGRAM_PER_CUBIC_METER);
      case RATIO -> List.of(PERCENT);
      case NUMBER -> List.of(NONE);
    };
  }
}
