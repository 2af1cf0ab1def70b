package halfwave.bench;

import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.flame.Rod;
import halfwave.quantity.Dimension;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * Every number of a bench that can be turned like a knob: for sweeps, and for the question what the
 * signal depends on. Each knows its range; its name in commands and files is {@link #id()}.
 */
public enum Parameter {
  /** Open-circuit voltage of the sense source (V rms). */
  SOURCE_VOLTS(
      Dimension.VOLTAGE,
      1,
      300,
      b -> b.design().source().openCircuitRmsVolts(),
      (b, v) -> source(b, v, b.design().source().resistanceOhms())),
  /** Resistance behind which the source stands (Ω). */
  SOURCE_OHMS(
      Dimension.RESISTANCE,
      1e3,
      1e8,
      b -> b.design().source().resistanceOhms(),
      (b, v) -> source(b, b.design().source().openCircuitRmsVolts(), v)),
  /** Gas pressure over the set-up pressure (1). */
  GAS_PRESSURE(
      Dimension.NUMBER,
      0,
      4,
      b -> b.condition().manifoldRatio(),
      (b, v) -> b.with(b.condition().withManifold(v))),
  /** Primary air over that of a clean injector (1). */
  PRIMARY_AIR(
      Dimension.NUMBER,
      0.1,
      2,
      b -> b.condition().airRatio(),
      (b, v) -> b.with(b.condition().withAir(v))),
  /** Strength of all ion sources, k_ion (1). */
  ION_STRENGTH(
      Dimension.NUMBER,
      0,
      10,
      b -> b.design().flame().ionMultiplierRatio(),
      (b, v) -> b.with(b.design().withFlame(b.design().flame().withIonMultiplier(v)))),
  /** Share of the burner's ports where flame meets metal (1). */
  BURNER_ATTACHMENT(
      Dimension.NUMBER,
      0.01,
      1,
      b -> b.condition().attachmentRatio(),
      (b, v) -> b.with(b.condition().withAttachment(v))),
  /** Rod sideways from where it was fitted (m). */
  ROD_ACROSS(
      Dimension.LENGTH,
      -0.1,
      0.1,
      b -> b.condition().rodPosition().acrossMeters(),
      (b, v) -> placed(b, position(b).withAcross(v))),
  /** Rod upwards from where it was fitted (m). */
  ROD_UP(
      Dimension.LENGTH,
      -0.1,
      0.1,
      b -> b.condition().rodPosition().upMeters(),
      (b, v) -> placed(b, position(b).withUp(v))),
  /** Rod along the burner's axis from where it was fitted (m). */
  ROD_ALONG(
      Dimension.LENGTH,
      -0.1,
      0.1,
      b -> b.condition().rodPosition().alongMeters(),
      (b, v) -> placed(b, position(b).withAlong(v))),
  /**
   * Rod turned about the vertical through its insulator; positive swings the tip outwards (rad).
   */
  ROD_TURN(
      Dimension.ANGLE,
      -1.6,
      1.6,
      b -> b.condition().rodPosition().turnRadians(),
      (b, v) -> placed(b, position(b).withTurn(v))),
  /** Rod tilted at its insulator; positive lifts the tip (rad). */
  ROD_TILT(
      Dimension.ANGLE,
      -1.6,
      1.6,
      b -> b.condition().rodPosition().tiltRadians(),
      (b, v) -> placed(b, position(b).withTilt(v))),
  /** Rod bent upwards at its middle (rad). */
  ROD_BEND(
      Dimension.ANGLE,
      -1.6,
      1.6,
      b -> b.condition().rodPosition().bendRadians(),
      (b, v) -> placed(b, position(b).withBend(v))),
  /** Half the rod's thickness (m). */
  ROD_RADIUS(
      Dimension.LENGTH,
      0.2e-3,
      5e-3,
      b -> b.design().rod().radiusMeters(),
      (b, v) -> b.with(b.design().withRod(new Rod(b.design().rod().path(), v)))),
  /** Temperature of the rod in the flame (K). */
  ROD_TEMPERATURE(
      Dimension.TEMPERATURE,
      280,
      1600,
      b -> b.condition().rodKelvin(),
      (b, v) -> b.with(b.condition().withRodKelvin(v))),
  /** Thickness of the film on the rod (m). */
  ROD_FILM(
      Dimension.LENGTH,
      0,
      1e-3,
      b -> b.condition().rodCoat().thicknessMeters(),
      (b, v) -> coat(b, v, b.condition().rodCoat().crackOhms())),
  /** Resistance of what fills the cracks of that film (Ω). */
  ROD_CRACKS(
      Dimension.RESISTANCE,
      0,
      1e12,
      b -> b.condition().rodCoat().crackOhms(),
      (b, v) -> coat(b, b.condition().rodCoat().thicknessMeters(), v)),
  /** Resistance of scale on the burner face (Ω). */
  BURNER_SCALE(
      Dimension.RESISTANCE,
      0,
      1e12,
      b -> b.condition().burnerScaleOhms(),
      (b, v) -> b.with(b.condition().withBurnerScale(v, b.condition().burnerScaleFarads()))),
  /** Resistance at the lead's connector (Ω). */
  CONNECTOR(
      Dimension.RESISTANCE,
      0,
      1e12,
      b -> b.condition().connectorOhms(),
      (b, v) -> b.with(b.condition().withConnector(v))),
  /** Further resistance along the lead (Ω). */
  LEAD(
      Dimension.RESISTANCE,
      0,
      1e12,
      b -> b.condition().leadExtraOhms(),
      (b, v) -> b.with(b.condition().withLeadExtra(v))),
  /** Leakage from lead or insulator to the chassis, beside the healthy insulation (Ω). */
  LEAKAGE(
      Dimension.RESISTANCE,
      0,
      1e12,
      b -> b.condition().leakageOhms(),
      (b, v) -> b.with(b.condition().withLeakage(v))),
  /** What joins rod and chassis, from a jumper to a rod that touches metal (Ω). */
  JUMPER(
      Dimension.RESISTANCE,
      0,
      1e12,
      b -> b.condition().jumperOhms(),
      (b, v) -> b.with(b.condition().withJumper(v))),
  /** Forward resistance of a deposit from rod to chassis that conducts one way (Ω). */
  DEPOSIT(
      Dimension.RESISTANCE,
      1,
      1e12,
      b -> b.condition().depositOhms(),
      (b, v) -> b.with(b.condition().withDeposit(v))),
  /** Voltage of the sense source over that as built (1). */
  SENSE_SUPPLY(
      Dimension.RATIO,
      0,
      2,
      b -> b.condition().appliance().senseSupplyRatio(),
      (b, v) -> b.with(b.condition().withAppliance(b.condition().appliance().withSenseSupply(v)))),
  /** DC that the board's amplifier adds to what it gets (A). */
  INPUT_OFFSET(
      Dimension.CURRENT,
      -1e-5,
      1e-5,
      b -> b.condition().appliance().inputOffsetAmps(),
      (b, v) -> b.with(b.condition().withAppliance(b.condition().appliance().withInputOffset(v)))),
  /** Capacitance of the lead to the chassis (F). */
  CABLE(
      Dimension.CAPACITANCE,
      0,
      1e-7,
      b ->
          b.design().lead().capacitanceFarads() == null ? 0 : b.design().lead().capacitanceFarads(),
      (b, v) ->
          b.with(
              b.design()
                  .withLead(
                      new Lead(
                          b.design().lead().resistanceOhms(),
                          b.design().lead().insulationOhms(),
                          v)))),
  /** Further resistance in the ground path (Ω). */
  GROUND(
      Dimension.RESISTANCE,
      0,
      1e12,
      b -> b.condition().groundExtraOhms(),
      (b, v) -> b.with(b.condition().withGroundExtra(v))),
  /** Diameter of the gas orifice (m). */
  ORIFICE(
      Dimension.LENGTH,
      0.1e-3,
      6e-3,
      b -> b.design().burner().orificeDiameterMeters(),
      (b, v) -> b.with(b.design().withBurner(b.design().burner().withOrificeDiameter(v)))),
  /** Silicon in the air that is burnt (kg/m³): by it a film grows on the rod. */
  SILICON(
      Dimension.MASS_DENSITY,
      0,
      1e-4,
      b -> b.design().siliconKilogramsPerCubicMeter(),
      (b, v) -> b.with(b.design().withSilicon(v)));

  /** Reads a number off a bench. */
  private interface Get {
    double from(Bench bench);
  }

  /** Range of what can be disconnected (Ω). */
  private static final double OPEN_FROM = 1e12;

  private final Dimension dimension;
  private final double low;
  private final double high;
  private final Get get;
  private final BiFunction<Bench, Double, Bench> set;

  Parameter(
      Dimension dimension, double low, double high, Get get, BiFunction<Bench, Double, Bench> set) {
    this.dimension = dimension;
    this.low = low;
    this.high = high;
    this.get = get;
    this.set = set;
  }

  /** Name in commands and files. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The one of that name. */
  public static Optional<Parameter> named(String id) {
    return Stream.of(values()).filter(p -> p.id().equals(id)).findFirst();
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Smallest value. */
  public double low() {
    return low;
  }

  /** Largest value. */
  public double high() {
    return high;
  }

  /** Whether a value is in the range; what can be disconnected may also be open, infinite ohms. */
  public boolean accepts(double value) {
    boolean open = high == OPEN_FROM && value == Double.POSITIVE_INFINITY;
    return open || (value >= low && value <= high);
  }

  /**
   * The value when one more of a kind joins what is there: resistances in a row add, those side by
   * side conduct together, ratios multiply, distances add. In whatever order, the same comes out.
   */
  double joined(double there, double joining) {
    return switch (this) {
      case GAS_PRESSURE, PRIMARY_AIR, SENSE_SUPPLY, ION_STRENGTH -> there * joining;
      // never less than a port or two
      case BURNER_ATTACHMENT -> Math.max(low, there * joining);
      case ROD_ACROSS,
          ROD_UP,
          ROD_ALONG,
          ROD_TURN,
          ROD_TILT,
          ROD_BEND,
          ROD_FILM,
          BURNER_SCALE,
          CONNECTOR,
          LEAD,
          GROUND,
          CABLE,
          INPUT_OFFSET,
          SILICON ->
          there + joining;
      // a film has none until it is said to; the cracks of one layer more come on top
      case ROD_CRACKS -> there == Double.POSITIVE_INFINITY ? joining : there + joining;
      case LEAKAGE, JUMPER, DEPOSIT -> together(there, joining);
      case SOURCE_VOLTS, SOURCE_OHMS, ROD_RADIUS, ROD_TEMPERATURE, ORIFICE -> joining;
    };
  }

  private static double together(double a, double b) {
    return a == 0 || b == 0 ? 0 : 1 / (1 / a + 1 / b);
  }

  /** Its value on a bench, SI. */
  public double of(Bench bench) {
    return get.from(bench);
  }

  /**
   * The bench with another value.
   *
   * @throws RejectedValueException where the value is outside the range or makes an impossible
   *     bench
   */
  public Bench with(Bench bench, double value) {
    if (!accepts(value)) {
      throw new RejectedValueException(id(), Double.toString(value), Allowed.RANGE, low, high);
    }
    return set.apply(bench, value);
  }

  private static RodPosition position(Bench bench) {
    return bench.condition().rodPosition();
  }

  private static Bench placed(Bench bench, RodPosition position) {
    return bench.with(bench.condition().withRodPosition(position));
  }

  private static Bench coat(Bench bench, double thickness, double cracks) {
    double porosity = bench.condition().rodCoat().porosityRatio();
    return bench.with(bench.condition().withRodCoat(new Coat(thickness, porosity, cracks)));
  }

  private static Bench source(Bench bench, double volts, double ohms) {
    Source s = bench.design().source();
    return bench.with(
        bench
            .design()
            .withSource(
                new Source(volts, s.frequencyHertz(), ohms, s.couplingFarads(), s.returnOhms())));
  }
}
