package halfwave.evidence;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * The table of symptoms: each kind of fault, at its usual severity, through one heating call on a
 * damp day: power at once, the call after ten seconds, its end after ten minutes.
 *
 * @param healthy the bench as it came
 * @param faulty the bench with one more fault of each kind
 */
public record SymptomTable(Symptoms healthy, Map<FaultKind, Symptoms> faulty) {

  /** Sees how far the table is, and may end it. */
  public interface Watch {
    /**
     * One more row, or cause, is done.
     *
     * @return whether to go on
     */
    boolean goOn(int done, int all);
  }

  private static final long SEED = 1;

  /** Keeps the order of the kinds. */
  public SymptomTable {
    faulty = Collections.unmodifiableMap(new EnumMap<>(faulty));
  }

  /**
   * All kinds of faults on a bench.
   *
   * @param bench the bench they are put on
   * @param settings its board
   * @param watch asked after each row
   * @return the table, or nothing where the watch ended it
   */
  public static Optional<SymptomTable> of(Bench bench, BoardSettings settings, Watch watch) {
    Symptoms healthy = Symptoms.of(bench, settings, SEED);
    Map<FaultKind, Symptoms> faulty = new EnumMap<>(FaultKind.class);
    for (FaultKind kind : FaultKind.values()) {
      faulty.put(kind, Symptoms.of(Fault.typical(kind).on(bench), settings, SEED));
      if (!watch.goOn(faulty.size(), FaultKind.values().length)) {
        return Optional.empty();
      }
    }
    return Optional.of(new SymptomTable(healthy, faulty));
  }
}
