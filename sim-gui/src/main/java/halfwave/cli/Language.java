package halfwave.cli;

import halfwave.display.Sentences;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The languages a person can choose with {@code --language}. */
public enum Language {
  /** English. */
  EN,
  /** Spanish. */
  ES;

  /** How the option spells it. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** As a locale. */
  public Locale locale() {
    return Locale.forLanguageTag(code());
  }

  /** Sentences in this language. */
  public Sentences sentences() {
    return Sentences.in(locale());
  }

  /** The language with that code. */
  static Optional<Language> of(String code) {
    return Arrays.stream(values()).filter(language -> language.code().equals(code)).findFirst();
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
}
