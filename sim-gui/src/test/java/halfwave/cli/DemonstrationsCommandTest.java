package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.io.lesson.DemonstrationFile;
import halfwave.io.lesson.ShippedDemonstrations;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code demonstrations}. */
class DemonstrationsCommandTest {

  private static final String NAME = "a-dirty-rod";

  @TempDir Path folder;

  @Test
  void shippedOnesAreListed() throws IOException {
    JsonNode all = new ObjectMapper().readTree(CommandRun.of("demonstrations", "--json").out());

    assertThat(CommandRun.of("demonstrations").out()).contains(NAME, "A dirty rod");
    assertThat(CommandRun.of("demonstrations", "--language=es").out())
        .contains("Una varilla sucia");
    assertThat(all.get("demonstrations")).hasSize(ShippedDemonstrations.all().size());
  }

  @Test
  void oneIsPrintedAndChecked() {
    CommandRun run = CommandRun.of("demonstrations", NAME);

    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("4. Why AC misleads", "   ? What will", "   * c) About the same")
        .contains("The model does all that is claimed.");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 96);
  }

  /** A file whose bench was changed no longer tells the truth. */
  @Test
  void whatTheModelDoesOtherwiseIsSaid() throws IOException {
    Path file = folder.resolve("mine.json");
    assertThat(CommandRun.of("demonstrations", NAME, "--write", file.toString()).status()).isZero();
    assertThat(ShippedDemonstrations.named(NAME)).contains(DemonstrationFile.read(file));
    String text = Files.readString(file);
    Files.writeString(
        file, text.replace("\"least\": \"2.6µA\", \"most\": \"3.3µA\"", "\"least\": \"5µA\""));

    CommandRun run = CommandRun.of("demonstrations", file.toString());

    assertThat(run.out())
        .contains("Step 1: not so: {\"reading\":\"display-amps\",\"least\":")
        .contains("Step 9: the right answer is not so: ")
        .doesNotContain("The model does all");
    JsonNode json =
        new ObjectMapper()
            .readTree(CommandRun.of("demonstrations", file.toString(), "--json").out());
    assertThat(json.get("doubts")).hasSize(2);
  }

  @Test
  void badInputIsRefusedInOneLine() throws IOException {
    Path file = folder.resolve("bad.json");
    Files.writeString(file, "{\"format\":\"halfwave-demonstration\",\"version\":2}");

    CommandRun bad = CommandRun.of("demonstrations", file.toString());
    CommandRun none = CommandRun.of("demonstrations", "a-clean-rod");

    assertThat(bad.status()).isEqualTo(2);
    assertThat(bad.err().lines()).hasSize(1);
    assertThat(bad.err()).contains("version = 2: allowed is one of 1");
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).contains("a-clean-rod", NAME);
    assertThat(CommandRun.of("demonstrations", "--write", "x.json").status()).isEqualTo(2);
  }
}
