package halfwave.lesson;

import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The same text in several languages. A demonstration is made by a teacher, not by the program: its
 * texts stand in its own file and not in the bundles.
 *
 * @param texts text by language tag; {@value #FALLBACK} is always there
 */
public record Words(Map<String, String> texts) {

  /** The language for whoever reads none of the others. */
  public static final String FALLBACK = "en";

  /** Checks tags and texts, and takes a copy in the order of the tags. */
  public Words {
    if (!texts.containsKey(FALLBACK)) {
      throw new IllegalArgumentException("texts: " + FALLBACK + " is missing");
    }
    for (Map.Entry<String, String> e : texts.entrySet()) {
      if (!isTag(e.getKey()) || e.getValue().isBlank()) {
        throw new IllegalArgumentException(
            "texts: " + e.getKey() + " = " + e.getValue() + ": a language tag and a text");
      }
    }
    texts = Collections.unmodifiableMap(new TreeMap<>(texts));
  }

  /** Whether this is a language tag as it should be spelt, such as {@code es} or {@code es-MX}. */
  public static boolean isTag(String tag) {
    return !tag.isEmpty() && Locale.forLanguageTag(tag).toLanguageTag().equals(tag);
  }

  /** The text for a reader: in his tongue and country, in his tongue, or else in English. */
  public String in(Locale reader) {
    String exact = texts.get(reader.toLanguageTag());
    if (exact != null) {
      return exact;
    }
    String tongue = texts.get(reader.getLanguage());
    return tongue != null ? tongue : english();
  }

  private String english() {
    return texts.getOrDefault(FALLBACK, "");
  }
}
