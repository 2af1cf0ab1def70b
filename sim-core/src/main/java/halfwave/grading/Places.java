package halfwave.grading;

import halfwave.board.Ignition;
import halfwave.diagnosis.Cause;
import halfwave.fault.FaultKind;
import halfwave.work.FurnacePart;
import halfwave.work.Repair;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Where a cause sits: where it is repaired. */
public final class Places {

  private Places() {}

  /** The parts at which any fault can sit on an appliance that lights its gas so. */
  public static Set<FurnacePart> all(Ignition ignition) {
    Set<FurnacePart> places = EnumSet.noneOf(FurnacePart.class);
    for (FaultKind kind : FaultKind.values()) {
      Repair.curing(kind).stream()
          .filter(r -> r.possibleAt(ignition))
          .forEach(r -> places.add(r.part()));
    }
    return places;
  }

  /** The parts at which a cause is put right; none for nothing wrong. */
  public static Set<FurnacePart> of(Cause cause) {
    Set<FurnacePart> places = EnumSet.noneOf(FurnacePart.class);
    for (FaultKind kind : cause.kinds()) {
      Repair.curing(kind).forEach(r -> places.add(r.part()));
    }
    return places;
  }

  /** The least repair of each fault, by cost, by what it leaves, then by minutes. */
  public static List<Repair> repairs(Cause cause) {
    return cause.kinds().stream()
        .map(
            kind ->
                Repair.curing(kind).stream()
                    .min(
                        Comparator.comparingInt(Repair::costUnits)
                            .thenComparingDouble(Repair::residueMeters)
                            .thenComparingInt(Repair::minutes))
                    .orElseThrow())
        .distinct()
        .toList();
  }
}
