package halfwave.work;

import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How a part is reached.
 *
 * @param covers panels in the way, outermost first
 * @param ownMinutes minutes to undo and do up what holds the part itself; zero or above
 * @param ownFasteners how many that are; zero or above
 * @param tool what undoes them
 * @param powerOff whether power has to be off
 * @param gasOff whether gas has to be off
 */
public record Access(
    List<Cover> covers,
    int ownMinutes,
    int ownFasteners,
    Tool tool,
    boolean powerOff,
    boolean gasOff) {

  /** Nothing in the way. */
  static final Access OPEN = new Access(List.of(), 0, 0, Tool.HANDS, false, false);

  /** Checks the domain and takes a copy. */
  public Access {
    notNegative("ownMinutes", ownMinutes);
    notNegative("ownFasteners", ownFasteners);
    covers = List.copyOf(covers);
  }

  private static void notNegative(String field, int value) {
    if (value < 0) {
      throw new RejectedValueException(
          field, Integer.toString(value), Allowed.NOT_NEGATIVE, Double.NaN, Double.NaN);
    }
  }

  /** Both power and gas have to be off. */
  static Access off(int ownMinutes, int ownFasteners, Tool tool, Cover... covers) {
    return new Access(List.of(covers), ownMinutes, ownFasteners, tool, true, true);
  }

  /** What is on that has to be off on the way, with power and gas as they are; or nothing. */
  public Optional<StillOn> stillOn(boolean power, boolean gas) {
    return StillOn.of(power && powerOff, gas && gasOff);
  }

  /** Minutes to the part and back. */
  public int minutes() {
    return ownMinutes + covers.stream().mapToInt(Cover::minutes).sum();
  }

  /** All fasteners on the way. */
  public int fasteners() {
    return ownFasteners + covers.stream().mapToInt(Cover::fasteners).sum();
  }

  /** What has to be at hand to get there. */
  public Set<Tool> tools() {
    Set<Tool> tools = EnumSet.of(tool);
    covers.forEach(cover -> tools.add(cover.tool()));
    return Collections.unmodifiableSet(tools);
  }
}
