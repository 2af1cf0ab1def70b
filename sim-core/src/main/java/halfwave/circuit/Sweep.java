package halfwave.circuit;

/**
 * One walk through the period from a given mode state. Holds, per sample, the port unknowns and the
 * modes, and the sensitivity of the end state to the start state.
 */
abstract class Sweep {

  final Reduction reduction;
  final Grid grid;

  /** Port unknowns [unknown][sample]. */
  final double[][] port;

  /** Mode states [mode][sample]; one entry more than samples, the last being the end state. */
  final double[][] mode;

  /** What the mean of the port current is above the mean of its samples (A). */
  double extraMeanAmps;

  /** Keep the choice of formula at every step as in the last walk: then the map has no jumps. */
  boolean frozen;

  /** Where in the period the last walk stopped, if it did (s). */
  double troubleSeconds;

  /** d(end state)/d(start state). */
  final double[][] monodromy;

  Sweep(Reduction reduction, Grid grid) {
    this.reduction = reduction;
    this.grid = grid;
    port = new double[reduction.ports + reduction.topology.free][grid.samples];
    mode = new double[reduction.modes][grid.samples + 1];
    monodromy = new double[reduction.modes][reduction.modes];
  }

  /**
   * Walks the period.
   *
   * @param start mode state at the first sample
   * @return null, or the part whose equation could not be solved
   */
  abstract @org.jspecify.annotations.Nullable Part run(double[] start);

  static Sweep of(Reduction reduction, Grid grid) {
    return reduction.ports == 1 && reduction.topology.free == 0
        ? new SinglePortSweep(reduction, grid)
        : new ManyPortSweep(reduction, grid);
  }
}
