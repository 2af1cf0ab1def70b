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

  private static final List<String> MODULES = List.of("sim-core", "sim-gui", "notebooks");

  /** A command to Maven, in a text or a block; an ellipsis ends what is only hinted at. */
  private static final Pattern BUILD = Pattern.compile("\\bmvn( [-A-Za-z0-9_.:=#,/]+)+");

  /** Goals, phases and switches that name nothing of ours. */
  private static final String MAVEN_WORD =
      "clean|test|test-compile|package|install|verify|spotless:apply|exec:(exec|java)"
          + "|-(q|B|o|ntp|am|pl|T2)|-DskipTests|-Dexec.classpathScope=test"
          + "|-Dsurefire.failIfNoSpecifiedTests=false";

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

  static List<String> builds() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path document : documents()) {
      Matcher command = BUILD.matcher(Files.readString(document));
      while (command.find()) {
        found.add(command.group());
      }
    }
    return found;
  }

  /**
   * Maven inside of Maven would take hours ({@code commands.sh} does that): what such a command
   * names has to be there.
   */
  @ParameterizedTest
  @MethodSource("builds")
  void buildsNameWhatIsThere(String command) throws IOException {
    List<Path> sources = sources();
    String poms = poms();
    for (String word : command.substring("mvn ".length()).split(" ")) {
      if (word.startsWith("-Dtest=") || word.startsWith("-Dexec.mainClass=")) {
        for (String name : word.replaceFirst(".*=", "").split(",")) {
          String file = "/" + name.replaceFirst("#.*", "").replace('.', '/') + ".java";
          assertThat(sources).as("%s: %s", command, name).anyMatch(f -> ends(f, file));
        }
      } else if (word.startsWith("-Dhalfwave.")) {
        String property = word.substring(2).replaceFirst("=.*", "");
        assertThat(poms.contains(property) || mentions(sources, property))
            .as("%s: %s", command, property)
            .isTrue();
      } else if (word.startsWith("-P")) {
        assertThat(poms).as(command).contains("<id>" + word.substring(2) + "</id>");
      } else if (word.startsWith("sim-") || word.equals("notebooks")) {
        assertThat(word.split(",")).as(command).allMatch(m -> Files.isDirectory(ROOT.resolve(m)));
      } else {
        assertThat(word).as(command).matches(MAVEN_WORD);
      }
    }
  }

  private static boolean ends(Path file, String with) {
    return file.toString().replace('\\', '/').endsWith(with);
  }

  private static boolean mentions(List<Path> sources, String text) throws IOException {
    for (Path source : sources) {
      if (Files.readString(source).contains('"' + text + '"')) {
        return true;
      }
    }
    return false;
  }

  private static List<Path> sources() throws IOException {
    List<Path> found = new ArrayList<>();
    for (String module : MODULES) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src"))) {
        files.filter(f -> f.toString().endsWith(".java")).forEach(found::add);
      }
    }
    return found;
  }

  private static String poms() throws IOException {
    StringBuilder all = new StringBuilder(Files.readString(ROOT.resolve("pom.xml")));
    for (String module : MODULES) {
      all.append(Files.readString(ROOT.resolve(module).resolve("pom.xml")));
    }
    return all.toString();
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
