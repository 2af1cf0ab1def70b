package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code report}. What is on its pages is tested where they are made. */
class ReportCommandTest {

  private static final String BENCH = "hot-surface-natural-gas";

  @TempDir Path folder;

  @Test
  void aReportIsWrittenAndNothingElseSaid() throws IOException {
    Path pdf = folder.resolve("a.pdf");

    CommandRun run =
        CommandRun.of("report", BENCH, "--pdf=" + pdf, "--date=2026-03-09", "--paper=letter");

    assertThat(run).isEqualTo(new CommandRun(0, "", ""));
    byte[] first = Files.readAllBytes(pdf);
    assertThat(new String(first, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    CommandRun.of("report", BENCH, "--pdf=" + pdf, "--date=2026-03-09", "--paper=letter");
    assertThat(Files.readAllBytes(pdf)).isEqualTo(first);
  }

  @Test
  void jsonNamesTheFile() {
    Path pdf = folder.resolve("a.pdf");

    CommandRun run =
        CommandRun.in(
            Locale.forLanguageTag("es"), "report", BENCH, "--pdf=" + pdf, "--json", "--for=60s");

    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("\"file\"", "a.pdf");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a.png | a4 | 2026-03-09 | --pdf",
        "a | a4 | 2026-03-09 | --pdf",
        "none/a.pdf | a4 | 2026-03-09 | a.pdf",
        "a.pdf | a5 | 2026-03-09 | --paper = a5: allowed is one of a4, letter",
        "a.pdf | a4 | 9.3.2026 | --date = 9.3.2026: allowed is a date such as 2026-03-09"
      })
  void whatCannotBeIsRefusedInOneLine(String file, String paper, String date, String said) {
    CommandRun run =
        CommandRun.of(
            "report", BENCH, "--pdf=" + folder.resolve(file), "--paper=" + paper, "--date=" + date);

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints()).singleElement().asString().contains(said);
    assertThat(folder).isEmptyDirectory();
  }
}
