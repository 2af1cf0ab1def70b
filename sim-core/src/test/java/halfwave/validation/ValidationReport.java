package halfwave.validation;

import static org.junit.platform.engine.discovery.ClassNameFilter.includeClassNamePatterns;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectPackage;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;

/**
 * Runs every reference test and writes {@code docs/validation.md} with its data and plots. Not a
 * test: it is run by name. Nothing is written unless every check passes.
 */
class ValidationReport {

  private final List<Row> rows = new ArrayList<>();
  private final List<Checked> checks = new ArrayList<>();

  @Test
  void report() throws IOException {
    SummaryGeneratingListener result = new SummaryGeneratingListener();
    LauncherDiscoveryRequest request =
        LauncherDiscoveryRequestBuilder.request()
            .selectors(selectPackage("halfwave"))
            .filters(includeClassNamePatterns(".*ReferenceTest"))
            .build();
    Recorded.into(
        (found, points) -> {
          rows.addAll(found);
          checks.addAll(points);
        });
    try {
      LauncherFactory.create().execute(request, result);
    } finally {
      Recorded.into(null);
    }
    demandAllPassed(result);
    rows.sort(Comparator.comparing(Row::area).thenComparing(Row::test).thenComparing(Row::subject));
    // classes are found in the order of the file system
    checks.sort(
        Comparator.comparing(Checked::subject)
            .thenComparing(Checked::at)
            .thenComparingDouble(Checked::computed));
    RowFile.write(rows);
    for (Plot plot : Plot.values()) {
      Files.write(RowFile.FOLDER.resolve(plot.file()), plot.bytes(rows, checks));
    }
    Files.writeString(RowFile.DOCUMENTS.resolve("validation.md"), new Page(rows).text());
  }

  private static void demandAllPassed(SummaryGeneratingListener result) {
    StringWriter failures = new StringWriter();
    var summary = result.getSummary();
    summary.printFailuresTo(new PrintWriter(failures), 5);
    // a missing program would leave its checks out without a word
    long left = summary.getTestsAbortedCount() + summary.getContainersAbortedCount();
    if (summary.getTotalFailureCount() > 0 || left > 0) {
      throw new AssertionError(left + " left out; failed:" + failures);
    }
  }
}
