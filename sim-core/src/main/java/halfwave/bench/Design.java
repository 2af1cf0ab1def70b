package halfwave.bench;

import halfwave.board.Ignition;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.flame.BurnerDesign;
import halfwave.flame.FlameCalibration;
import halfwave.flame.Fuel;
import halfwave.flame.Rod;
import halfwave.quantity.Guard;
import org.jspecify.annotations.Nullable;

/**
 * What was built: appliance, burner, rod, wiring and board, all as new.
 *
 * @param ignition how the gas is lit
 * @param fuel what burns
 * @param burner the metal of the burner under the rod
 * @param burnerCount burners in the row, 1 to 9; the flame is lit at one end, the rod stands at the
 *     other
 * @param manifoldPascals gauge pressure at the manifold as set up (Pa); above zero
 * @param flame the flame model's free numbers
 * @param rod the flame rod where it was fitted
 * @param spark a spark electrode in the same flame, or null
 * @param source the board's sense source
 * @param lead the sense lead with its healthy insulation
 * @param groundOhms from the chassis back to the board's common (Ω); zero or above, finite
 * @param siliconKilogramsPerCubicMeter silicon in the air that the house gives the burners (kg/m³),
 *     0 to 1e-4; zero, as on all shipped benches, lets no film grow
 */
public record Design(
    Ignition ignition,
    Fuel fuel,
    BurnerDesign burner,
    int burnerCount,
    double manifoldPascals,
    FlameCalibration flame,
    Rod rod,
    @Nullable SparkElectrode spark,
    Source source,
    Lead lead,
    double groundOhms,
    double siliconKilogramsPerCubicMeter) {

  /** Checks the domain. */
  public Design {
    Guard.inRange("burnerCount", burnerCount, 1, 9);
    Guard.inRange("manifoldPascals", manifoldPascals, 1, 10_000);
    // a narrower throat draws no air, and there is no mixture to burn
    Guard.inRange(
        "burner.throatDiameterMeters",
        burner.throatDiameterMeters(),
        2 * burner.orificeDiameterMeters(),
        1);
    Guard.notNegative("groundOhms", groundOhms);
    Guard.inRange("siliconKilogramsPerCubicMeter", siliconKilogramsPerCubicMeter, 0, 1e-4);
  }

  /** The same design with another source. */
  public Design withSource(Source other) {
    return new Design(
        ignition,
        fuel,
        burner,
        burnerCount,
        manifoldPascals,
        flame,
        rod,
        spark,
        other,
        lead,
        groundOhms,
        siliconKilogramsPerCubicMeter);
  }

  /** The same design with another lead. */
  public Design withLead(Lead other) {
    return new Design(
        ignition,
        fuel,
        burner,
        burnerCount,
        manifoldPascals,
        flame,
        rod,
        spark,
        source,
        other,
        groundOhms,
        siliconKilogramsPerCubicMeter);
  }

  /** The same design with another rod. */
  public Design withRod(Rod other) {
    return new Design(
        ignition,
        fuel,
        burner,
        burnerCount,
        manifoldPascals,
        flame,
        other,
        spark,
        source,
        lead,
        groundOhms,
        siliconKilogramsPerCubicMeter);
  }

  /** The same design with other flame numbers. */
  public Design withFlame(FlameCalibration other) {
    return new Design(
        ignition,
        fuel,
        burner,
        burnerCount,
        manifoldPascals,
        other,
        rod,
        spark,
        source,
        lead,
        groundOhms,
        siliconKilogramsPerCubicMeter);
  }

  /** The same design with another burner. */
  public Design withBurner(BurnerDesign other) {
    return new Design(
        ignition,
        fuel,
        other,
        burnerCount,
        manifoldPascals,
        flame,
        rod,
        spark,
        source,
        lead,
        groundOhms,
        siliconKilogramsPerCubicMeter);
  }

  /** The same design with a spark electrode in the flame. */
  public Design withSpark(SparkElectrode other) {
    return new Design(
        ignition,
        fuel,
        burner,
        burnerCount,
        manifoldPascals,
        flame,
        rod,
        other,
        source,
        lead,
        groundOhms,
        siliconKilogramsPerCubicMeter);
  }

  /** The same design where the air holds another mass of silicon (kg/m³). */
  public Design withSilicon(double kilogramsPerCubicMeter) {
    return new Design(
        ignition,
        fuel,
        burner,
        burnerCount,
        manifoldPascals,
        flame,
        rod,
        spark,
        source,
        lead,
        groundOhms,
        kilogramsPerCubicMeter);
  }
}
