package halfwave.bench;

import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;

/**
 * How worn, dirty, misplaced or broken each part is. All of it is physical; a fault is nothing but
 * a change in here.
 *
 * @param manifoldRatio gas pressure over the set-up pressure (1); 0 to 4
 * @param airRatio f_air, primary air over that of a clean injector (1); 0.95 healthy; 0.1 to 2
 * @param attachmentRatio share of the burner's ports where flame meets metal (1); 0.01 to 1
 * @param rodPosition where the rod stands against where it was fitted
 * @param rodKelvin temperature of the rod in the flame (K); 280 to 1600
 * @param rodCoat what has settled on the rod
 * @param burnerScaleOhms resistance of rust and scale on the burner face (Ω); infinity is no
 *     contact
 * @param burnerScaleFarads capacitance of the same (F)
 * @param connectorOhms at the joint between board and lead (Ω); infinity is a pulled lead
 * @param leakageOhms from lead or insulator to the chassis (Ω), beside the healthy insulation;
 *     infinity is none
 * @param jumperOhms from rod to chassis (Ω); infinity is none, zero a grounded rod
 * @param depositOhms forward resistance of a deposit from rod to chassis that conducts one way (Ω);
 *     infinity is none
 * @param groundExtraOhms in the way from chassis to common (Ω); infinity is a lost ground
 * @param appliance everything around the sense circuit
 */
public record Condition(
    double manifoldRatio,
    double airRatio,
    double attachmentRatio,
    RodPosition rodPosition,
    double rodKelvin,
    Coat rodCoat,
    double burnerScaleOhms,
    double burnerScaleFarads,
    double connectorOhms,
    double leakageOhms,
    double jumperOhms,
    double depositOhms,
    double groundExtraOhms,
    ApplianceCondition appliance) {

  private static final double NONE = Double.POSITIVE_INFINITY;

  /** Everything as it should be; the rod at 1150 K, in the middle of what is usual in service. */
  public static final Condition HEALTHY =
      new Condition(
          1,
          0.95,
          1,
          RodPosition.FITTED,
          1150,
          Coat.CLEAN,
          0,
          0,
          0,
          NONE,
          NONE,
          NONE,
          0,
          ApplianceCondition.HEALTHY);

  /** Checks the domain. */
  public Condition {
    Guard.inRange("manifoldRatio", manifoldRatio, 0, 4);
    Guard.inRange("airRatio", airRatio, 0.1, 2);
    Guard.inRange("attachmentRatio", attachmentRatio, 0.01, 1);
    Guard.inRange("rodKelvin", rodKelvin, 280, 1600);
    Guard.resistance("burnerScaleOhms", burnerScaleOhms);
    Guard.inRange("burnerScaleFarads", burnerScaleFarads, 0, 1e-6);
    Guard.resistance("connectorOhms", connectorOhms);
    Guard.resistance("leakageOhms", leakageOhms);
    Guard.resistance("jumperOhms", jumperOhms);
    if (!(depositOhms >= 1)) {
      throw new RejectedValueException(
          "depositOhms", Double.toString(depositOhms), Allowed.RANGE, 1, Double.POSITIVE_INFINITY);
    }
    Guard.resistance("groundExtraOhms", groundExtraOhms);
  }

  /** With another gas pressure (1). */
  public Condition withManifold(double ratio) {
    return gas(ratio, airRatio, attachmentRatio);
  }

  /** With another share of primary air (1). */
  public Condition withAir(double ratio) {
    return gas(manifoldRatio, ratio, attachmentRatio);
  }

  /** With another share of ports where flame meets metal (1). */
  public Condition withAttachment(double ratio) {
    return gas(manifoldRatio, airRatio, ratio);
  }

  /** With the rod elsewhere. */
  public Condition withRodPosition(RodPosition position) {
    return rod(position, rodKelvin, rodCoat);
  }

  /** With the rod at another temperature (K). */
  public Condition withRodKelvin(double kelvin) {
    return rod(rodPosition, kelvin, rodCoat);
  }

  /** With another film on the rod. */
  public Condition withRodCoat(Coat coat) {
    return rod(rodPosition, rodKelvin, coat);
  }

  /** With scale on the burner face (Ω, F). */
  public Condition withBurnerScale(double ohms, double farads) {
    return wiring(ohms, farads, connectorOhms, leakageOhms, jumperOhms, groundExtraOhms);
  }

  /** With another resistance at the lead's connector (Ω). */
  public Condition withConnector(double ohms) {
    return wiring(
        burnerScaleOhms, burnerScaleFarads, ohms, leakageOhms, jumperOhms, groundExtraOhms);
  }

  /** With another leakage (Ω). */
  public Condition withLeakage(double ohms) {
    return wiring(
        burnerScaleOhms, burnerScaleFarads, connectorOhms, ohms, jumperOhms, groundExtraOhms);
  }

  /** With a jumper or contact from rod to chassis (Ω). */
  public Condition withJumper(double ohms) {
    return wiring(
        burnerScaleOhms, burnerScaleFarads, connectorOhms, leakageOhms, ohms, groundExtraOhms);
  }

  /** With a deposit from rod to chassis that conducts one way (Ω forward). */
  public Condition withDeposit(double ohms) {
    return new Condition(
        manifoldRatio,
        airRatio,
        attachmentRatio,
        rodPosition,
        rodKelvin,
        rodCoat,
        burnerScaleOhms,
        burnerScaleFarads,
        connectorOhms,
        leakageOhms,
        jumperOhms,
        ohms,
        groundExtraOhms,
        appliance);
  }

  /** With more resistance in the ground path (Ω). */
  public Condition withGroundExtra(double ohms) {
    return wiring(burnerScaleOhms, burnerScaleFarads, connectorOhms, leakageOhms, jumperOhms, ohms);
  }

  /** With something else around the sense circuit. */
  public Condition withAppliance(ApplianceCondition other) {
    return new Condition(
        manifoldRatio,
        airRatio,
        attachmentRatio,
        rodPosition,
        rodKelvin,
        rodCoat,
        burnerScaleOhms,
        burnerScaleFarads,
        connectorOhms,
        leakageOhms,
        jumperOhms,
        depositOhms,
        groundExtraOhms,
        other);
  }

  private Condition gas(double manifold, double air, double attachment) {
    return new Condition(
        manifold,
        air,
        attachment,
        rodPosition,
        rodKelvin,
        rodCoat,
        burnerScaleOhms,
        burnerScaleFarads,
        connectorOhms,
        leakageOhms,
        jumperOhms,
        depositOhms,
        groundExtraOhms,
        appliance);
  }

  private Condition rod(RodPosition position, double kelvin, Coat coat) {
    return new Condition(
        manifoldRatio,
        airRatio,
        attachmentRatio,
        position,
        kelvin,
        coat,
        burnerScaleOhms,
        burnerScaleFarads,
        connectorOhms,
        leakageOhms,
        jumperOhms,
        depositOhms,
        groundExtraOhms,
        appliance);
  }

  private Condition wiring(
      double scaleOhms,
      double scaleFarads,
      double connector,
      double leakage,
      double jumper,
      double ground) {
    return new Condition(
        manifoldRatio,
        airRatio,
        attachmentRatio,
        rodPosition,
        rodKelvin,
        rodCoat,
        scaleOhms,
        scaleFarads,
        connector,
        leakage,
        jumper,
        depositOhms,
        ground,
        appliance);
  }
}
