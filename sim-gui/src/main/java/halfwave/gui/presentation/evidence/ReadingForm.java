package halfwave.gui.presentation.evidence;

import halfwave.display.DisplayUnit;
import halfwave.display.UnitSystem;
import halfwave.gui.presentation.Wording;
import halfwave.instrument.ShippedMeters;
import halfwave.matching.ReadingKind;
import halfwave.matching.Setting;
import halfwave.matching.Sight;
import halfwave.matching.TakenReading;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A reading as it is typed into the window.
 *
 * @param kind what was read
 * @param cleaned whether the rod had been cleaned
 * @param value what the meter showed, in {@link #unit(ReadingKind)}
 * @param across how far the rod was moved sideways, in {@link #lengths(Wording)}; empty: not at all
 * @param up the same upwards
 * @param along the same out of the bracket
 */
public record ReadingForm(
    ReadingKind kind, boolean cleaned, String value, String across, String up, String along) {

  /** A rod can be moved so far (m). */
  private static final double MOST_METERS = 0.1;

  /** A field that can be wrong. */
  public enum Field {
    /** What the meter showed. */
    VALUE,
    /** Sideways. */
    ACROSS,
    /** Upwards. */
    UP,
    /** Outwards. */
    ALONG
  }

  /**
   * What comes of it.
   *
   * @param reading the reading, or null
   * @param wrong the field that is wrong, or null
   * @param refusal why, in words; else empty
   */
  public record Read(@Nullable TakenReading reading, @Nullable Field wrong, String refusal) {}

  /** What the value of such a reading is typed in. */
  public static DisplayUnit unit(ReadingKind kind) {
    return kind.dimension() == Dimension.CURRENT ? DisplayUnit.MICROAMP : DisplayUnit.VOLT;
  }

  /** What lengths are typed in. */
  public static DisplayUnit lengths(Wording words) {
    return words.units() == UnitSystem.INCH ? DisplayUnit.INCH : DisplayUnit.MILLIMETER;
  }

  /** What a value may be. */
  public static String range(ReadingKind kind, Wording words) {
    return words.text(
        "match.range",
        shown(kind.leastSi(), unit(kind), words),
        shown(kind.mostSi(), unit(kind), words));
  }

  /** What it is on a healthy furnace, about. */
  public static String usual(ReadingKind kind, Wording words) {
    return shown(kind.usualSi(), unit(kind), words);
  }

  private static String shown(double si, DisplayUnit unit, Wording words) {
    return words.sentences().quantities().fixed(si, unit, 0);
  }

  /** Reads it; the first field that is wrong is named. */
  public Read read(Wording words) {
    List<Double> moved = new ArrayList<>();
    for (Field field : List.of(Field.ACROSS, Field.UP, Field.ALONG)) {
      OptionalDouble meters = meters(text(field), words);
      if (meters.isEmpty()) {
        String most = words.sentences().quantities().text(MOST_METERS, Dimension.LENGTH);
        return new Read(null, field, words.text("match.no-length", most));
      }
      moved.add(meters.getAsDouble());
    }
    OptionalDouble si = TypedNumber.si(value, unit(kind), kind.leastSi(), kind.mostSi());
    if (si.isEmpty()) {
      return new Read(null, Field.VALUE, words.text("match.no-value", range(kind, words)));
    }
    Setting setting = new Setting(cleaned, moved.get(0), moved.get(1), moved.get(2));
    Sight sight = new Sight(kind, setting, ShippedMeters.service());
    return new Read(TakenReading.of(sight, si.getAsDouble()), null, "");
  }

  private String text(Field field) {
    return switch (field) {
      case VALUE -> value;
      case ACROSS -> across;
      case UP -> up;
      case ALONG -> along;
    };
  }

  private static OptionalDouble meters(String text, Wording words) {
    return text.isBlank()
        ? OptionalDouble.of(0)
        : TypedNumber.si(text, lengths(words), -MOST_METERS, MOST_METERS);
  }
}
