package halfwave.io.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.diagnosis.Case;
import halfwave.diagnosis.CaseTable;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Outcome;
import halfwave.fault.FaultKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables come from the program, from the folder, or are made; they are the same each time. */
class CaseCacheContractTest {

  private static final List<Cause> TWO = List.of(Cause.HEALTHY, Cause.of(FaultKind.GAS_SHUT));

  @TempDir Path folder;

  private static BoardSettings board(Bench bench) {
    return ShippedBoards.standard(bench.design().ignition());
  }

  private static CaseTable shipped(Bench bench) {
    return new CaseCache(null)
        .get(
            bench,
            board(bench),
            PriorsFile.shipped().causes(),
            (done, all) -> {
              throw new AssertionError(bench.name() + " has no table: run ShippedCases");
            })
        .orElseThrow();
  }

  static Stream<Bench> benches() {
    return ShippedBenches.all().stream();
  }

  @ParameterizedTest
  @MethodSource("benches")
  void everyShippedBenchHasItsTable(Bench bench) {
    CaseTable table = shipped(bench);
    assertThat(table.causes()).startsWith(Cause.HEALTHY).hasSizeGreaterThan(45);
  }

  /** What the model says of one cause today is what the shipped table says, figure for figure. */
  @Test
  void shippedTablesAreNotStale() {
    Bench bench = ShippedBenches.standard();
    CaseTable made = CaseTable.of(bench, board(bench), TWO, (done, all) -> true).orElseThrow();
    CaseTable kept = shipped(bench);
    for (Case one : made.cases()) {
      int place = kept.causes().indexOf(one.cause()) * CaseTable.DRAWS + one.draw();
      List<Outcome> outcomes = kept.cases().get(place).outcomes();
      assertThat(outcomes).as("stale: run ShippedCases").isEqualTo(one.outcomes());
    }
  }

  @Test
  void aTableIsMadeOnceAndComesBackEqual() throws IOException {
    Bench other = ShippedBenches.standard();
    other = other.with(other.condition().withAir(0.9));
    CaseCache cache = new CaseCache(folder.resolve("new"));
    CaseTable made = cache.get(other, board(other), TWO, (done, all) -> true).orElseThrow();
    CaseTable kept =
        cache
            .get(
                other,
                board(other),
                TWO,
                (done, all) -> {
                  throw new AssertionError("made twice");
                })
            .orElseThrow();

    assertThat(kept).isEqualTo(made);
    try (Stream<Path> files = Files.list(folder.resolve("new"))) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void aSpoiltFileIsMadeAnew() throws IOException {
    Bench other = ShippedBenches.standard();
    other = other.with(other.condition().withAir(0.9));
    Path file = folder.resolve(CaseCache.name(other, board(other), TWO));
    Files.writeString(file, "spoilt");

    CaseTable made =
        new CaseCache(folder).get(other, board(other), TWO, (done, all) -> true).orElseThrow();

    assertThat(made.causes()).isEqualTo(TWO);
    assertThat(Files.size(file)).isGreaterThan(100);
  }

  @Test
  void theWatchEndsItAndNothingIsKept() {
    Bench other = ShippedBenches.standard();
    other = other.with(other.condition().withAir(0.9));
    assertThat(new CaseCache(folder).get(other, board(other), TWO, (done, all) -> false)).isEmpty();
    assertThat(folder).isEmptyDirectory();
  }
}
