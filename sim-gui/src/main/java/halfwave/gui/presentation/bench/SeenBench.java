package halfwave.gui.presentation.bench;

import halfwave.bench.RodPosition;
import halfwave.gui.presentation.Wording;
import halfwave.picture.scene.Arrows;
import halfwave.picture.scene.DrawnBench;
import org.jspecify.annotations.Nullable;

/**
 * What a drawing shows of a state. While its condition is hidden that is what anyone can see who
 * stands before the furnace: the bench as it should be, and through the sight glass which burners
 * burn. How the flame looks is for {@link halfwave.work.Look}, and no current is seen without a
 * meter.
 */
public final class SeenBench {

  private SeenBench() {}

  /**
   * The drawn bench.
   *
   * @param held where a hand holds the rod, or null
   */
  public static DrawnBench of(State state, @Nullable RodPosition held, Wording words) {
    MeterView meter = MeterView.of(state, words);
    String reading = meter.on() ? (meter.number() + '\u2009' + meter.unit()).strip() : "";
    Readout readout = state.readout();
    Seal seal = state.seal();
    if (seal != null && seal.closed()) {
      return new DrawnBench(
          state.moment().seenWith(seal.known().condition()),
          seal.flame(),
          readout.code(),
          null,
          reading);
    }
    return new DrawnBench(
        held == null
            ? state.moment()
            : state.moment().seenWith(state.moment().bench().condition().withRodPosition(held)),
        readout.flame(),
        readout.code(),
        arrows(readout),
        reading);
  }

  /** The flame current each way; null where none flows. */
  public static @Nullable Arrows arrows(Readout readout) {
    double positive = readout.rodPositivePeakAmps();
    double negative = readout.rodNegativePeakAmps();
    return positive + negative > 0 ? new Arrows(positive, negative) : null;
  }
}
