package halfwave.bench;

import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The condition of everything around the sense circuit, and of what comes and goes.
 *
 * @param carryOverSeconds time a flame takes from one burner to the next (s), 0.3 on a clean row
 *     [common practice, no source]; infinity: it never gets there
 * @param senseSupplyRatio voltage of the sense source over that as built (1), 0 to 2; zero is dead
 * @param inputOffsetAmps DC that the board's amplifier adds to what it gets (A), −10 to 10 µA:
 *     above zero it sees flame where none is, below it is deaf
 * @param disorders what is not as it should be
 * @param intermittents what comes and goes, in the order in which it is applied
 */
public record ApplianceCondition(
    double carryOverSeconds,
    double senseSupplyRatio,
    double inputOffsetAmps,
    Set<Disorder> disorders,
    List<Intermittent> intermittents) {

  /** Everything as it should be. */
  public static final ApplianceCondition HEALTHY =
      new ApplianceCondition(0.3, 1, 0, Set.of(), List.of());

  /** Checks the domain and takes copies. */
  public ApplianceCondition {
    if (!(carryOverSeconds >= 0.02)) {
      throw new RejectedValueException(
          "carryOverSeconds",
          Double.toString(carryOverSeconds),
          Allowed.RANGE,
          0.02,
          Double.POSITIVE_INFINITY);
    }
    Guard.inRange("senseSupplyRatio", senseSupplyRatio, 0, 2);
    Guard.inRange("inputOffsetAmps", inputOffsetAmps, -1e-5, 1e-5);
    disorders =
        disorders.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(disorders));
    intermittents = List.copyOf(intermittents);
  }

  /** Whether something is so. */
  public boolean has(Disorder disorder) {
    return disorders.contains(disorder);
  }

  /** With one disorder, or without it. */
  public ApplianceCondition with(Disorder disorder, boolean present) {
    Set<Disorder> changed = EnumSet.noneOf(Disorder.class);
    changed.addAll(disorders);
    if (present) {
      changed.add(disorder);
    } else {
      changed.remove(disorder);
    }
    return new ApplianceCondition(
        carryOverSeconds, senseSupplyRatio, inputOffsetAmps, changed, intermittents);
  }

  /** With another time from burner to burner (s). */
  public ApplianceCondition withCarryOver(double seconds) {
    return new ApplianceCondition(
        seconds, senseSupplyRatio, inputOffsetAmps, disorders, intermittents);
  }

  /** With another voltage of the sense source, over that as built (1). */
  public ApplianceCondition withSenseSupply(double ratio) {
    return new ApplianceCondition(
        carryOverSeconds, ratio, inputOffsetAmps, disorders, intermittents);
  }

  /** With another offset of the board's amplifier (A). */
  public ApplianceCondition withInputOffset(double amps) {
    return new ApplianceCondition(
        carryOverSeconds, senseSupplyRatio, amps, disorders, intermittents);
  }

  /** With one more fault that comes and goes. */
  public ApplianceCondition with(Intermittent intermittent) {
    List<Intermittent> more = new ArrayList<>(intermittents);
    more.add(intermittent);
    return new ApplianceCondition(
        carryOverSeconds, senseSupplyRatio, inputOffsetAmps, disorders, more);
  }

  /** Only with what is always there. */
  ApplianceCondition steady() {
    return intermittents.isEmpty()
        ? this
        : new ApplianceCondition(
            carryOverSeconds, senseSupplyRatio, inputOffsetAmps, disorders, List.of());
  }
}
