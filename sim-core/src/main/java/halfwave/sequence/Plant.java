package halfwave.sequence;

import halfwave.bench.ApplianceCondition;
import halfwave.bench.Bench;
import halfwave.bench.Disorder;
import halfwave.board.BoardOutputs;
import halfwave.board.Ignition;
import halfwave.flame.Flicker;
import halfwave.quantity.Noise;
import halfwave.surface.RodHeating;
import org.apache.commons.math3.util.FastMath;

/**
 * How an appliance moves on by one pace: draft, gas, igniter, ignition, carry-over, flame, flicker,
 * rod. All rates are first-order; their time constants are common practice without a source, unless
 * said otherwise.
 */
final class Plant {

  private static final double PACE_SECONDS = Sequence.PACE_MILLIS / 1000.0;

  /** The pressure switch closes above and opens below (1). */
  private static final double SWITCH_CLOSES_RATIO = 0.85;

  private static final double SWITCH_OPENS_RATIO = 0.6;
  private static final double DRAFT_SHARE = share(1.0);

  /** Gas reaches the ports so long after the valve has opened, and burns off so fast (s). */
  private static final double GAS_FILLS_SECONDS = 0.3;

  private static final double GAS_EMPTIES_SECONDS = 0.1;

  /** A surface hotter than this lights gas (K). */
  private static final double LIGHTS_KELVIN = 1300;

  private static final double GLOWING_KELVIN = 1650;
  private static final double CARBIDE_SHARE = share(5);
  private static final double NITRIDE_SHARE = share(1.5);
  private static final double COOLING_SHARE = share(6);

  private static final double GROWTH_SHARE = share(0.3);

  private static final double FLICKER_KEEPS =
      FastMath.exp(-PACE_SECONDS / Flicker.CORRELATION_SECONDS);
  private static final double FLICKER_ADDS =
      Flicker.SOURCE_RATIO * FastMath.sqrt(1 - FLICKER_KEEPS * FLICKER_KEEPS);

  private static final double BODY_SHARE = share(90);

  /** Where the compartment ends without the circulating blower (K). */
  private static final double UNCOOLED_KELVIN = 650;

  /** Where it ends with nothing but a pilot (K). */
  private static final double PILOT_KELVIN = 350;

  private static final double LIMIT_OPENS_KELVIN = 540;
  private static final double LIMIT_CLOSES_KELVIN = 400;

  /** From here the compartment counts as warm (K): about a minute after a cold start. */
  private static final double WARM_KELVIN = 400;

  /** Closer than this a temperature has arrived (K). */
  private static final double ARRIVED_KELVIN = 0.05;

  /** Closer than this a share has arrived (1). */
  private static final double ARRIVED_RATIO = 1e-6;

  private Plant() {}

  private static double share(double seconds) {
    return -FastMath.expm1(-PACE_SECONDS / seconds);
  }

  /**
   * The furnace one pace later.
   *
   * @param f as it was
   * @param bench as it is under the present triggers
   * @param flame the flame that this bench can have
   * @param outputs what the board does
   * @param seed seed of the flicker
   * @param timeMillis time at the end of the pace (ms)
   */
  static Furnace paced(
      Furnace f,
      Bench bench,
      SenseCurrents.Flame flame,
      BoardOutputs outputs,
      long seed,
      long timeMillis) {
    ApplianceCondition appliance = bench.condition().appliance();
    boolean inducer = outputs.inducer() && !appliance.has(Disorder.INDUCER_DEAD);
    double gas = gas(f, gasFlows(appliance, outputs));
    double igniter = igniter(f, bench, outputs);
    int count = bench.design().burnerCount();
    boolean burns = gas == 1 || (gas > 0 && f.burning());
    int lit = burns && flame.burning() ? f.litCount() : 0;
    long carry = lit > 0 && lit < count ? f.carryMillis() + Sequence.PACE_MILLIS : 0;
    if (lit == 0 && burns && flame.burning() && lights(igniter, appliance, outputs)) {
      lit = 1;
    } else if (carry > 0 && carry >= 1000 * appliance.carryOverSeconds()) {
      lit++;
      carry = 0;
    } else if (appliance.carryOverSeconds() == Double.POSITIVE_INFINITY) {
      carry = 0;
    }
    boolean atRod = lit == count;
    boolean wasAtRod = f.litCount() == count;
    double flicker = 0;
    if (atRod) {
      double noise = Noise.gaussian(seed, Noise.Purpose.FLICKER, timeMillis);
      flicker =
          wasAtRod
              ? FLICKER_KEEPS * f.flickerRatio() + FLICKER_ADDS * noise
              : Flicker.SOURCE_RATIO * noise;
    }
    boolean rodInFlame = atRod && flame.rodInFlame();
    boolean films = rodInFlame && bench.design().siliconKilogramsPerCubicMeter() > 0;
    double draft = towards(f.draftRatio(), inducer ? 1 : 0, DRAFT_SHARE, ARRIVED_RATIO);
    double body = body(f, appliance, outputs);
    return new Furnace(
        draft,
        draft >= (f.draftProved() ? SWITCH_OPENS_RATIO : SWITCH_CLOSES_RATIO),
        gas,
        igniter,
        lit,
        carry,
        atRod ? towards(f.growthRatio(), 1, GROWTH_SHARE, ARRIVED_RATIO) : 0,
        flicker,
        rod(f, bench, rodInFlame, body),
        body,
        body >= (f.overheated() ? LIMIT_CLOSES_KELVIN : LIMIT_OPENS_KELVIN),
        Math.max(0, f.shakenMillis() - Sequence.PACE_MILLIS),
        f.filmMillis() + (films ? Sequence.PACE_MILLIS : 0),
        false);
  }

