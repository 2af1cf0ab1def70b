package halfwave.picture.scene;

import halfwave.explain.VoltageLadder;

/**
 * The flame current at its crest, each way.
 *
 * @param rodPositiveAmps from the rod to the burner, while the rod is positive (A); zero or above
 * @param rodNegativeAmps from the burner to the rod, while the rod is negative (A); zero or above
 */
public record Arrows(double rodPositiveAmps, double rodNegativeAmps) {

  /** As the voltage ladders of both half-cycles have it. */
  public static Arrows of(VoltageLadder rodPositive, VoltageLadder rodNegative) {
    return new Arrows(Math.max(0, rodPositive.flameAmps()), Math.max(0, -rodNegative.flameAmps()));
  }
}
