package halfwave.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every notebook runs to its end through the real kernel and shows what is kept in it. With {@code
 * -Dhalfwave.notebooks=write} what it shows is kept instead.
 */
class NotebooksTest {
  private static final Path FOLDER = Path.of("").toAbsolutePath();
  private static final boolean WRITE = "write".equals(System.getProperty("halfwave.notebooks"));

  private static final Map<Path, Future<Path>> RUNS = new TreeMap<>();
  private static ExecutorService both;

  @BeforeAll
  static void start() throws IOException {
    boolean present = Jupyter.present();
    assertThat(present || !Boolean.getBoolean("halfwave.requireTools"))
        .as("jupyter nbconvert is required (halfwave.requireTools) and missing")
        .isTrue();
    Assumptions.assumeTrue(present, "jupyter nbconvert is not installed");
    Jupyter jupyter = new Jupyter(FOLDER.resolve("target").resolve("jupyter"));
    // a notebook waits for its kernel, and a kernel for its cells: two keep two cores busy
    both = Executors.newFixedThreadPool(2);
    for (Path notebook : notebooks().toList()) {
      Path executed = FOLDER.resolve("target").resolve("executed");
      RUNS.put(notebook, both.submit(() -> jupyter.run(notebook, executed)));
    }
  }

  @AfterAll
  static void end() {
    if (both != null) {
      both.shutdownNow();
    }
  }

  static Stream<Path> notebooks() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".ipynb")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void showsWhatIsKept(Path notebook) throws IOException, InterruptedException, ExecutionException {
    NotebookFile kept = NotebookFile.read(notebook);
    NotebookFile run = NotebookFile.read(RUNS.get(notebook).get());
    SoftAssertions soft = new SoftAssertions();
    soft.assertThat(errors(notebook, run)).as("cells that fail").isEmpty();
    if (WRITE && soft.wasSuccess()) {
      kept.writeWithOutputsOf(run, notebook);
    }
    for (int k = 0; k < kept.cells().size(); k++) {
      soft.assertThat(NotebookFile.shown(run.cells().get(k)))
          .as("%s, cell %d", notebook.getFileName(), k + 1)
          .isEqualTo(NotebookFile.shown(kept.cells().get(k)));
    }
    soft.assertAll();
  }

  private static List<String> errors(Path notebook, NotebookFile run) {
    List<String> errors = new ArrayList<>();
    for (int k = 0; k < run.cells().size(); k++) {
      for (String line : NotebookFile.shown(run.cells().get(k))) {
        if (line.startsWith("error: ")) {
          errors.add(notebook.getFileName() + ", cell " + (k + 1) + ": " + line);
        }
      }
    }
    return errors;
  }

  /** What is said to be so is checked by the cells themselves. */
  @ParameterizedTest
  @MethodSource("notebooks")
  void checksWhatItClaims(Path notebook) throws IOException {
    assertThat(NotebookFile.read(notebook).cells())
        .anyMatch(cell -> NotebookFile.text(cell.get("source")).contains("check("));
  }

  /** Numbers, pictures and words stay small enough to be read over a slow line. */
  @ParameterizedTest
  @MethodSource("notebooks")
  void staysSmall(Path notebook) throws IOException {
    assertThat(Files.size(notebook)).isLessThan(300_000);
    for (JsonNode cell : NotebookFile.read(notebook).cells()) {
      assertThat(cell.path("metadata").has("execution")).isFalse();
    }
  }
}
