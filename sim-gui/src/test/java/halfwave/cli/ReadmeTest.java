package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What the readme promises is what the program does. */
class ReadmeTest {

  private static final String README = read("../README.md");

  private static String read(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static String page() {
    StringWriter out = new StringWriter();
    int status =
        HalfwaveCommand.run(
            new PrintWriter(out), new PrintWriter(new StringWriter()), Locale.ENGLISH);
    assertThat(status).isZero();
    return out.toString();
  }

  @Test
  void theFirstResultIsPrintedAsShown() {
    String page = page();
    String shown = page.substring(0, page.indexOf("\nCautions"));
    StringBuilder indented = new StringBuilder();
    for (String line : shown.stripTrailing().split("\n", -1)) {
      indented.append(line.isEmpty() ? "" : "    " + line).append('\n');
    }
    assertThat(README).contains(indented);
  }

  @Test
  void theDemonstrationsStandInTheirOrder() {
    List<String> rows =
        README
            .lines()
            .filter(l -> l.matches("\\| `[a-z-]+` \\|.*"))
            .map(l -> l.split("`")[1])
            .toList();
    assertThat(rows)
        .as("rows of the demonstrations in README.md")
        .isEqualTo(ShippedDemonstrations.all().stream().map(Demonstration::name).toList());
  }

  @Test
  void continuousIntegrationRunsTheCommandOfTheReadme() {
    String command = "mvn -B -ntp verify";
    assertThat(README).contains("    " + command + "\n");
    assertThat(read("../.ci/run")).contains(command);
  }

  @Test
  void everyCommandIsShownSomewhere() {
    String guides = read("../docs/user-guide.md") + read("../docs/quiz-guide.md");
    var commands =
        HalfwaveCommand.commandLine(Language.EN, new Failures(Language.EN.sentences()))
            .getSubcommands()
            .keySet();
    for (String name : commands) {
      assertThat(guides).containsPattern("halfwave\\.jar " + name + "\\b");
    }
  }
}
