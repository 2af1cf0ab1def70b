package halfwave.instrument;

import halfwave.quantity.Guard;

/**
 * The supply as ideal sources: rms volts against ground, all in one phase; a minus sign is the
 * opposite phase.
 *
 * @param lineRmsVolts at the terminal marked line (V)
 * @param neutralRmsVolts at the terminal marked neutral (V)
 * @param controlHotRmsVolts at the control transformer's hot end (V)
 * @param controlCommonRmsVolts at its common end (V)
 */
public record Supply(
    double lineRmsVolts,
    double neutralRmsVolts,
    double controlHotRmsVolts,
    double controlCommonRmsVolts) {

  /** Power off. */
  public static final Supply OFF = new Supply(0, 0, 0, 0);

  /** As it should be: 120 V, and 24 V in phase, its common end bonded to the chassis. */
  public static final Supply CORRECT = new Supply(120, 0, 24, 0);

  /**
   * Resistances of a supply that is switched off (Ω) [practice]: the control transformer's
   * windings, the neutral's way to ground at the panel, the common end's bond to the chassis.
   */
  private static final double PRIMARY_OHMS = 25;

  private static final double SECONDARY_OHMS = 1;
  private static final double NEUTRAL_BOND_OHMS = 0.3;
  private static final double COMMON_BOND_OHMS = 0.1;

  /** Checks the domain. */
  public Supply {
    Guard.finite("lineRmsVolts", lineRmsVolts);
    Guard.finite("neutralRmsVolts", neutralRmsVolts);
    Guard.finite("controlHotRmsVolts", controlHotRmsVolts);
    Guard.finite("controlCommonRmsVolts", controlCommonRmsVolts);
  }

  /** The same with line and neutral swapped. */
  public Supply lineReversed() {
    return new Supply(neutralRmsVolts, lineRmsVolts, controlHotRmsVolts, controlCommonRmsVolts);
  }

  /** The same with the ends of the control transformer's primary swapped. */
  public Supply phaseReversed() {
    double swing = controlHotRmsVolts - controlCommonRmsVolts;
    return new Supply(
        lineRmsVolts, neutralRmsVolts, controlCommonRmsVolts - swing, controlCommonRmsVolts);
  }

  /** Voltage of one point against ground (V rms), negative in the opposite phase. */
  public double rmsVolts(SupplyPoint point) {
    return switch (point) {
      case LINE -> lineRmsVolts;
      case NEUTRAL -> neutralRmsVolts;
      case GROUND -> 0;
      case CONTROL_HOT -> controlHotRmsVolts;
      case CONTROL_COMMON -> controlCommonRmsVolts;
    };
  }

  /**
   * Resistance between two points with the power off (Ω): two windings that meet in ground. What
   * switches between panel and furnace part is left out.
   */
  static double deadOhms(SupplyPoint a, SupplyPoint b) {
    if (a == b) {
      return 0;
    }
    boolean sameWinding =
        primary(a) == primary(b) && a != SupplyPoint.GROUND && b != SupplyPoint.GROUND;
    if (sameWinding) {
      return primary(a) ? PRIMARY_OHMS : SECONDARY_OHMS;
    }
    return toGroundOhms(a) + toGroundOhms(b);
  }

  private static boolean primary(SupplyPoint point) {
    return point == SupplyPoint.LINE || point == SupplyPoint.NEUTRAL;
  }

  private static double toGroundOhms(SupplyPoint point) {
    return switch (point) {
      case LINE -> PRIMARY_OHMS + NEUTRAL_BOND_OHMS;
      case NEUTRAL -> NEUTRAL_BOND_OHMS;
      case GROUND -> 0;
      case CONTROL_HOT -> SECONDARY_OHMS + COMMON_BOND_OHMS;
      case CONTROL_COMMON -> COMMON_BOND_OHMS;
    };
  }

  /** Whether there is any voltage. */
  public boolean live() {
    return lineRmsVolts != 0
        || neutralRmsVolts != 0
        || controlHotRmsVolts != 0
        || controlCommonRmsVolts != 0;
  }
}
