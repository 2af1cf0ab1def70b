package halfwave.gui.presentation;

import halfwave.display.Placeholders;
import halfwave.display.Sentences;
import halfwave.display.UnitSystem;
import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words of the window in one language, with that language's numbers and chosen units. */
public final class Wording {

  static final String BUNDLE = "halfwave.gui.presentation.window";

  private final Locale locale;
  private final UnitSystem units;
  private final Sentences sentences;
  private final ResourceBundle bundle;

  private Wording(Locale locale, UnitSystem units) {
    this.locale = locale;
    this.units = units;
    sentences = Sentences.in(locale, units);
    bundle =
        ResourceBundle.getBundle(
            BUNDLE,
            locale,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /** Words in the language of that locale, or English where there are none. */
  public static Wording of(Locale locale, UnitSystem units) {
    boolean spoken =
        Sentences.LANGUAGES.stream().anyMatch(l -> l.getLanguage().equals(locale.getLanguage()));
    return new Wording(spoken ? locale : Locale.ENGLISH, units);
  }

  /** The language. */
  public Locale locale() {
    return locale;
  }

  /** The units. */
  public UnitSystem units() {
    return units;
  }

  /** Sentences of the core. */
  public Sentences sentences() {
    return sentences;
  }

  /**
   * Words of the window.
   *
   * @param key in the bundle
   * @param arguments what stands for {0}, {1} and so on
   */
  public String text(String key, Object... arguments) {
    return Placeholders.filled(bundle.getString(key), Arrays.asList(arguments));
  }

  /** The name of a thing as a heading. */
  public String heading(Enum<?> constant) {
    return capital(sentences.name(constant));
  }

  /** With a capital at its beginning. */
  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
