package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Commands that draw write the kind of file that its ending says. */
class PictureTargetTest {

  private static final String BENCH = "hot-surface-natural-gas";

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"a.svg, <?xml", "a.pdf, %PDF-", "a.png, PNG"})
  void theEndingDecides(String name, String head) throws IOException {
    Path sweep = folder.resolve("s" + name);
    Path sequence = folder.resolve("q" + name);

    CommandRun swept =
        CommandRun.of("sweep", BENCH, "--vary=rod-up=-5mm:5mm:3", "--picture=" + sweep);
    CommandRun played = CommandRun.of("sequence", BENCH, "--for=60s", "--picture=" + sequence);

    assertThat(swept).isEqualTo(new CommandRun(0, "", ""));
    assertThat(played).isEqualTo(new CommandRun(0, "", ""));
    assertThat(head(sweep)).contains(head);
    assertThat(head(sequence)).contains(head);
  }

  private static String head(Path file) throws IOException {
    return new String(Files.readAllBytes(file), 0, 6, StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "a.jpg", "a.svgz"})
  void otherEndingsAreRefusedInOneLine(String name) {
    for (String option : new String[] {"--picture=", "--png="}) {
      CommandRun run = CommandRun.of("sequence", BENCH, option + folder.resolve(name));

      assertThat(run.status()).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.complaints())
          .singleElement()
          .asString()
          .endsWith(": allowed is a name that ends in one of .png, .svg, .pdf");
    }
    assertThat(folder).isEmptyDirectory();
  }
}
