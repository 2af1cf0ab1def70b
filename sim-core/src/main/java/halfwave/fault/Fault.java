package halfwave.fault;

import halfwave.bench.ApplianceCondition;
import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Condition;
import halfwave.bench.Intermittent;
import halfwave.bench.Trigger;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A fault. A class and no record, because the unit of its severity follows from its kind.
 *
 * <pre>{@code
 * Bench faulty = Fault.typical(FaultKind.ROD_FOULED).on(ShippedBenches.standard());
 * }</pre>
 */
public final class Fault {

  private final FaultKind kind;
  private final double severity;
  private final @Nullable Trigger trigger;
  private final List<Change> changes;

  private Fault(FaultKind kind, double severity, @Nullable Trigger trigger) {
    this.kind = kind;
    this.severity = severity;
    this.trigger = trigger;
    this.changes = List.copyOf(kind.changes(severity));
  }

  /** Of usual severity, there all the time unless its kind says otherwise. */
  public static Fault typical(FaultKind kind) {
    return of(kind, kind.typical());
  }

  /**
   * Of some severity.
   *
   * @param severity in SI, inside the kind's range
   */
  public static Fault of(FaultKind kind, double severity) {
    return new Fault(kind, severity, kind.trigger().orElse(null));
  }

  /** The same, only while something brings it out. */
  public Fault during(Trigger other) {
    return new Fault(kind, severity, other);
  }

  /** What it is. */
  public FaultKind kind() {
    return kind;
  }

  /** How severe, in SI; zero where the kind has no severity. */
  public double severity() {
    return severity;
  }

  /** What brings it out, or null where it is always there. */
  public @Nullable Trigger trigger() {
    return trigger;
  }

  /** What it changes, while it is there. */
  public List<Change> changes() {
    return changes;
  }

  /** The bench with this fault. */
  public Bench on(Bench bench) {
    Bench changed = bench;
    for (Change change : changes) {
      changed = trigger == null ? change.on(changed) : lurking(changed, trigger, change);
    }
    return changed;
  }

  private static Bench lurking(Bench bench, Trigger trigger, Change change) {
    Condition c = bench.condition();
    ApplianceCondition appliance = c.appliance().with(new Intermittent(trigger, change));
    return bench.with(c.withAppliance(appliance));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Fault f
        && kind == f.kind
        && Double.compare(severity, f.severity) == 0
        && trigger == f.trigger;
  }

  @Override
  public int hashCode() {
    return 31 * kind.hashCode() + Double.hashCode(severity);
  }

  @Override
  public String toString() {
    return kind + " " + severity + (trigger == null ? "" : " while " + trigger);
  }
}
