package halfwave.io.evidence;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Makes the tables of cases that come with the program. Not a test: it is run by name, takes
 * minutes, and replaces the tables among the resources.
 */
class ShippedCases {

  private static final Path FOLDER = Path.of("src", "main", "resources", "halfwave", "diagnosis");

  @Test
  void makeAnew() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<Path> old = files.filter(f -> f.toString().endsWith(".cases")).toList();
      for (Path file : old) {
        Files.delete(file);
      }
    }
    CaseCache cache = new CaseCache(FOLDER.toAbsolutePath());
    for (Bench bench : ShippedBenches.all()) {
      cache.make(
          bench,
          ShippedBoards.standard(bench.design().ignition()),
          PriorsFile.shipped().causes(),
          (done, all) -> true);
    }
  }
}
