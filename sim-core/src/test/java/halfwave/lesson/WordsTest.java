package halfwave.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which text a reader gets. */
class WordsTest {

  private static final Words WORDS =
      new Words(Map.of("en", "flame", "es", "llama", "es-MX", "flama"));

  @Test
  void readersGetTheirOwnOrEnglish() {
    assertThat(WORDS.in(Locale.forLanguageTag("es-MX"))).isEqualTo("flama");
    assertThat(WORDS.in(Locale.forLanguageTag("es-AR"))).isEqualTo("llama");
    assertThat(WORDS.in(Locale.UK)).isEqualTo("flame");
    assertThat(WORDS.in(Locale.GERMAN)).isEqualTo("flame");
    assertThat(WORDS.in(Locale.ROOT)).isEqualTo("flame");
  }

  @Test
  void englishIsNeededAndTagsAreSpeltAsTheyShould() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Words(Map.of("es", "llama")));
    assertThatIllegalArgumentException().isThrownBy(() -> new Words(Map.of("en", " ")));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Words(Map.of("en", "flame", "es_MX", "flama")));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Words(Map.of("en", "flame", "", "flama")));
  }
}
