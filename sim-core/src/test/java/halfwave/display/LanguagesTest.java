package halfwave.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A language is there when its file of sentences is, and a slip in it ends nothing. */
class LanguagesTest {

  @TempDir private Path folder;

  private List<Locale> found() throws IOException {
    try (URLClassLoader loader = new URLClassLoader(new URL[] {folder.toUri().toURL()}, null)) {
      return Languages.in(loader);
    }
  }

  @Test
  void whatIsShippedAndWhatIsAdded() throws IOException {
    assertThat(found()).extracting(Locale::toLanguageTag).containsExactly("en", "es");
    Path there = Files.createDirectories(folder.resolve("halfwave/display"));
    Files.writeString(there.resolve("sentences_fr.properties"), "");
    Files.writeString(there.resolve("sentences_eo.properties"), "");
    Files.writeString(there.resolve("sentences_xx.properties"), "no language");

    assertThat(found()).extracting(Locale::toLanguageTag).containsExactly("en", "es", "eo", "fr");
  }

  @Test
  void placeholdersMoveAndOneWithoutAnArgumentStays() {
    assertThat(Placeholders.filled("{1} of {0}", List.of("a$", 2))).isEqualTo("2 of a$");
    assertThat(Placeholders.filled("{0} {7} {x}", List.of("a"))).isEqualTo("a {7} {x}");
  }
}
