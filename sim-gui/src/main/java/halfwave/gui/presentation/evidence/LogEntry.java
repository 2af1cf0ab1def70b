package halfwave.gui.presentation.evidence;

import halfwave.display.DisplayUnit;
import halfwave.forecast.Calendar;
import halfwave.forecast.Logged;
import halfwave.gui.presentation.Wording;
import halfwave.work.Repair;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A dated line of a furnace's log.
 *
 * @param day when
 * @param repair what was done to the rod, or null for a reading
 * @param amps DC that was read (A); counts only for a reading
 */
public record LogEntry(LocalDate day, @Nullable Repair repair, double amps) {

  /**
   * What was typed.
   *
   * @param entry the line, or null
   * @param badDay whether it is the day that is wrong
   * @param refusal why there is none, in words; else empty
   */
  public record Typed(@Nullable LogEntry entry, boolean badDay, String refusal) {}

  /**
   * Reads what was typed.
   *
   * @param day such as 2025-10-04
   * @param repair what was done, or null for a reading
   * @param value the reading in microamps
   */
  public static Typed typed(String day, @Nullable Repair repair, String value, Wording words) {
    LocalDate date;
    try {
      date = LocalDate.parse(day.strip());
    } catch (DateTimeParseException e) {
      return new Typed(null, true, words.text("forecast.no-day"));
    }
    OptionalDouble amps =
        TypedNumber.si(value, DisplayUnit.MICROAMP, Logged.Read.LEAST_AMPS, Logged.Read.MOST_AMPS);
    if (repair == null && amps.isEmpty()) {
      return new Typed(null, false, words.text("forecast.no-amps"));
    }
    return new Typed(new LogEntry(date, repair, amps.orElse(Double.NaN)), false, "");
  }

  /** The line in words. */
  public String said(Wording words) {
    String what =
        repair == null
            ? words.sentences().quantities().fixed(amps, DisplayUnit.MICROAMP, 2)
            : words.sentences().name(repair);
    return words.text("forecast.entry-said", day, what);
  }

  /** The same in hours of flame. */
  Logged logged(Calendar calendar) {
    double seconds = calendar.flameSeconds(day);
    return repair == null ? new Logged.Read(seconds, amps) : new Logged.Done(seconds, repair);
  }
}
