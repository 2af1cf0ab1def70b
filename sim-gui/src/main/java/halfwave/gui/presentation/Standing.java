package halfwave.gui.presentation;

import halfwave.instrument.Meter;
import halfwave.sequence.Moment;
import java.util.List;

/**
 * What undo returns to.
 *
 * @param moment the present of the bench
 * @param meter the meter in hand, also while it is not on
 * @param recording what has happened
 * @param work what was looked at, repaired and mishandled
 */
public record Standing(Moment moment, Meter meter, Recording recording, List<WorkDone> work) {
  /** Takes a copy. */
  public Standing {
    work = List.copyOf(work);
  }

  Standing at(Moment other) {
    return new Standing(other, inHand(other), recording, work);
  }

  Standing with(Recording other) {
    return new Standing(moment, meter, other, work);
  }

  Standing with(Meter other) {
    return new Standing(moment, other, recording, work);
  }

  Standing with(List<WorkDone> other) {
    return new Standing(moment, meter, recording, other);
  }

  private Meter inHand(Moment other) {
    return other.hooked() == null ? meter : other.hooked().meter();
  }
}
