package halfwave.diagnosis;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.io.evidence.CaseCache;
import halfwave.io.evidence.PriorsFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * How good the advice is: service calls that the engine does not expect, drawn by seed, gone about
 * in several ways. Not a test: it is run by name, takes minutes, and writes its numbers into {@code
 * docs/diagnosis-study.md}.
 */
class DiagnosisStudy {

  private static final int SITUATIONS = Integer.getInteger("halfwave.situations", 2000);
  private static final Path REPORT = Path.of("..", "docs", "diagnosis-study.md");

  /** Benches in turn. */
  static final List<String> BENCHES = List.of("hot-surface-natural-gas", "hot-surface-propane");

  private final Priors priors = PriorsFile.shipped();

  @Test
  void study() throws IOException {
    List<StudyCall> calls = new ArrayList<>();
    for (int b = 0; b < BENCHES.size(); b++) {
      Bench bench = ShippedBenches.named(BENCHES.get(b)).orElseThrow();
      calls.addAll(calls(bench, b));
    }
    Files.writeString(REPORT, new StudyReport(calls, new StudyOptimum(priors)).text());
  }

  private List<StudyCall> calls(Bench bench, int first) {
    BoardSettings board = ShippedBoards.standard(bench.design().ignition());
    Outlook outlook = new Outlook(table(bench.name(), priors), priors);
    Adviser adviser = new Adviser(outlook, bench.design().ignition());
    return IntStream.range(0, SITUATIONS)
        .filter(k -> k % BENCHES.size() == first)
        .parallel()
        .mapToObj(k -> call(k, bench, board, outlook, adviser))
        .toList();
  }

  /** The engine's table of a shipped bench. */
  static CaseTable table(String name, Priors priors) {
    Bench bench = ShippedBenches.named(name).orElseThrow();
    BoardSettings board = ShippedBoards.standard(bench.design().ignition());
    return new CaseCache(Path.of("target", "cases"))
        .get(bench, board, priors.causes(), (done, all) -> true)
        .orElseThrow();
  }

  private StudyCall call(
      long seed, Bench bench, BoardSettings board, Outlook outlook, Adviser adviser) {
    Situation truth = Situation.draw(seed, bench, board, priors);
    Map<Policy, Visit> visits = new EnumMap<>(Policy.class);
    for (Policy policy : Policy.values()) {
      Visit visit = new Visit(truth.again(), outlook);
      policy.go(visit, adviser, seed);
      visits.put(policy, visit);
    }
    Map<Check, Outcome> all = new LinkedHashMap<>();
    for (Check check : outlook.table().checks()) {
      all.put(check, truth.find(check));
    }
    Belief knowing = outlook.start();
    for (Map.Entry<Check, Outcome> found : all.entrySet()) {
      knowing = knowing.after(new Entry.Observed(found.getKey(), found.getValue()));
    }
    return new StudyCall(bench.name(), truth.cause(), all, knowing.now(), visits);
  }
}
