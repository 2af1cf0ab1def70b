package halfwave.io.quiz;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Help;
import halfwave.quiz.Objective;
import halfwave.quiz.Progress;
import halfwave.quiz.Progress.Practised;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The file of what a learner has practised, {@code "format": "halfwave-progress", "version": 1}.
 * Its schema is {@code docs/schemas/progress.schema.json}.
 */
public final class ProgressFile {

  static final String FORMAT = "halfwave-progress";
  static final int VERSION = 1;

  private static final int MOST_CALLS = 1_000_000;

  private ProgressFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static Progress read(Path file) {
    return of(JsonFile.read(file));
  }

  /** The same for a file that was already read. */
  static Progress of(JsonValue value) {
    JsonFields f = value.file(FORMAT, VERSION, "format", "version", "objectives");
    Map<Objective, Practised> all = new EnumMap<>(Objective.class);
    for (JsonValue v : f.get("objectives").list(o -> o)) {
      JsonFields o = v.fields("objective", "calls", "marks", "help");
      Objective objective = o.get("objective").oneOf(Objective.class);
      if (all.containsKey(objective)) {
        throw o.get("objective").refused(Message.of(MessageKey.ALLOWED_ONCE));
      }
      all.put(objective, practised(o));
    }
    return new Progress(all);
  }

  private static Practised practised(JsonFields f) {
    List<Double> marks =
        f.get("marks")
            .filledList(
                ProgressFile::mark, Message.of(MessageKey.ALLOWED_ENTRIES, Argument.count(1)));
    if (marks.size() > Progress.KEPT) {
      throw f.get("marks").refused(JsonValue.between(1, Progress.KEPT));
    }
    long calls = f.get("calls").wholeNumber();
    if (!(calls >= marks.size() && calls <= MOST_CALLS)) {
      throw f.get("calls").refused(JsonValue.between(marks.size(), MOST_CALLS));
    }
    return new Practised((int) calls, marks, f.get("help").oneOf(Help.class));
  }

  private static double mark(JsonValue value) {
    double mark = value.number();
    if (!(mark >= 0 && mark <= 1)) {
      throw value.refused(JsonValue.between(0, 1));
    }
    return mark;
  }

  /** The text of the file. */
  public static String text(Progress progress) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", FORMAT).put("version", VERSION);
    ArrayNode all = root.putArray("objectives");
    progress
        .practised()
        .forEach(
            (objective, done) -> {
              ObjectNode node = all.addObject();
              node.put("objective", JsonValue.spelling(objective)).put("calls", done.calls());
              ArrayNode marks = node.putArray("marks");
              done.marks().forEach(m -> marks.add(m.doubleValue()));
              node.put("help", JsonValue.spelling(done.help()));
            });
    return root.toPrettyString() + "\n";
  }
}
