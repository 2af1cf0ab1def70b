package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A demonstration as files. What is on them is tested where they are made. */
class LessonExportsTest {

  private static final String SHOWN = "a-dirty-rod";

  @TempDir Path folder;

  @Test
  void handoutPicturesAndAnimationAreWritten() throws IOException {
    Path handout = folder.resolve("a.pdf");
    Path animation = folder.resolve("a.gif");
    Path pictures = folder.resolve("pictures");

    CommandRun run =
        CommandRun.of(
            "demonstrations",
            SHOWN,
            "--handout=" + handout,
            "--key",
            "--animation=" + animation,
            "--pictures=" + pictures);

    assertThat(run).isEqualTo(new CommandRun(0, "", ""));
    assertThat(head(handout)).isEqualTo("%PDF-");
    assertThat(head(animation)).isEqualTo("GIF89");
    try (Stream<Path> files = Files.list(pictures)) {
      assertThat(files).hasSizeGreaterThan(20).allMatch(f -> f.toString().endsWith(".png"));
    }
  }

  private static String head(Path file) throws IOException {
    return new String(Files.readAllBytes(file), 0, 5, StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--handout | a.txt | allowed is a name that ends in one of .pdf",
        "--animation | a.png | allowed is a name that ends in one of .gif",
        "--handout | none/a.pdf | a file in a folder that exists",
        "--pictures | none/deeper | a folder that can be written to"
      })
  void whatCannotBeWrittenIsRefusedInOneLine(String option, String file, String said) {
    CommandRun run = CommandRun.of("demonstrations", SHOWN, option + "=" + folder.resolve(file));

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints()).singleElement().asString().contains(said);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aFileNeedsADemonstration() {
    CommandRun run = CommandRun.of("demonstrations", "--handout=" + folder.resolve("a.pdf"));

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.complaints()).singleElement().asString().contains("DEMONSTRATION");
    assertThat(folder).isEmptyDirectory();
  }
}
