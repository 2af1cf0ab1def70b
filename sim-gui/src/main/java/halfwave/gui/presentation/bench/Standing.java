package halfwave.gui.presentation.bench;

import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.sequence.Moment;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What undo returns to.
 *
 * @param moment the present of the bench
 * @param meter the meter in hand, also while it is not on
 * @param dial what its dial was last set to, or null: nobody has turned it yet
 * @param recording what has happened
 * @param work what was looked at, repaired and mishandled
 */
public record Standing(
    Moment moment,
    Meter meter,
    @Nullable MeterFunction dial,
    Recording recording,
    List<WorkDone> work) {
  /** Takes a copy. */
  public Standing {
    work = List.copyOf(work);
  }

  Standing at(Moment other) {
    return new Standing(other, inHand(other), set(other), recording, work);
  }

  /** The dial is turned while the meter lies beside the bench. */
  Standing with(MeterFunction other) {
    return new Standing(moment, meter, other, recording, work);
  }

  Standing with(Recording other) {
    return new Standing(moment, meter, dial, other, work);
  }

  Standing with(Meter other) {
    return new Standing(moment, other, dial, recording, work);
  }

  Standing with(List<WorkDone> other) {
    return new Standing(moment, meter, dial, recording, other);
  }

  private @Nullable MeterFunction set(Moment other) {
    return other.hooked() == null ? dial : other.hooked().function();
  }

  private Meter inHand(Moment other) {
    return other.hooked() == null ? meter : other.hooked().meter();
  }
}
