package halfwave.cli;

import halfwave.circuit.Point;
import halfwave.instrument.HookUp;
import halfwave.io.LeadWords;
import halfwave.io.Typed;
import halfwave.sequence.Moment;
import halfwave.sequence.Subjects;
import java.util.Optional;

/**
 * Reads where the leads are: {@code series-board}, {@code series-rod}, {@code RED:BLACK} with two
 * points of the sense circuit or two of the supply, or {@code wire:POINT}.
 */
final class LeadsOption {

  static final String OPTION = "--leads";

  private static final String WIRE = "wire";

  private final Typed where;
  private final Moment moment;

  LeadsOption(String command, Moment moment) {
    where = new Typed(command, OPTION);
    this.moment = moment;
  }

  HookUp hookUp(String typed) {
    String[] ends = typed.split(":", -1);
    if (ends.length == 2 && ends[0].equals(WIRE)) {
      Optional<Point> black = LeadWords.point(ends[1]);
      if (black.isPresent()) {
        return Subjects.wire(moment, black.get());
      }
    }
    return LeadWords.hookUp(typed).orElseThrow(() -> where.refused(typed, LeadWords.allowed()));
  }
}
