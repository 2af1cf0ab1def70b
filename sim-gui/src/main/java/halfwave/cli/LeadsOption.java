package halfwave.cli;

import halfwave.bench.ProbeWire;
import halfwave.circuit.Point;
import halfwave.instrument.HookUp;
import halfwave.io.BadInputException;
import halfwave.io.Typed;
import halfwave.io.sequence.LeadWords;
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
  private final ProbeWire wire;

  /** Where the wire stands counts only for a wire. */
  LeadsOption(String command, Moment moment, ProbeWire wire) {
    where = new Typed(command, OPTION);
    this.moment = moment;
    this.wire = wire;
  }

  /** Whether a wire is held in the flame. */
  static boolean wired(String typed) {
    return typed.startsWith(WIRE + ":");
  }

  HookUp hookUp(String typed) {
    String[] ends = typed.split(":", -1);
    if (ends.length == 2 && ends[0].equals(WIRE)) {
      Optional<Point> other = LeadWords.point(ends[1]).filter(this::there);
      return Subjects.wire(moment, wire, other.orElseThrow(() -> refused(typed)));
    }
    return LeadWords.hookUp(typed).filter(this::there).orElseThrow(() -> refused(typed));
  }

  /** A probe is there only where a spark electrode stands in the flame. */
  private boolean there(Point point) {
    return point != Point.PROBE || moment.bench().design().spark() != null;
  }

  private boolean there(HookUp hookUp) {
    return there(Point.PROBE) || !hookUp.touches(Point.PROBE);
  }

  private BadInputException refused(String typed) {
    return where.refused(typed, LeadWords.allowed(this::there));
  }
}
