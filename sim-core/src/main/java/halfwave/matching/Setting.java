package halfwave.matching;

import halfwave.bench.Bench;
import halfwave.bench.RodPosition;

/**
 * What a reading was taken under; everything else is shared by all readings.
 *
 * @param cleaned whether the rod had been cleaned
 * @param acrossMeters how far the rod had been moved sideways from where it stands on the bench (m)
 * @param upMeters the same upwards (m)
 * @param alongMeters the same along the burner's axis, away from the face (m)
 */
public record Setting(boolean cleaned, double acrossMeters, double upMeters, double alongMeters) {

  /** As found. */
  public static final Setting AS_FOUND = new Setting(false, 0, 0, 0);

  /** Only cleaned. */
  public static final Setting CLEANED = new Setting(true, 0, 0, 0);

  /**
   * The rod where it stood.
   *
   * @throws halfwave.quantity.RejectedValueException where there is metal already
   */
  Bench placed(Bench bench) {
    RodPosition p = bench.condition().rodPosition();
    return bench.with(
        bench
            .condition()
            .withRodPosition(
                p.withAcross(p.acrossMeters() + acrossMeters)
                    .withUp(p.upMeters() + upMeters)
                    .withAlong(p.alongMeters() + alongMeters)));
  }
}
