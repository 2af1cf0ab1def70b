package halfwave.display;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Which languages there are: the two that are shipped, and each whose file of sentences lies on the
 * class path beside theirs. Such a file need not be complete, English stands where it has nothing.
 *
 * <p>Known limit: languages of ISO 639-1 without a country, so no {@code pt_BR} beside {@code pt}.
 */
final class Languages {

  private static final List<String> SHIPPED = List.of("en", "es");

  private Languages() {}

  /** The languages whose sentences a loader finds; English is the first. */
  static List<Locale> in(ClassLoader loader) {
    Stream<String> added =
        Arrays.stream(Locale.getISOLanguages())
            .filter(code -> !SHIPPED.contains(code))
            .filter(code -> loader.getResource(file(code)) != null);
    return Stream.concat(SHIPPED.stream(), added).map(Locale::forLanguageTag).toList();
  }

  private static String file(String code) {
    return "halfwave/display/sentences_" + code + ".properties";
  }
}
