package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Links in the documents lead somewhere; every command in them runs, in their order. */
class DocumentsTest {

  private static final Path ROOT = Path.of("..");
  private static final Pattern LINK = Pattern.compile("\\]\\((?<to>[^)\\s]+)\\)");
  private static final String COMMAND = "    java -jar sim-gui/target/halfwave.jar ";

  /** What a document writes, and so has to lie in the test's folder. */
  private static final Pattern OWN_FILE =
      Pattern.compile(
          "(sheets|slides|records)(/.*)?|[a-z0-9-]+\\.(json|svg|png|pdf|csv|cir|md|zip|jsonl)");

  /** Slow, and tested elsewhere: in the deep run only. */
  private static final Set<String> SLOW =
      Set.of(
          "quiz check quiz.json",
          "symptoms my-bench.json --markdown symptoms.md",
          "demonstrations a-dirty-rod --handout handout.pdf --key --pictures slides");

  static List<Path> documents() throws IOException {
    List<Path> found = new ArrayList<>();
    for (String folder : new String[] {".", "docs", "docs/adr", "notebooks"}) {
      Path there = ROOT.resolve(folder);
      if (Files.isDirectory(there)) {
        try (Stream<Path> files = Files.list(there)) {
          files.filter(f -> f.toString().endsWith(".md")).sorted().forEach(found::add);
        }
      }
    }
    return found;
  }

  static List<Path> withCommands() throws IOException {
    List<Path> found = new ArrayList<>();
    for (Path document : documents()) {
      if (!commands(document).isEmpty()) {
        found.add(document);
      }
    }
    return found;
  }

  private static List<String> commands(Path document) throws IOException {
    return Files.readString(document)
        .lines()
        .filter(line -> line.startsWith(COMMAND))
        .map(line -> line.substring(COMMAND.length()))
        .filter(line -> Boolean.getBoolean("halfwave.deep") || !SLOW.contains(line))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("documents")
  void linksLeadSomewhere(Path document) throws IOException {
    Matcher link = LINK.matcher(Files.readString(document));
    while (link.find()) {
      String to = link.group("to");
      if (to.matches("[a-z]+:.*")) {
        continue;
      }
      String[] parts = to.split("#", 2);
      Path target = parts[0].isEmpty() ? document : document.resolveSibling(parts[0]);
      assertThat(target).as("%s: %s", document, to).exists();
      if (parts.length > 1) {
        assertThat(anchors(target)).as("%s: %s", document, to).contains(parts[1]);
      }
    }
  }

  private static Set<String> anchors(Path document) throws IOException {
    return Files.readString(document)
        .lines()
        .filter(line -> line.matches("#+ .*"))
        .map(line -> line.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT))
        .map(line -> line.replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-'))
        .collect(Collectors.toSet());
  }

  @ParameterizedTest
  @MethodSource("withCommands")
  void commandsRun(Path document, @TempDir Path folder) throws IOException {
    Files.createDirectory(folder.resolve("sheets"));
    for (String command : commands(document)) {
      CommandRun run = CommandRun.of(arguments(command, folder));
      assertThat(run.status()).as("%s: %s%n%s", document, command, run.err()).isZero();
    }
  }

  /** As a shell takes them, with the folders put where the test runs. */
  private static String[] arguments(String command, Path folder) {
    List<String> made = new ArrayList<>();
    Matcher word = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(command);
    while (word.find()) {
      String text = word.group(1) == null ? word.group(2) : word.group(1);
      if (text.startsWith("docs/")) {
        made.add(ROOT.resolve(text).toString());
      } else {
        made.add(OWN_FILE.matcher(text).matches() ? folder.resolve(text).toString() : text);
      }
    }
    return made.toArray(String[]::new);
  }
}
