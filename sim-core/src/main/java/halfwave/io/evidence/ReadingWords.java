package halfwave.io.evidence;

import halfwave.instrument.MeterModel;
import halfwave.io.BadInputException;
import halfwave.io.Typed;
import halfwave.matching.ReadingKind;
import halfwave.matching.Setting;
import halfwave.matching.Sight;
import halfwave.matching.TakenReading;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Readings as people type them: {@code 2.4uA}, {@code 2.9uA cleaned rod-along=5mm}. */
public final class ReadingWords {

  private static final String EXAMPLE = "\"2.4uA cleaned rod-along=5mm\"";

  private static final Pattern TYPED =
      Pattern.compile("(.*?)((?:\\s+(?:cleaned|rod-(?:across|up|along)=\\S+))*)\\s*");

  /** How far a rod can be moved. */
  static final Plausible MOVED = new Plausible(Dimension.LENGTH, -0.1, 0.1, 5e-3);

  private ReadingWords() {}

  /**
   * The reading that was typed.
   *
   * @throws BadInputException naming the place, what was typed and what is allowed there
   */
  public static TakenReading reading(Typed where, ReadingKind kind, String text, MeterModel meter) {
    Matcher typed = TYPED.matcher(text.strip());
    if (!typed.matches()) {
      throw where.refused(text, Message.of(MessageKey.ALLOWED_READING, Argument.text(EXAMPLE)));
    }
    Setting setting = Setting.AS_FOUND;
    for (String word : typed.group(2).strip().split("\\s+")) {
      setting = word.isEmpty() ? setting : with(where, setting, word);
    }
    return TakenReading.of(
        new Sight(kind, setting, meter), plausible(kind).read(where, typed.group(1)));
  }

  /** What a reading of that kind can be. */
  static Plausible plausible(ReadingKind kind) {
    return new Plausible(kind.dimension(), kind.leastSi(), kind.mostSi(), kind.usualSi());
  }

  private static Setting with(Typed where, Setting s, String word) {
    if (word.equals("cleaned")) {
      return new Setting(true, s.acrossMeters(), s.upMeters(), s.alongMeters());
    }
    String[] parts = word.split("=", 2);
    double meters = MOVED.read(where.then(parts[0]), parts[1]);
    return switch (parts[0]) {
      case "rod-across" -> new Setting(s.cleaned(), meters, s.upMeters(), s.alongMeters());
      case "rod-up" -> new Setting(s.cleaned(), s.acrossMeters(), meters, s.alongMeters());
      default -> new Setting(s.cleaned(), s.acrossMeters(), s.upMeters(), meters);
    };
  }
}
