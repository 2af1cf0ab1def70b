package halfwave.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of pages are there in both languages, and no more and no fewer than are used. */
class PaperWordsTest {

  private static final Path SOURCES = Path.of("src", "main", "java", "halfwave", "paper");
  private static final Pattern LITERAL = Pattern.compile("\"([a-z]+\\.[a-z-]+)\"");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d}");

  private static Map<String, String> bundle(String file) throws IOException {
    Properties read = new Properties();
    try (var in =
        new InputStreamReader(
            Objects.requireNonNull(PaperWords.class.getResourceAsStream(file), file),
            StandardCharsets.UTF_8)) {
      read.load(in);
    }
    Map<String, String> sorted = new TreeMap<>();
    read.forEach((k, v) -> sorted.put((String) k, (String) v));
    return sorted;
  }

  private static List<String> placeholders(String text) {
    return PLACEHOLDER.matcher(text).results().map(r -> r.group()).sorted().toList();
  }

  @Test
  void bothLanguagesHaveTheSameKeysAndPlaceholders() throws IOException {
    Map<String, String> english = bundle("pages.properties");
    Map<String, String> spanish = bundle("pages_es.properties");

    assertThat(spanish.keySet()).isEqualTo(english.keySet());
    english.forEach(
        (key, text) ->
            assertThat(placeholders(spanish.get(key))).as(key).isEqualTo(placeholders(text)));
    assertThat(spanish.values()).allSatisfy(text -> assertThat(text).isNotBlank());
  }

  @Test
  void everyKeyIsUsedAndEveryUsedKeyIsThere() throws IOException {
    Set<String> used = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        used.addAll(
            LITERAL
                .matcher(Files.readString(file))
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toSet()));
      }
    }
    assertThat(used).isEqualTo(bundle("pages.properties").keySet());
  }
}
