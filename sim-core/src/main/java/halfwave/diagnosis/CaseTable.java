package halfwave.diagnosis;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.evidence.SymptomTable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What every cause looks like on many benches of a kind. It knows nothing of how likely they are.
 *
 * @param checks what can be found out
 * @param causes what may be wrong, nothing first
 * @param cases of each cause in turn, {@link #DRAWS} of them in the order of their draws
 */
public record CaseTable(List<Check> checks, List<Cause> causes, List<Case> cases) {

  /** Cases of each cause. */
  public static final int DRAWS = Draws.COUNT;

  /** Checks the shape and takes copies. */
  public CaseTable {
    checks = List.copyOf(checks);
    causes = List.copyOf(causes);
    cases = List.copyOf(cases);
    if (cases.size() != causes.size() * DRAWS) {
      throw new IllegalArgumentException(
          "cases = " + cases.size() + ": " + DRAWS + " of each cause");
    }
  }

  /**
   * Computes a table.
   *
   * @param bench the healthy bench
   * @param settings its board
   * @param causes what may be wrong, nothing first; what cannot happen to the bench is left out
   * @param watch asked after each cause, by one thread at a time
   * @return the table, or nothing where the watch ended it
   */
  public static Optional<CaseTable> of(
      Bench bench, BoardSettings settings, List<Cause> causes, SymptomTable.Watch watch) {
    return new CaseMaker(bench, settings).table(causes, watch);
  }

  /** Where each cause stands among the causes. */
  Map<Cause, Integer> places() {
    Map<Cause, Integer> places = new HashMap<>();
    for (int k = 0; k < causes.size(); k++) {
      places.put(causes.get(k), k);
    }
    return places;
  }
}
