package halfwave.gui.presentation.evidence;

import halfwave.board.Ignition;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outcome;
import halfwave.gui.presentation.Wording;
import halfwave.io.BadInputException;
import halfwave.io.evidence.CallLogWords;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a person may say of a check, in the words of the window. */
public final class EvidenceWords {

  private EvidenceWords() {}

  /**
   * A reading that was typed.
   *
   * @param outcome what it is, or null
   * @param refusal why it is none, in words; else empty
   */
  public record Typed(@Nullable Outcome outcome, String refusal) {}

  /** Everything that may be said of a check with outcomes, under its name. */
  public static Map<Outcome, String> outcomes(Check check, Wording words) {
    Map<Outcome, String> outcomes = new LinkedHashMap<>();
    for (Enum<?> what : check.outcomes()) {
      outcomes.put(new Outcome.Found(what), words.heading(what));
    }
    if (!outcomes.isEmpty()) {
      outcomes.put(new Outcome.NotReached(), words.text("evidence.not-reached"));
      outcomes.put(new Outcome.Unsure(Set.copyOf(check.outcomes())), words.text("evidence.unsure"));
    }
    return outcomes;
  }

  /** A reading as a person types it: a bare number is in microamps or volts. */
  public static Typed typed(Check.Read read, String text, Wording words) {
    String unit = read.current() ? "uA" : "V";
    StringBuilder line = new StringBuilder();
    for (String part : text.strip().replace(',', '.').split("/", -1)) {
      boolean bare = part.strip().matches("[-+\u2212]?[0-9.]+");
      line.append(line.isEmpty() ? "" : "/").append(part.strip()).append(bare ? unit : "");
    }
    try {
      Entry entry =
          CallLogWords.entry(
              new halfwave.io.Typed(words.text("tab.evidence"), words.text("evidence.reading")),
              read.id() + "=" + line,
              Ignition.HOT_SURFACE);
      return new Typed(((Entry.Observed) entry).outcome(), "");
    } catch (BadInputException e) {
      return new Typed(null, words.text(read.current() ? "evidence.no-amps" : "evidence.no-volts"));
    }
  }
}
