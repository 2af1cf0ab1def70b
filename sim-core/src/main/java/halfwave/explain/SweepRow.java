package halfwave.explain;

import halfwave.circuit.SteadyState;
import halfwave.quantity.RejectedValueException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One row of a sweep.
 *
 * @param values one value per axis, SI, in the order of the axes
 * @param outcome what was read there, or why nothing was
 */
public record SweepRow(List<Double> values, Outcome outcome) {

  /** Takes a copy. */
  public SweepRow {
    values = List.copyOf(values);
  }

  /**
   * What a bench of a sweep gives.
   *
   * <pre>
   * Outcome = Taken | Failed | Impossible
   * </pre>
   */
  public sealed interface Outcome {}

  /**
   * The readings, one hook-up at a time.
   *
   * @param seriesMeanAmps DC of a microammeter in the opened sense lead, signed (A)
   * @param seriesAlternatingRmsAmps AC of the same, the mean removed (A rms)
   * @param terminalAlternatingRmsVolts AC of a 10 MΩ voltmeter from sense terminal to common (V
   *     rms)
   */
  public record Taken(
      double seriesMeanAmps, double seriesAlternatingRmsAmps, double terminalAlternatingRmsVolts)
      implements Outcome {}

  /**
   * The circuit has no steady state.
   *
   * @param reason why
   */
  public record Failed(SteadyState.Failed reason) implements Outcome {}

  /**
   * There is no such bench, for instance because the rod would stand in metal.
   *
   * @param reason what the bench does not accept
   */
  public record Impossible(RejectedValueException reason) implements Outcome {

    /** Reasons are equal where they say the same. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Impossible i && text().equals(i.text());
    }

    @Override
    public int hashCode() {
      return text().hashCode();
    }

    private String text() {
      return String.valueOf(reason.getMessage());
    }
  }

  /** The readings, or nothing where there are none. */
  public Optional<Taken> taken() {
    return outcome instanceof Taken taken ? Optional.of(taken) : Optional.empty();
  }
}
