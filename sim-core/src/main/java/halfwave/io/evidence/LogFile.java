package halfwave.io.evidence;

import halfwave.forecast.Calendar;
import halfwave.forecast.FlameLog;
import halfwave.forecast.Logged;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.work.Repair;
import java.nio.file.Path;
import java.time.LocalDate;

/**
 * The file of a furnace's log, {@code "format": "halfwave-log", "version": 1}: readings of the
 * flame current and work on the rod, by dates or by hours of flame. Its schema is {@code
 * docs/schemas/log.schema.json}.
 */
public final class LogFile {

  /** Fewest hours of flame a year. */
  public static final int LEAST_HOURS = 10;

  /** Most hours of flame a year. */
  public static final int MOST_HOURS = 8760;

  private static final String FORMAT = "halfwave-log";
  private static final int VERSION = 1;
  private static final double HOUR_SECONDS = 3600;

  private LogFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @throws BadInputException if anything in it is not as the schema says, its log is empty, or its
   *     entries are out of order
   */
  public static FlameLog read(Path file) {
    return of(JsonFile.read(file));
  }

  /** The same for a file that was already read. */
  static FlameLog of(JsonValue value) {
    JsonFields f = value.file(FORMAT, VERSION, "format", "version", "flameHoursPerYear", "entries");
    double hours = f.orElse("flameHoursPerYear", LogFile::hoursPerYear, Calendar.USUAL_HOURS);
    return LogWords.log(
        f.get("entries")
            .filledList(LogFile::entry, Message.of(MessageKey.ALLOWED_ENTRIES, Argument.text("1"))),
        Calendar.burningRatio(hours));
  }

  private static double hoursPerYear(JsonValue value) {
    double hours = value.number();
    if (!(hours >= LEAST_HOURS && hours <= MOST_HOURS)) {
      throw value.refused(allowedHoursPerYear());
    }
    return hours;
  }

  /** What hours of flame a year may be. */
  public static Message allowedHoursPerYear() {
    return Message.of(
        MessageKey.ALLOWED_RANGE, Argument.count(LEAST_HOURS), Argument.count(MOST_HOURS));
  }

  private static LogWords.Entry entry(JsonValue value) {
    JsonFields f = value.fields("date", "flameHours", "seriesDc", "repair");
    boolean dated = f.has("date");
    if (dated && f.has("flameHours")) {
      throw f.get("flameHours").refused(Message.of(MessageKey.ALLOWED_ONE_CLOCK));
    }
    LogWords.When when =
        dated
            ? new LogWords.When.Day(date(f.get("date")))
            : new LogWords.When.Burnt(seconds(f.get("flameHours")));
    JsonValue at = f.get(dated ? "date" : "flameHours");
    if (f.has("repair")) {
      if (f.has("seriesDc")) {
        throw f.get("seriesDc").refused(Message.of(MessageKey.ALLOWED_READ_OR_DONE));
      }
      Repair repair = repair(f.get("repair"));
      return new LogWords.Entry(when, s -> new Logged.Done(s, repair), at::refused);
    }
    double amps = LogWords.READ.read(f.get("seriesDc"));
    return new LogWords.Entry(when, s -> new Logged.Read(s, amps), at::refused);
  }

  private static LocalDate date(JsonValue value) {
    return LogWords.date(value.text())
        .orElseThrow(() -> value.refused(Message.of(MessageKey.ALLOWED_DATE)));
  }

  private static double seconds(JsonValue value) {
    double seconds = value.number() * HOUR_SECONDS;
    if (!(seconds >= 0 && seconds <= Logged.MOST_SECONDS)) {
      Argument most = Argument.count(Math.round(Logged.MOST_SECONDS / HOUR_SECONDS));
      throw value.refused(Message.of(MessageKey.ALLOWED_RANGE, Argument.count(0), most));
    }
    return seconds;
  }

  private static Repair repair(JsonValue value) {
    return Logged.ROD_REPAIRS.stream()
        .filter(r -> r.id().equals(value.text()))
        .findFirst()
        .orElseThrow(() -> value.refused(LogWords.allowedRepairs()));
  }
}
