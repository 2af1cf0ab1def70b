package halfwave.bench;

import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.function.Consumer;

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
 * @param leadExtraOhms further resistance along the lead (Ω); infinity is a broken lead
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
    double leadExtraOhms,
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
    Guard.resistance("leadExtraOhms", leadExtraOhms);
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
    return with(d -> d.manifoldRatio = ratio);
  }

  /** With another share of primary air (1). */
  public Condition withAir(double ratio) {
    return with(d -> d.airRatio = ratio);
  }

  /** With another share of ports where flame meets metal (1). */
  public Condition withAttachment(double ratio) {
    return with(d -> d.attachmentRatio = ratio);
  }

  /** With the rod elsewhere. */
  public Condition withRodPosition(RodPosition position) {
    return with(d -> d.rodPosition = position);
  }

  /** With the rod at another temperature (K). */
  public Condition withRodKelvin(double kelvin) {
    return with(d -> d.rodKelvin = kelvin);
  }

  /** With another film on the rod. */
  public Condition withRodCoat(Coat coat) {
    return with(d -> d.rodCoat = coat);
  }

  /** With scale on the burner face (Ω, F). */
  public Condition withBurnerScale(double ohms, double farads) {
    return with(
        d -> {
          d.burnerScaleOhms = ohms;
          d.burnerScaleFarads = farads;
        });
  }

  /** With another resistance at the lead's connector (Ω). */
  public Condition withConnector(double ohms) {
    return with(d -> d.connectorOhms = ohms);
  }

  /** With further resistance along the lead (Ω). */
  public Condition withLeadExtra(double ohms) {
    return with(d -> d.leadExtraOhms = ohms);
  }

  /** With another leakage (Ω). */
  public Condition withLeakage(double ohms) {
    return with(d -> d.leakageOhms = ohms);
  }

  /** With a jumper or contact from rod to chassis (Ω). */
  public Condition withJumper(double ohms) {
    return with(d -> d.jumperOhms = ohms);
  }

  /** With a deposit from rod to chassis that conducts one way (Ω forward). */
  public Condition withDeposit(double ohms) {
    return with(d -> d.depositOhms = ohms);
  }

  /** With more resistance in the ground path (Ω). */
  public Condition withGroundExtra(double ohms) {
    return with(d -> d.groundExtraOhms = ohms);
  }

  /** With something else around the sense circuit. */
  public Condition withAppliance(ApplianceCondition other) {
    return with(d -> d.appliance = other);
  }

  private Condition with(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.made();
  }

  /** The components, to change some of them. */
  private static final class Draft {
    private double manifoldRatio;
    private double airRatio;
    private double attachmentRatio;
    private RodPosition rodPosition;
    private double rodKelvin;
    private Coat rodCoat;
    private double burnerScaleOhms;
    private double burnerScaleFarads;
    private double connectorOhms;
    private double leadExtraOhms;
    private double leakageOhms;
    private double jumperOhms;
    private double depositOhms;
    private double groundExtraOhms;
    private ApplianceCondition appliance;

    private Draft(Condition from) {
      manifoldRatio = from.manifoldRatio;
      airRatio = from.airRatio;
      attachmentRatio = from.attachmentRatio;
      rodPosition = from.rodPosition;
      rodKelvin = from.rodKelvin;
      rodCoat = from.rodCoat;
      burnerScaleOhms = from.burnerScaleOhms;
      burnerScaleFarads = from.burnerScaleFarads;
      connectorOhms = from.connectorOhms;
      leadExtraOhms = from.leadExtraOhms;
      leakageOhms = from.leakageOhms;
      jumperOhms = from.jumperOhms;
      depositOhms = from.depositOhms;
      groundExtraOhms = from.groundExtraOhms;
      appliance = from.appliance;
    }

    private Condition made() {
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
          leadExtraOhms,
          leakageOhms,
          jumperOhms,
          depositOhms,
          groundExtraOhms,
          appliance);
    }
  }
}
