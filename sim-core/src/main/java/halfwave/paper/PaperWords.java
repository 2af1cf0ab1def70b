package halfwave.paper;

import halfwave.board.StatusCode;
import halfwave.display.Placeholders;
import halfwave.display.Sentences;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The words of pages in one language, from the bundle {@code halfwave/paper/pages}. What the model
 * says comes from {@link Sentences}.
 */
final class PaperWords {

  private final ResourceBundle bundle;
  private final Sentences sentences;
  private final Locale reader;

  PaperWords(Sentences sentences, Locale reader) {
    this.sentences = sentences;
    this.reader = reader;
    bundle =
        ResourceBundle.getBundle(
            "halfwave.paper.pages",
            reader,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  Sentences sentences() {
    return sentences;
  }

  Locale reader() {
    return reader;
  }

  /** The words of a key. */
  String text(String key, Object... arguments) {
    return Placeholders.filled(bundle.getString(key), Arrays.asList(arguments));
  }

  /** What a status light says, and by what flashes. */
  String light(StatusCode code) {
    String name = sentences.name(code);
    if (code.longFlashes() + code.shortFlashes() == 0) {
      return name;
    } else if (code.shortFlashes() == 0) {
      return text("light.long", name, code.longFlashes());
    } else if (code.longFlashes() == 0) {
      return text("light.short", name, code.shortFlashes());
    }
    return text("light.both", name, code.longFlashes(), code.shortFlashes());
  }

  /** A date as it is written out. */
  String date(LocalDate date) {
    return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
        .withLocale(Sentences.LANGUAGES.stream().anyMatch(this::spoken) ? reader : Locale.ENGLISH)
        .format(date);
  }

  private boolean spoken(Locale language) {
    return language.getLanguage().equals(reader.getLanguage());
  }

  /** The name of something as it begins a line. */
  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
