package halfwave.flame;

import halfwave.quantity.Guard;

/**
 * The metal of one atmospheric burner: gas orifice, injector throat and flame port.
 *
 * @param orificeDiameterMeters drilled diameter of the gas orifice (m); above zero
 * @param throatDiameterMeters diameter of the injector's throat (m); above zero
 * @param portRadiusMeters radius R of the port the flame sits on (m); above zero
 * @param holder how the port holds the flame
 * @param attachmentLengthMeters perimeter P of the holder's ports, along which flame meets metal
 *     (m): 0.075 for a bare 24 mm port, 0.2 to 0.25 ribbed [practice]; above zero
 * @param spacingMeters distance to the neighbouring burner's axis (m) [practice]; above zero
 * @param dischargeRatio Cd of the orifice (1), 0.80 to 0.95 [seen: orifice table, 0.90]
 */
public record BurnerDesign(
    double orificeDiameterMeters,
    double throatDiameterMeters,
    double portRadiusMeters,
    HolderKind holder,
    double attachmentLengthMeters,
    double spacingMeters,
    double dischargeRatio) {

  /** Checks the domain. */
  public BurnerDesign {
    Guard.positive("orificeDiameterMeters", orificeDiameterMeters);
    Guard.positive("throatDiameterMeters", throatDiameterMeters);
    Guard.positive("portRadiusMeters", portRadiusMeters);
    Guard.positive("attachmentLengthMeters", attachmentLengthMeters);
    Guard.positive("spacingMeters", spacingMeters);
    Guard.inRange("dischargeRatio", dischargeRatio, 0.1, 1);
  }

  /**
   * The default inshot burner for a fuel: 2.26 mm (drill 43, 22,000 Btu/h at 3.5 in w.c. [seen: a
   * furnace manual's orifice table]) or 1.40 mm for propane; throat, port and spacing [practice].
   */
  public static BurnerDesign inshot(Fuel fuel) {
    double orifice =
        switch (fuel) {
          case NATURAL_GAS -> 2.26e-3;
          case PROPANE -> 1.40e-3;
        };
    return new BurnerDesign(orifice, 18e-3, 12e-3, HolderKind.RIBBED, 0.22, 60e-3, 0.90);
  }

  /**
   * A small pilot burner with about 0.3 kW and the inshot burner's primary air [practice]: the
   * throat scales with the orifice, the port is a little wider in proportion, and a hood that the
   * flame licks makes its grounded metal much longer than the port's own rim.
   */
  public static BurnerDesign pilot(Fuel fuel) {
    double orifice =
        switch (fuel) {
          case NATURAL_GAS -> 0.46e-3;
          case PROPANE -> 0.285e-3;
        };
    return new BurnerDesign(orifice, 3.66e-3, 3.2e-3, HolderKind.RIBBED, 0.12, 60e-3, 0.90);
  }

  /** The same burner with another orifice (m). */
  public BurnerDesign withOrificeDiameter(double orificeDiameterMeters) {
    return new BurnerDesign(
        orificeDiameterMeters,
        throatDiameterMeters,
        portRadiusMeters,
        holder,
        attachmentLengthMeters,
        spacingMeters,
        dischargeRatio);
  }

  /** Mean diameter of the port, D = 2R (m). */
  public double portDiameterMeters() {
    return 2 * portRadiusMeters;
  }

  /** Cross-section of the orifice (m²). */
  public double orificeSquareMeters() {
    return Math.PI / 4 * orificeDiameterMeters * orificeDiameterMeters;
  }

  /**
   * Gas flow through the orifice, {@code Q = Cd·A·√(2·Δp/(s·1.225))}.
   *
   * <p>Source: a plumbing textbook's capacity table, reproduced to 0.3 % [seen: opentextbc.ca,
   * Plumbing 3e, orifice table].
   *
   * @param fuel gives the specific gravity s
   * @param manifoldPascals gauge pressure Δp (Pa); zero or above
   * @return flow at 15 °C (m³/s)
   */
  public double gasCubicMetersPerSecond(Fuel fuel, double manifoldPascals) {
    Guard.notNegative("manifoldPascals", manifoldPascals);
    double density = fuel.specificGravityRatio() * Mixture.AIR_KILOGRAMS_PER_CUBIC_METER;
    return dischargeRatio * orificeSquareMeters() * Math.sqrt(2 * manifoldPascals / density);
  }

  /**
   * Primary air per gas volume of a clean injector, from its momentum balance at equal static
   * pressure: {@code (s + r)(1 + r) = s·A_throat/(Cd·A_orifice)}; it does not depend on pressure.
   *
   * <p>Source: closed form; method of C. J. Lawn, Proc. IMechE C 217 (2003), doi
   * 10.1243/095440603762826558 [seen].
   *
   * @param fuel gives the specific gravity s
   * @return r₀ (1), zero or above
   */
  public double entrainmentRatio(Fuel fuel) {
    double s = fuel.specificGravityRatio();
    double throat = Math.PI / 4 * throatDiameterMeters * throatDiameterMeters;
    double k = s * throat / (dischargeRatio * orificeSquareMeters());
    double half = 0.5 * (1 + s);
    return Math.max(0, Math.sqrt(half * half - s + k) - half);
  }
}
