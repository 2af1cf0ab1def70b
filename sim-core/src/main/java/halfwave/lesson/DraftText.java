package halfwave.lesson;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A text on its way: the same in several languages, each of which may still be empty.
 *
 * @param texts text by language tag; none of them of length zero
 */
public record DraftText(Map<String, String> texts) {

  /** Nothing was written yet. */
  public static final DraftText EMPTY = new DraftText(Map.of());

  /** What stands in a finished demonstration where nothing was written. */
  static final Words STAND_IN = new Words(Map.of(Words.FALLBACK, "…"));

  /** Checks tags, and takes a copy in their order without what is empty. */
  public DraftText {
    Map<String, String> filled = new TreeMap<>(texts);
    filled.values().removeIf(String::isEmpty);
    for (String tag : filled.keySet()) {
      if (!Words.isTag(tag)) {
        throw new IllegalArgumentException("texts: " + tag + ": a language tag");
      }
    }
    texts = Collections.unmodifiableMap(filled);
  }

  /**
   * The draft of finished words. What stands in for English there is no English: who wrote in his
   * own tongue alone finds that field empty again.
   */
  public static DraftText of(Words words) {
    if (words.equals(STAND_IN)) {
      return EMPTY;
    }
    Map<String, String> texts = new TreeMap<>(words.texts());
    String english = texts.remove(Words.FALLBACK);
    boolean standsIn = first(texts).filter(t -> t.equals(english)).isPresent();
    return new DraftText(standsIn ? texts : words.texts());
  }

  /** The text in one language, or empty. */
  public String in(String tag) {
    return texts.getOrDefault(tag, "");
  }

  /** With another text in one language. */
  public DraftText with(String tag, String text) {
    Map<String, String> other = new TreeMap<>(texts);
    other.put(tag, text);
    return new DraftText(other);
  }

  /** Whether there is nothing to read in any language. */
  public boolean blank() {
    return texts.values().stream().allMatch(String::isBlank);
  }

  /** As a demonstration has it: where there is no English the first other language takes over. */
  public Optional<Words> words() {
    Map<String, String> filled = new TreeMap<>(texts);
    filled.values().removeIf(String::isBlank);
    first(filled).ifPresent(text -> filled.putIfAbsent(Words.FALLBACK, text));
    return filled.isEmpty() ? Optional.empty() : Optional.of(new Words(filled));
  }

  /** The same with something to show in every case. */
  Words orStandIn() {
    return words().orElse(STAND_IN);
  }

  private static Optional<String> first(Map<String, String> texts) {
    return texts.entrySet().stream()
        .filter(e -> !e.getKey().equals(Words.FALLBACK))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
