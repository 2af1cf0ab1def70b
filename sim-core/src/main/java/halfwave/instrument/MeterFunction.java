package halfwave.instrument;

import halfwave.quantity.Dimension;

/** What the dial of a multimeter is set to. */
public enum MeterFunction {
  /** AC volts, the mean removed. */
  AC_VOLTS(Input.VOLTAGE, Dimension.VOLTAGE),
  /** DC volts. */
  DC_VOLTS(Input.VOLTAGE, Dimension.VOLTAGE),
  /** AC volts by an input that loads what it is put on, against ghost voltages. */
  LOW_IMPEDANCE_AC_VOLTS(Input.LOW_IMPEDANCE, Dimension.VOLTAGE),
  /** AC microamps, the mean removed. */
  AC_MICROAMPS(Input.MICROAMPS, Dimension.CURRENT),
  /** DC microamps: the function for flame current. */
  DC_MICROAMPS(Input.MICROAMPS, Dimension.CURRENT),
  /** AC and DC microamps side by side. */
  AC_AND_DC_MICROAMPS(Input.MICROAMPS, Dimension.CURRENT),
  /** AC milliamps, the mean removed. */
  AC_MILLIAMPS(Input.MILLIAMPS, Dimension.CURRENT),
  /** DC milliamps. */
  DC_MILLIAMPS(Input.MILLIAMPS, Dimension.CURRENT),
  /** Resistance, with a test source of the meter's own. */
  OHMS(Input.TEST_SOURCE, Dimension.RESISTANCE),
  /** Resistance, with a tone below a limit. */
  CONTINUITY(Input.TEST_SOURCE, Dimension.RESISTANCE);

  /** What the function puts between the leads. */
  enum Input {
    VOLTAGE,
    LOW_IMPEDANCE,
    MICROAMPS,
    MILLIAMPS,
    TEST_SOURCE
  }

  private final Input input;
  private final Dimension dimension;

  MeterFunction(Input input, Dimension dimension) {
    this.input = input;
    this.dimension = dimension;
  }

  Input input() {
    return input;
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Whether the meter must stand in series, behind its fuse. */
  public boolean isCurrent() {
    return dimension == Dimension.CURRENT;
  }

  /** Whether it feeds a test current of its own into what must be dead. */
  public boolean isResistance() {
    return dimension == Dimension.RESISTANCE;
  }

  /** Whether the display has an AC figure. */
  boolean showsAlternating() {
    return switch (this) {
      case AC_VOLTS, LOW_IMPEDANCE_AC_VOLTS, AC_MICROAMPS, AC_AND_DC_MICROAMPS, AC_MILLIAMPS ->
          true;
      case DC_VOLTS, DC_MICROAMPS, DC_MILLIAMPS, OHMS, CONTINUITY -> false;
    };
  }

  /** Whether the display has a DC figure. */
  boolean showsDirect() {
    return switch (this) {
      case DC_VOLTS, DC_MICROAMPS, AC_AND_DC_MICROAMPS, DC_MILLIAMPS -> true;
      case AC_VOLTS, LOW_IMPEDANCE_AC_VOLTS, AC_MICROAMPS, AC_MILLIAMPS, OHMS, CONTINUITY -> false;
    };
  }
}
