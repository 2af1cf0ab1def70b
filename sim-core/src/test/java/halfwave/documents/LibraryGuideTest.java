package halfwave.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.JShell;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.execution.LocalExecutionControlProvider;
import org.junit.jupiter.api.Test;

/** Every block of the library guide compiles, runs, and prints what the guide says. */
class LibraryGuideTest {

  private static final Pattern BLOCK =
      Pattern.compile(
          "```java\\n(?<code>.*?)```\\n(\\n```text\\n(?<said>.*?)```)?", Pattern.DOTALL);

  @Test
  void everyBlockDoesWhatIsSaid() throws IOException {
    String guide = Files.readString(Path.of("../docs/library-guide.md"));
    List<String> expected = new ArrayList<>();
    List<String> printed = new ArrayList<>();
    PrintStream before = System.out;
    try (JShell shell =
        JShell.builder().executionEngine(new LocalExecutionControlProvider(), null).build()) {
      Matcher block = BLOCK.matcher(guide);
      while (block.find()) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        run(shell, block.group("code"));
        expected.add(block.group("said") == null ? "" : block.group("said").strip());
        printed.add(out.toString(StandardCharsets.UTF_8).strip());
      }
    } finally {
      System.setOut(before);
    }
    assertThat(expected).hasSizeGreaterThan(8);
    assertThat(printed).isEqualTo(expected);
  }

  /** As at a prompt: one statement after the other. */
  private static void run(JShell shell, String code) {
    String left = code;
    while (!left.isBlank()) {
      var next = shell.sourceCodeAnalysis().analyzeCompletion(left);
      for (SnippetEvent event : shell.eval(next.source())) {
        assertThat(event.status())
            .as(
                "%s%n%s",
                next.source(),
                shell.diagnostics(event.snippet()).map(d -> d.getMessage(null)).toList())
            .isNotEqualTo(Status.REJECTED);
        assertThat(event.exception()).as(next.source()).isNull();
      }
      left = next.remaining();
    }
  }
}
