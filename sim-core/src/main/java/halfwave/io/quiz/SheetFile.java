package halfwave.io.quiz;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.board.Ignition;
import halfwave.diagnosis.Cause;
import halfwave.fault.FaultKind;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.io.LanguageWords;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Sitting;
import halfwave.work.FurnacePart;
import halfwave.work.Repair;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The file of an answer sheet, {@code "format": "halfwave-answer-sheet", "version": 1}: moves in
 * the words of {@link MoveWords}. Its schema is {@code docs/schemas/answer-sheet.schema.json}. It
 * is written anew after every move, whole or not at all: so it is its own journal.
 */
public final class SheetFile {

  static final String FORMAT = "halfwave-answer-sheet";
  static final int VERSION = 1;

  private static final double MOST_EXTRA_RATIO = 10;
  private static final long MOST_SECONDS = 10_000_000;

  /** The year 9999. */
  private static final long MOST_EPOCH_SECONDS = 253_402_300_799L;

  private SheetFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @param quiz the quiz it answers
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static AnswerSheet read(Path file, Quiz quiz) {
    return of(JsonFile.read(file), quiz);
  }

  /** The same for a file that was already read. */
  public static AnswerSheet of(JsonValue value, Quiz quiz) {
    JsonFields f =
        value.file(
            FORMAT,
            VERSION,
            "format",
            "version",
            "engine",
            "quiz",
            "quizHash",
            "learner",
            "extraTimeRatio",
            "calls",
            "begunSeconds",
            "restarts",
            "handedIn");
    if (!f.get("quiz").text().equals(quiz.name())) {
      throw f.get("quiz")
          .refused(Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(quiz.name())));
    }
    List<CallSheet> calls = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (JsonValue v : f.get("calls").list(c -> c)) {
      CallSheet call = call(v, quiz);
      if (!names.add(call.call())) {
        throw v.child("call").refused(Message.of(MessageKey.ALLOWED_ONCE));
      }
      calls.add(call);
    }
    return new AnswerSheet(
        f.get("engine").text(),
        quiz.name(),
        f.get("quizHash").text(),
        LanguageWords.filled(f.get("learner")),
        ratio(f.get("extraTimeRatio")),
        calls,
        new Sitting(
            f.orElse("begunSeconds", v -> whole(v, MOST_EPOCH_SECONDS), 0L),
            f.orElse("restarts", v -> v.list(SheetFile::restart), List.of()),
            f.orElse("handedIn", JsonValue::truth, false)));
  }

  private static Sitting.Restart restart(JsonValue value) {
    JsonFields f = value.fields("fromSeconds", "toSeconds");
    long from = whole(f.get("fromSeconds"), MOST_SECONDS);
    long to = whole(f.get("toSeconds"), MOST_SECONDS);
    if (to < from) {
      throw f.get("toSeconds").refused(JsonValue.between(from, MOST_SECONDS));
    }
    return new Sitting.Restart(from, to);
  }

  private static double ratio(JsonValue value) {
    double ratio = value.number();
    if (!(ratio >= 1 && ratio <= MOST_EXTRA_RATIO)) {
      throw value.refused(JsonValue.between(1, MOST_EXTRA_RATIO));
    }
    return ratio;
  }

  private static CallSheet call(JsonValue value, Quiz quiz) {
    JsonFields f = value.fields("call", "moves", "conclusion");
    String name = f.get("call").text();
    // a call that the quiz does not have is told when it is marked
    Ignition ignition =
        quiz.call(name).map(ServiceCall::ignition).orElse(quiz.calls().get(0).ignition());
    return new CallSheet(
        name,
        f.get("moves").list(v -> logged(v, ignition)),
        f.has("conclusion") ? f.orNull("conclusion", SheetFile::conclusion) : null);
  }

  private static CallSheet.Logged logged(JsonValue value, Ignition ignition) {
    JsonFields f = value.fields("move", "minute", "seconds", "found");
    Typed where = new Typed(value.file(), f.get("move").path());
    return new CallSheet.Logged(
        MoveWords.move(where, f.get("move").text(), ignition),
        (int) whole(f.get("minute"), Integer.MAX_VALUE),
        whole(f.get("seconds"), MOST_SECONDS),
        f.orElse("found", JsonValue::text, ""));
  }

  private static long whole(JsonValue value, long most) {
    long number = value.wholeNumber();
    if (!(number >= 0 && number <= most)) {
      throw value.refused(JsonValue.between(0, most));
    }
    return number;
  }

  private static Conclusion conclusion(JsonValue value) {
    JsonFields f = value.fields("cause", "place", "repair");
    List<FaultKind> kinds = f.get("cause").list(v -> v.oneOf(FaultKind.class));
    if (kinds.size() > 2 || kinds.stream().distinct().count() < kinds.size()) {
      throw f.get("cause").refused(Message.of(MessageKey.ALLOWED_HIDDEN));
    }
    return new Conclusion(
        new Cause(kinds),
        f.has("place") ? f.orNull("place", v -> v.oneOf(FurnacePart.class)) : null,
        f.has("repair") ? f.orNull("repair", v -> v.oneOf(Repair.class)) : null);
  }

  /** The text of the file. */
  public static String text(AnswerSheet sheet) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", FORMAT)
        .put("version", VERSION)
        .put("engine", sheet.engine())
        .put("quiz", sheet.quiz())
        .put("quizHash", sheet.quizHash())
        .put("learner", sheet.learner())
        .put("extraTimeRatio", sheet.extraTimeRatio());
    if (sheet.sitting().begunSeconds() > 0) {
      root.put("begunSeconds", sheet.sitting().begunSeconds());
    }
    if (!sheet.sitting().restarts().isEmpty()) {
      ArrayNode restarts = root.putArray("restarts");
      sheet
          .sitting()
          .restarts()
          .forEach(
              r ->
                  restarts
                      .addObject()
                      .put("fromSeconds", r.fromSeconds())
                      .put("toSeconds", r.toSeconds()));
    }
    if (sheet.sitting().handedIn()) {
      root.put("handedIn", true);
    }
    ArrayNode calls = root.putArray("calls");
    for (CallSheet call : sheet.calls()) {
      ObjectNode node = calls.addObject().put("call", call.call());
      ArrayNode moves = node.putArray("moves");
      call.moves().forEach(m -> put(moves.addObject(), m));
      if (call.conclusion() != null) {
        put(node.putObject("conclusion"), call.conclusion());
      }
    }
    return root.toPrettyString() + "\n";
  }

  private static void put(ObjectNode node, CallSheet.Logged logged) {
    node.put("move", MoveWords.text(logged.move()))
        .put("minute", logged.minute())
        .put("seconds", logged.wallSeconds());
    if (!logged.found().isEmpty()) {
      node.put("found", logged.found());
    }
  }

  private static void put(ObjectNode node, Conclusion conclusion) {
    ArrayNode cause = node.putArray("cause");
    conclusion.cause().kinds().forEach(k -> cause.add(k.id()));
    node.put("place", spelling(conclusion.place())).put("repair", spelling(conclusion.repair()));
  }

  private static @Nullable String spelling(@Nullable Enum<?> constant) {
    return constant == null ? null : JsonValue.spelling(constant);
  }
}
