package halfwave.circuit;

/**
 * One flame path and no capacitor: nothing remembers, each half-cycle is symmetric about its crest,
 * and a quarter period of each tells all means.
 */
final class QuarterWave {

  private QuarterWave() {}

  /**
   * Moments ⟨i⟩, ⟨i²⟩ and ⟨i·sin ωt⟩ of the current by Gauss's rule, with θ = (π/2)·u², which makes
   * the square-root start of the current smooth. Waves are walked only when they are looked at.
   */
  static Solved solve(Reduction reduction, Grid grid) {
    ConductionLaw law = reduction.topology.ports.get(0).law();
    double peak = reduction.sourcePeakVolts * reduction.portVoltage[0].sine();
    double ohms = -reduction.portVoltage[0].perPort()[0];
    double mean = 0;
    double meanSquare = 0;
    double meanSine = 0;
    for (int j = 0; j < grid.quarterSine.length; j++) {
      double sine = grid.quarterSine[j];
      double weight = grid.quarterWeight[j];
      double with = law.currentInSeriesAmps(peak * sine, ohms);
      double against = law.currentInSeriesAmps(-peak * sine, ohms);
      mean += weight * (with + against);
      meanSquare += weight * (with * with + against * against);
      meanSine += weight * (with - against) * sine;
    }
    return new Solved(
        reduction,
        grid,
        () -> {
          Sweep sweep = Sweep.of(reduction, grid);
          sweep.run(new double[0]);
          return sweep;
        },
        new double[] {mean},
        meanSquare,
        meanSine);
  }
}