  /** Whether the circulating blower moves air. */
  static boolean blows(ApplianceCondition appliance, BoardOutputs outputs) {
    return outputs.blower() && !appliance.has(Disorder.BLOWER_DEAD);
  }

  static boolean warm(Furnace f) {
    return f.bodyKelvin() >= WARM_KELVIN;
  }

  /**
   * Without air over the heat exchanger the compartment grows hotter, until the limit opens; a
   * pilot by itself heats little.
   */
  private static double body(Furnace f, ApplianceCondition appliance, BoardOutputs outputs) {
    double to = Furnace.ROOM_KELVIN;
    if (f.burning()) {
      boolean pilotAlone = outputs.pilotValve() && !outputs.mainValve();
      double full = blows(appliance, outputs) ? RodHeating.WALL_KELVIN : UNCOOLED_KELVIN;
      to = pilotAlone ? PILOT_KELVIN : full;
    }
    return towards(f.bodyKelvin(), to, BODY_SHARE, ARRIVED_KELVIN);
  }

  private static boolean gasFlows(ApplianceCondition appliance, BoardOutputs outputs) {
    boolean open = appliance.has(Disorder.VALVE_STUCK_OPEN) || (outputs.gas() && opens(appliance));
    return open && !appliance.has(Disorder.GAS_SHUT);
  }

  private static boolean opens(ApplianceCondition appliance) {
    return !appliance.has(Disorder.VALVE_STUCK_SHUT) && !appliance.has(Disorder.VALVE_DRIVER_DEAD);
  }

  private static double gas(Furnace f, boolean flows) {
    return flows
        ? Math.min(1, f.gasRatio() + PACE_SECONDS / GAS_FILLS_SECONDS)
        : Math.max(0, f.gasRatio() - PACE_SECONDS / GAS_EMPTIES_SECONDS);
  }

  private static double igniter(Furnace f, Bench bench, BoardOutputs outputs) {
    boolean glows =
        outputs.igniter() && !bench.condition().appliance().has(Disorder.IGNITER_BROKEN);
    double heating =
        bench.design().ignition() == Ignition.HOT_SURFACE_NITRIDE ? NITRIDE_SHARE : CARBIDE_SHARE;
    return glows
        ? towards(f.igniterKelvin(), GLOWING_KELVIN, heating, ARRIVED_KELVIN)
        : towards(f.igniterKelvin(), Furnace.ROOM_KELVIN, COOLING_SHARE, ARRIVED_KELVIN);
  }

  private static boolean lights(
      double igniterKelvin, ApplianceCondition appliance, BoardOutputs outputs) {
    return igniterKelvin >= LIGHTS_KELVIN
        || (outputs.spark() && !appliance.has(Disorder.IGNITER_BROKEN));
  }

  private static double rod(Furnace f, Bench bench, boolean inFlame, double bodyKelvin) {
    double thickness = 2 * bench.design().rod().radiusMeters();
    double t = f.rodKelvin();
    RodHeating heating =
        inFlame
            ? new RodHeating(RodHeating.FLAME_KELVIN, bodyKelvin, thickness)
            : RodHeating.outOfFlame(bodyKelvin, thickness);
    // the pace is a thousandth of the rod's time constant: one step of Euler's rule is enough
    double next = t + PACE_SECONDS * heating.kelvinPerSecond(t);
    if (!inFlame) {
      return Math.abs(next - bodyKelvin) < ARRIVED_KELVIN ? bodyKelvin : next;
    }
    return next;
  }

  private static double towards(double from, double to, double share, double arrived) {
    return Math.abs(to - from) < arrived ? to : from + share * (to - from);
  }
}
