package halfwave.picture.scene;

import halfwave.bench.Bench;
import halfwave.bench.BenchFlame;
import halfwave.board.StatusCode;
import halfwave.sequence.Moment;
import org.jspecify.annotations.Nullable;

/**
 * What the drawing shows. All of it comes from the model.
 *
 * @param moment the moment: bench, board, furnace and meter
 * @param flame the flame of {@link Moment#benchNow()}
 * @param code what the status light says
 * @param arrows the flame current each way; null where none flows
 * @param reading what the meter shows; empty without a meter
 */
public record DrawnBench(
    Moment moment, BenchFlame flame, StatusCode code, @Nullable Arrows arrows, String reading) {

  /** The bench as it is under the present triggers. */
  public Bench bench() {
    return moment.benchNow();
  }

  /** Whether the burner under the rod burns. */
  public boolean burns() {
    return flame.burning()
        && moment.furnace().litCount() >= moment.bench().design().burnerCount()
        && moment.furnace().growthRatio() > 0;
  }
}
