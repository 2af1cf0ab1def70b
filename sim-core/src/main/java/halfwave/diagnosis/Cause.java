package halfwave.diagnosis;

import halfwave.fault.FaultKind;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What may be wrong: nothing, one kind of fault, or two.
 *
 * @param kinds of faults, in their order, each once; at most two
 */
public record Cause(List<FaultKind> kinds) {

  /** Nothing is wrong. */
  public static final Cause HEALTHY = new Cause(List.of());

  private static final Map<Repair, Set<FaultKind>> CURES = cures();

  /** Checks the domain and takes a copy in order. */
  public Cause {
    Set<FaultKind> set = EnumSet.noneOf(FaultKind.class);
    set.addAll(kinds);
    if (set.size() != kinds.size() || kinds.size() > 2) {
      throw new IllegalArgumentException("kinds = " + kinds + ": at most two, each once");
    }
    kinds = List.copyOf(set);
  }

  /** Those kinds together. */
  public static Cause of(FaultKind... kinds) {
    return new Cause(List.of(kinds));
  }

  private static Map<Repair, Set<FaultKind>> cures() {
    Map<Repair, Set<FaultKind>> cures = new EnumMap<>(Repair.class);
    for (Repair repair : Repair.values()) {
      cures.put(repair, EnumSet.noneOf(FaultKind.class));
    }
    for (FaultKind kind : FaultKind.values()) {
      Repair.curing(kind).forEach(r -> cures.computeIfPresent(r, (k, set) -> with(set, kind)));
    }
    return Collections.unmodifiableMap(cures);
  }

  private static Set<FaultKind> with(Set<FaultKind> set, FaultKind kind) {
    set.add(kind);
    return set;
  }

  /** What a repair puts right. */
  static Set<FaultKind> curedBy(Repair repair) {
    return Collections.unmodifiableSet(CURES.getOrDefault(repair, Set.of()));
  }

  /** What is left of it after a repair. */
  public Cause after(Repair repair) {
    Set<FaultKind> cured = curedBy(repair);
    if (Collections.disjoint(cured, kinds)) {
      return this;
    }
    List<FaultKind> left = new ArrayList<>(kinds);
    left.removeAll(cured);
    return new Cause(left);
  }

  /** Whether nothing is wrong. */
  public boolean healthy() {
    return kinds.isEmpty();
  }

  /** Name in commands and files. */
  public String id() {
    return healthy()
        ? "healthy"
        : kinds.stream().map(FaultKind::id).collect(Collectors.joining("+"));
  }
}
