package halfwave.cli;

import halfwave.bench.ProbeWire;
import halfwave.circuit.Point;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.SupplyPoint;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.sequence.Moment;
import halfwave.sequence.Subjects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
    if (typed.equals("series-board")) {
      return new InSenseLead(LeadEnd.BOARD, true);
    } else if (typed.equals("series-rod")) {
      return new InSenseLead(LeadEnd.ROD, true);
    }
    String[] ends = typed.split(":", -1);
    if (ends.length == 2) {
      Optional<Point> black = point(ends[1]);
      if (ends[0].equals(WIRE) && black.isPresent()) {
        return Subjects.wire(moment, wire, black.get());
      }
      Optional<Point> red = point(ends[0]);
      if (red.isPresent() && black.isPresent()) {
        return new Across(red.get(), black.get());
      }
      Optional<SupplyPoint> line = supply(ends[0]);
      Optional<SupplyPoint> other = supply(ends[1]);
      if (line.isPresent() && other.isPresent()) {
        return new AcrossSupply(line.get(), other.get());
      }
    }
    throw where.refused(
        typed,
        Message.of(
            MessageKey.ALLOWED_LEADS,
            Argument.text(words(points())),
            Argument.text(words(Stream.of(SupplyPoint.values())))));
  }

  /** Points that this bench has: a probe only where a spark electrode stands in the flame. */
  private Stream<Point> points() {
    boolean probe = moment.bench().design().spark() != null;
    return HookUp.REACHABLE.stream().filter(p -> probe || p != Point.PROBE).sorted();
  }

  private static String words(Stream<? extends Enum<?>> constants) {
    return constants.map(JsonValue::spelling).collect(Collectors.joining(", "));
  }

  private Optional<Point> point(String word) {
    return points().filter(p -> JsonValue.spelling(p).equals(word)).findFirst();
  }

  private static Optional<SupplyPoint> supply(String word) {
    return Stream.of(SupplyPoint.values())
        .filter(p -> JsonValue.spelling(p).equals(word))
        .findFirst();
  }
}
