package halfwave.io.evidence;

import halfwave.instrument.MeterModel;
import halfwave.instrument.ShippedMeters;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.io.sequence.ScriptFile;
import halfwave.matching.ReadingKind;
import halfwave.matching.Setting;
import halfwave.matching.Sight;
import halfwave.matching.TakenReading;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Path;
import java.util.List;

/**
 * The file of readings that somebody took, {@code "format": "halfwave-readings", "version": 1}. Its
 * schema is {@code docs/schemas/readings.schema.json}. Numbers are SI, or text with a unit.
 */
public final class ReadingsFile {

  static final String FORMAT = "halfwave-readings";
  static final int VERSION = 1;

  private ReadingsFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return the readings in order; at least one
   * @throws BadInputException if anything in it is not as the schema says, or cannot be
   */
  public static List<TakenReading> read(Path file) {
    return of(JsonFile.read(file));
  }

  /** The same for a file that was already read. */
  static List<TakenReading> of(JsonValue value) {
    JsonFields f = value.file(FORMAT, VERSION, "format", "version", "meter", "readings");
    MeterModel meter = f.orElse("meter", ScriptFile::meter, ShippedMeters.service());
    return f.get("readings")
        .filledList(
            r -> reading(r, meter), Message.of(MessageKey.ALLOWED_ENTRIES, Argument.text("1")));
  }

  private static TakenReading reading(JsonValue value, MeterModel usual) {
    JsonFields f =
        value.fields("kind", "value", "cleaned", "rodAcross", "rodUp", "rodAlong", "meter");
    ReadingKind kind = f.get("kind").oneOf(ReadingKind.class);
    double si = ReadingWords.plausible(kind).read(f.get("value"));
    Setting setting =
        new Setting(
            f.orElse("cleaned", JsonValue::truth, false),
            shift(f, "rodAcross"),
            shift(f, "rodUp"),
            shift(f, "rodAlong"));
    MeterModel meter = f.orElse("meter", ScriptFile::meter, usual);
    return TakenReading.of(new Sight(kind, setting, meter), si);
  }

  private static double shift(JsonFields f, String name) {
    return f.orElse(name, ReadingWords.MOVED::read, 0.0);
  }
}
