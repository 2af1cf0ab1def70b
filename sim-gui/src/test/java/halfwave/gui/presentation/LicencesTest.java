package halfwave.gui.presentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of licences names every library that is shipped, in its version, and no other. */
class LicencesTest {

  /** What Maven puts beside the program: see the folder {@code lib}. */
  private static Set<String> shipped() {
    List<String> testOnly =
        List.of(
            "junit",
            "assertj",
            "archunit",
            "jmh",
            "opentest4j",
            "apiguardian",
            "byte-buddy",
            "fest",
            "hamcrest");
    Pattern jar = Pattern.compile(".*[/\\\\](?<name>[a-z0-9-]+?)-(?<version>[0-9][0-9.]*)\\.jar");
    Set<String> found = new TreeSet<>();
    for (String path : System.getProperty("java.class.path").split("[:;]")) {
      Matcher m = jar.matcher(path);
      if (m.matches() && testOnly.stream().noneMatch(path::contains)) {
        found.add(m.group("name") + " " + m.group("version"));
      }
    }
    return found;
  }

  private static Set<String> named(String language) throws IOException {
    try (var in = HelpPages.class.getResourceAsStream("help/" + language + "/licences.md")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> line.matches("- [a-z0-9-]+ [0-9.]+"))
          .map(line -> line.substring(2))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyLibraryIsNamed(String language) throws IOException {
    assertThat(named(language)).isNotEmpty();
    assertThat(shipped()).containsAll(named(language));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void noneIsForgotten(String language) throws IOException {
    Set<String> left = shipped();
    left.removeAll(named(language));
    assertThat(left).isEmpty();
  }
}
