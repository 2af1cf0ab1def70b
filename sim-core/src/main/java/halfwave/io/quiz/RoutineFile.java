package halfwave.io.quiz;

import halfwave.board.Ignition;
import halfwave.diagnosis.Check;
import halfwave.grading.Routine;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.io.LanguageWords;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.work.Repair;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The file of somebody's own order of work, {@code "format": "halfwave-routine", "version": 1}. Its
 * schema is {@code docs/schemas/routine.schema.json}.
 */
public final class RoutineFile {

  static final String FORMAT = "halfwave-routine";
  static final int VERSION = 1;

  private RoutineFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static Routine read(Path file) {
    return of(JsonFile.read(file));
  }

  /**
   * An order of work that may not be finished.
   *
   * @param name what it is called; blank: nothing yet
   * @param steps in their order; one may say nothing yet
   */
  public record Unfinished(String name, List<Routine.Step> steps) {
    /** Takes a copy. */
    public Unfinished {
      steps = List.copyOf(steps);
    }
  }

  /** The same for a file that was already read. */
  static Routine of(JsonValue value) {
    JsonFields f = fields(value);
    return new Routine(
        LanguageWords.filled(f.get("name")),
        f.get("steps")
            .filledList(
                RoutineFile::finished, Message.of(MessageKey.ALLOWED_ENTRIES, Argument.count(1))));
  }

  /**
   * Reads a file that was perhaps saved before it was finished, to go on with it.
   *
   * @throws BadInputException if anything else in it is not as the schema says
   */
  public static Unfinished readUnfinished(Path file) {
    return unfinished(JsonFile.read(file));
  }

  static Unfinished unfinished(JsonValue value) {
    JsonFields f = fields(value);
    return new Unfinished(f.get("name").text(), f.get("steps").list(RoutineFile::step));
  }

  private static JsonFields fields(JsonValue value) {
    return value.file(FORMAT, VERSION, "format", "version", "name", "steps");
  }

  private static Routine.Step finished(JsonValue value) {
    Routine.Step step = step(value);
    if (step.check() == null && step.repair() == null) {
      throw value.refused(Message.of(MessageKey.ALLOWED_STEP));
    }
    return step;
  }

  private static Routine.Step step(JsonValue value) {
    JsonFields f = value.fields("check", "found", "belowAmps", "belowVolts", "repair");
    return new Routine.Step(
        f.has("check") ? check(f.get("check")) : null,
        new LinkedHashSet<>(f.orElse("found", v -> v.list(JsonValue::text), List.of())),
        f.orElse("belowAmps", RoutineFile::number, Double.NaN),
        f.orElse("belowVolts", RoutineFile::number, Double.NaN),
        f.has("repair") ? f.get("repair").oneOf(Repair.class) : null);
  }

  private static double number(JsonValue value) {
    double number = value.number();
    if (!(number > 0)) {
      throw value.refused(Message.of(MessageKey.ALLOWED_POSITIVE));
    }
    return number;
  }

  /** A check of any appliance: what one does not have is left out there. */
  private static Check check(JsonValue value) {
    String id = value.text();
    Set<String> ids =
        Stream.of(Ignition.values())
            .flatMap(i -> Check.all(i).stream())
            .map(Check::id)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return Stream.of(Ignition.values())
        .flatMap(i -> Check.named(id, i).stream())
        .findFirst()
        .orElseThrow(
            () ->
                value.refused(
                    Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(String.join(", ", ids)))));
  }
}
