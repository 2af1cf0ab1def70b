package halfwave.exchange;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.display.Sentences;
import halfwave.grading.CallMarks;
import halfwave.grading.SheetMarks;
import halfwave.lesson.Words;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Quiz;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.List;
import java.util.Locale;

/**
 * Marks as statements of the Experience API, version 1.0.3: a line of JSON for each call that was
 * handed in and one for the quiz. Nothing is sent; whoever has a record store puts the lines in.
 */
public final class XapiStatements {

  private static final String VERBS = "http://adlnet.gov/expapi/verbs/";
  private static final String ACTIVITIES = "http://adlnet.gov/expapi/activities/";

  /** To the millisecond, as the specification asks for (part 2, section 4.5). */
  private static final DateTimeFormatter TIMES =
      new DateTimeFormatterBuilder().appendInstant(3).toFormatter(Locale.ROOT);

  private final Quiz quiz;
  private final String home;
  private final String time;

  /**
   * Prepares it.
   *
   * @param quiz the quiz
   * @param home where the learners' codes belong to; absolute. Names of activities begin with it
   * @param time when the marks were given
   */
  public XapiStatements(Quiz quiz, URI home, Instant time) {
    if (!home.isAbsolute() || home.isOpaque()) {
      throw new IllegalArgumentException("home = " + home + ": an absolute address with a path");
    }
    this.quiz = quiz;
    this.home = home.toString().replaceAll("/+$", "");
    this.time = TIMES.format(time);
  }

  /** The lines of a class, sheet by sheet. */
  public String of(List<SheetMarks> sheets) {
    StringBuilder lines = new StringBuilder();
    for (SheetMarks sheet : sheets) {
      for (CallMarks call : sheet.calls()) {
        if (call.facts().done()) {
          lines.append(line(call(sheet, call)));
        }
      }
      lines.append(line(whole(sheet)));
    }
    return lines.toString();
  }

  /** The identifier follows from all the rest. */
  private static String line(ObjectNode rest) {
    ObjectNode statement = JsonNodeFactory.instance.objectNode();
    statement.put("id", StatementId.of(StatementId.OF_IRIS, rest.toString()).toString());
    statement.setAll(rest);
    return statement + "\n";
  }

  private ObjectNode call(SheetMarks sheet, CallMarks call) {
    List<CallSheet.Logged> moves =
        sheet.sheet().call(call.call().name()).map(CallSheet::moves).orElse(List.of());
    boolean concluded = call.said() != null;
    ObjectNode statement = begun(sheet, concluded ? "completed" : "attempted");
    object(statement, callId(call), call.call().title(), call.call().complaint(), "simulation");
    boolean success = call.totalRatio() >= quiz.passRatio();
    ObjectNode result = result(statement, call.totalRatio(), success, concluded, seconds(moves));
    ObjectNode extensions = result.putObject("extensions");
    extensions.put(home + "/extensions/simulated-minutes", call.facts().minutes());
    extensions.put(home + "/extensions/dangerous-acts", call.facts().dangerous());
    ObjectNode context = context(statement, sheet);
    context.putObject("contextActivities").putArray("parent").addObject().put("id", quizId());
    return statement;
  }

  private ObjectNode whole(SheetMarks sheet) {
    List<CallSheet.Logged> moves =
        sheet.sheet().calls().stream().flatMap(c -> c.moves().stream()).toList();
    boolean complete = sheet.calls().stream().allMatch(c -> c.said() != null);
    ObjectNode statement = begun(sheet, sheet.passed() ? "passed" : "failed");
    object(statement, quizId(), quiz.title(), quiz.about(), "assessment");
    result(statement, sheet.totalRatio(), sheet.passed(), complete, seconds(moves));
    context(statement, sheet);
    return statement;
  }

  private ObjectNode begun(SheetMarks sheet, String verb) {
    ObjectNode statement = JsonNodeFactory.instance.objectNode();
    ObjectNode actor = statement.putObject("actor").put("objectType", "Agent");
    actor.putObject("account").put("homePage", home).put("name", sheet.sheet().learner());
    ObjectNode display = statement.putObject("verb").put("id", VERBS + verb).putObject("display");
    for (Locale language : Sentences.LANGUAGES) {
      display.put(language.toLanguageTag(), Sentences.in(language).text(Message.of(key(verb))));
    }
    return statement;
  }

  private static MessageKey key(String verb) {
    return switch (verb) {
      case "attempted" -> MessageKey.VERB_ATTEMPTED;
      case "completed" -> MessageKey.VERB_COMPLETED;
      case "passed" -> MessageKey.VERB_PASSED;
      default -> MessageKey.VERB_FAILED;
    };
  }

  private static void object(
      ObjectNode statement, String id, Words title, Words about, String type) {
    ObjectNode definition =
        statement
            .putObject("object")
            .put("objectType", "Activity")
            .put("id", id)
            .putObject("definition");
    ObjectNode name = definition.putObject("name");
    title.texts().forEach(name::put);
    ObjectNode description = definition.putObject("description");
    about.texts().forEach(description::put);
    definition.put("type", ACTIVITIES + type);
  }

  private static ObjectNode result(
      ObjectNode statement, double ratio, boolean success, boolean complete, long seconds) {
    ObjectNode result = statement.putObject("result");
    result.putObject("score").put("scaled", ratio);
    result.put("success", success).put("completion", complete);
    return result.put("duration", "PT" + seconds + "S");
  }

  private ObjectNode context(ObjectNode statement, SheetMarks sheet) {
    String taken = quizId() + "\n" + sheet.sheet().quizHash() + "\n" + sheet.sheet().learner();
    ObjectNode context = statement.putObject("context");
    context.put("registration", StatementId.of(StatementId.OF_IRIS, taken).toString());
    context.put("revision", sheet.sheet().quizHash()).put("platform", sheet.sheet().engine());
    statement.put("timestamp", time);
    return context;
  }

  /** Time by the clock on the wall from the first of the moves to the last (s). */
  private static long seconds(List<CallSheet.Logged> moves) {
    long first = moves.stream().mapToLong(CallSheet.Logged::wallSeconds).min().orElse(0);
    long last = moves.stream().mapToLong(CallSheet.Logged::wallSeconds).max().orElse(0);
    return last - first;
  }

  private String quizId() {
    return home + "/quizzes/" + encoded(quiz.name());
  }

  private String callId(CallMarks call) {
    return quizId() + "/calls/" + encoded(call.call().name());
  }

  private static String encoded(String name) {
    return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
  }
}
