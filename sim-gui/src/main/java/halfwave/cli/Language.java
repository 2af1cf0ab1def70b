package halfwave.cli;

import halfwave.display.Sentences;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A language that a person can choose with {@code --language}.
 *
 * @param locale as a locale, without a country
 */
public record Language(Locale locale) {

  /** English. */
  public static final Language EN = new Language(Locale.ENGLISH);

  /** All there are, English first. */
  public static List<Language> all() {
    return Sentences.LANGUAGES.stream().map(Language::new).toList();
  }

  /** How the option spells it. */
  public String code() {
    return locale.getLanguage();
  }

  /** Sentences in this language. */
  public Sentences sentences() {
    return Sentences.in(locale);
  }

  /** The language with that code. */
  static Optional<Language> of(String code) {
    return all().stream().filter(language -> language.code().equals(code)).findFirst();
  }

  /** The language of a locale, or English. */
  static Language of(Locale locale) {
    return of(locale.getLanguage()).orElse(EN);
  }

  /**
   * The language for a command line. Looked up before the line is parsed, so that help and errors
   * of parsing speak it too.
   *
   * @param args the command line
   * @param usual the language of whoever names none
   */
  static Language of(String[] args, Locale usual) {
    String option = Standard.LANGUAGE;
    for (int k = 0; k < args.length; k++) {
      if (args[k].equals("--")) {
        break;
      }
      if (args[k].startsWith(option + "=")) {
        return of(args[k].substring(option.length() + 1)).orElse(of(usual));
      }
      if (args[k].equals(option) && k + 1 < args.length) {
        return of(args[k + 1]).orElse(of(usual));
      }
    }
    return of(usual);
  }

  /** What help says can be chosen. */
  static final class Codes implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return all().stream().map(Language::code).iterator();
    }
  }
}
