package halfwave.surface;

import halfwave.circuit.ConductionLaw;
import halfwave.quantity.Guard;

/**
 * A semiconducting deposit or a corroded joint: a resistance one way, next to nothing the other.
 * The dangerous case, because it looks like a flame; a board's check for false flame is made for
 * it.
 *
 * @param forwardOhms resistance from the positive to the negative terminal (Ω); above zero
 */
public record RectifyingDeposit(double forwardOhms) implements ConductionLaw {

  /** What still leaks the other way, over what flows forward (1) [common practice, no source]. */
  private static final double BACKWARD_RATIO = 1e-3;

  /** Checks the domain. */
  public RectifyingDeposit {
    Guard.positive("forwardOhms", forwardOhms);
  }

  @Override
  public double currentAmps(double volts) {
    return currentInSeriesAmps(volts, 0);
  }

  @Override
  public double differentialSiemens(double volts) {
    return 1 / ohms(volts);
  }

  @Override
  public double currentInSeriesAmps(double emfVolts, double seriesOhms) {
    return Guard.finite("emfVolts", emfVolts) / (ohms(emfVolts) + seriesOhms);
  }

  @Override
  public double seriesSlopeSiemens(double emfVolts, double currentAmps, double seriesOhms) {
    return 1 / (ohms(emfVolts) + seriesOhms);
  }

  private double ohms(double volts) {
    return volts >= 0 ? forwardOhms : forwardOhms / BACKWARD_RATIO;
  }
}
