package halfwave.work;

import halfwave.board.Ignition;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Something a person can do at a furnace. Minutes, tools, hazards and cautions follow from what the
 * work itself takes and from how its part is reached.
 */
public sealed interface Work permits Look, MeterTest, Repair, Handling {

  /** Everything there is to do. */
  static List<Work> all() {
    return Stream.<Work[]>of(Look.values(), MeterTest.values(), Repair.values(), Handling.values())
        .flatMap(Stream::of)
        .toList();
  }

  /** The work of that name. */
  static Optional<Work> named(String id) {
    return all().stream().filter(work -> work.id().equals(id)).findFirst();
  }

  /** Name of the constant. */
  String name();

  /** Whether an appliance that lights its gas so has what the work is done to. */
  default boolean possibleAt(Ignition ignition) {
    return true;
  }

  /** Where. */
  FurnacePart part();

  /** Minutes at the part, without getting there; zero or above. */
  int ownMinutes();

  /** What it needs at the part. */
  Tool tool();

  /** What has to be said beside the hazards. */
  List<Caution> ownCautions();

  /** Whether power is off meanwhile. */
  default boolean powerOff() {
    return part().access().powerOff();
  }

  /** Whether gas is off meanwhile. */
  default boolean gasOff() {
    return part().access().gasOff();
  }

  /** What is on that has to be off meanwhile, with power and gas as they are; or nothing. */
  default Optional<StillOn> stillOn(boolean power, boolean gas) {
    return StillOn.of(power && powerOff(), gas && gasOff());
  }

  /** Whether the burners have to burn meanwhile. */
  default boolean needsFlame() {
    return false;
  }

  /** Whether power has to be on meanwhile. */
  default boolean needsPower() {
    return false;
  }

  /** Whether the thermostat has to call meanwhile. */
  default boolean needsCall() {
    return false;
  }

  /** The state it needs the furnace in, and how one gets there. */
  default Preparation preparation() {
    return Preparation.of(this);
  }

  /** When it shows that this is wrong, if not at any time. */
  default Optional<Proviso> proviso(Aspect aspect) {
    return needsFlame() ? Optional.of(Proviso.WHILE_IT_BURNS) : Optional.empty();
  }

  /** Name in commands and files. */
  default String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Minutes, getting there included. */
  default int minutes() {
    return ownMinutes() + part().access().minutes();
  }

  /** The same as a time (ms). */
  default long millis() {
    return 60_000L * minutes();
  }

  /** Everything that has to be at hand. */
  default Set<Tool> tools() {
    Set<Tool> tools = EnumSet.copyOf(part().access().tools());
    tools.add(tool());
    if (tools.size() > 1) {
      tools.remove(Tool.HANDS);
    }
    return Collections.unmodifiableSet(tools);
  }

  /** What can hurt meanwhile, at an appliance that lights its gas so. */
  default Set<Hazard> hazards(Ignition ignition) {
    Set<Hazard> hazards = EnumSet.noneOf(Hazard.class);
    part().hazards(ignition).stream()
        .filter(hazard -> hazard.remains(powerOff(), gasOff()))
        .forEach(hazards::add);
    return Collections.unmodifiableSet(hazards);
  }

  /** What has to be said before it. */
  default Set<Caution> cautions(Ignition ignition) {
    Set<Caution> cautions = EnumSet.noneOf(Caution.class);
    Access access = part().access();
    if (powerOff() || gasOff() || access.powerOff() || access.gasOff()) {
      cautions.add(Caution.OFF_BEFORE_OPENING);
    }
    if (needsPower() && access.covers().contains(Cover.BLOWER_DOOR)) {
      cautions.add(Caution.DOOR_SWITCH);
    }
    // what has to glow or burn meanwhile cannot cool first
    boolean hot = needsCall();
    hazards(ignition).forEach(hazard -> cautions.add(hazard.caution(hot)));
    ownCautions().forEach(caution -> cautions.add(caution.at(ignition)));
    return Collections.unmodifiableSet(cautions);
  }
}
