package halfwave.io.quiz;

import halfwave.bench.Bench;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.io.LanguageWords;
import halfwave.io.bench.BenchField;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.quiz.BlueprintRow;
import halfwave.quiz.Hidden;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import halfwave.quiz.Quiz;
import halfwave.quiz.Rules;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Weights;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Recollection;
import halfwave.work.Work;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The file of a quiz, {@code "format": "halfwave-quiz", "version": 1}. Its schema is {@code
 * docs/schemas/quiz.schema.json}; {@link QuizText} writes it. In a quiz that is handed out the
 * faults are sealed: {@link HiddenSeal}.
 */
public final class QuizFile {

  /** What such a file calls itself. */
  public static final String FORMAT = "halfwave-quiz";

  static final int VERSION = 1;

  /** A day at one furnace is more than enough. */
  private static final int MOST_MINUTES = 1440;

  private static final int MOST_UNITS = 10_000;

  private QuizFile() {}

  /**
   * A quiz as it was read.
   *
   * @param quiz the quiz
   * @param sealed whether its faults were sealed: whoever has no more than this is a learner
   */
  public record Opened(Quiz quiz, boolean sealed) {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static Opened read(Path file) {
    return of(JsonFile.read(file));
  }

  /** The same for a file that was already read. */
  public static Opened of(JsonValue value) {
    JsonFields f =
        value.file(
            FORMAT,
            VERSION,
            "format",
            "version",
            "name",
            "title",
            "about",
            "seed",
            "passRatio",
            "weights",
            "rules",
            "blueprint",
            "calls");
    String name = LanguageWords.filled(f.get("name"));
    Message needed = Message.of(MessageKey.ALLOWED_ENTRIES, Argument.count(1));
    List<JsonValue> values = f.get("calls").filledList(v -> v, needed);
    List<ServiceCall> calls = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (JsonValue v : values) {
      ServiceCall call = call(v, name);
      if (!names.add(call.name())) {
        throw v.child("name").refused(Message.of(MessageKey.ALLOWED_ONCE));
      }
      calls.add(call);
    }
    Quiz quiz =
        f.make(
            () ->
                new Quiz(
                    name,
                    LanguageWords.of(f.get("title")),
                    LanguageWords.of(f.get("about")),
                    f.orElse("seed", JsonValue::wholeNumber, 1L),
                    f.orElse("passRatio", JsonValue::number, 0.7),
                    f.orElse("weights", QuizFile::weights, Weights.STANDARD),
                    f.orElse("rules", QuizFile::rules, Rules.STANDARD),
                    f.orElse("blueprint", v -> v.list(QuizFile::row), List.of()),
                    calls));
    return new Opened(quiz, values.stream().anyMatch(v -> v.has("sealed")));
  }

  private static Weights weights(JsonValue value) {
    JsonFields f =
        value.fields("safety", "testChoice", "interpretation", "cause", "repair", "waste");
    return f.make(
        () ->
            new Weights(
                f.get("safety").number(),
                f.get("testChoice").number(),
                f.get("interpretation").number(),
                f.get("cause").number(),
                f.get("repair").number(),
                f.get("waste").number()));
  }

  private static Rules rules(JsonValue value) {
    JsonFields f = value.fields("wallMinutes", "hints");
    return f.make(
        () ->
            new Rules(
                f.orElse("wallMinutes", JsonValue::number, 0.0),
                f.orElse("hints", JsonValue::truth, false)));
  }

  private static BlueprintRow row(JsonValue value) {
    JsonFields f = value.fields("objective", "level", "weight");
    return f.make(
        () ->
            new BlueprintRow(
                f.get("objective").oneOf(Objective.class),
                f.get("level").oneOf(Level.class),
                f.get("weight").number()));
  }

  private static ServiceCall call(JsonValue value, String quiz) {
    JsonFields f =
        value.fields(
            "name",
            "title",
            "complaint",
            "bench",
            "board",
            "hidden",
            "sealed",
            "closed",
            "minutes",
            "parts",
            "objective",
            "level",
            "since");
    Bench bench = BenchField.bench(f.get("bench"));
    String name = LanguageWords.filled(f.get("name"));
    return new ServiceCall(
        name,
        LanguageWords.of(f.get("title")),
        LanguageWords.of(f.get("complaint")),
        bench,
        f.has("board") ? BenchField.board(f.get("board"), bench.design().ignition()) : null,
        f.has("sealed") ? HiddenSeal.opened(f.get("sealed"), quiz, name) : hidden(f.get("hidden")),
        new LinkedHashSet<>(f.orElse("closed", v -> v.list(QuizFile::closed), List.of())),
        count(f.get("minutes"), 1, MOST_MINUTES),
        count(f.get("parts"), 0, MOST_UNITS),
        f.get("objective").oneOf(Objective.class),
        f.get("level").oneOf(Level.class),
        f.has("since") ? f.get("since").oneOf(Recollection.ANSWERS) : null);
  }

  /** What may be wrong: a list of alternatives. */
  static List<Hidden> hidden(JsonValue value) {
    return value.filledList(
        QuizFile::alternative, Message.of(MessageKey.ALLOWED_ENTRIES, Argument.count(1)));
  }

  private static Hidden alternative(JsonValue value) {
    JsonFields f = value.fields("faults");
    List<Hidden.Part> parts = f.get("faults").list(QuizFile::part);
    long kinds = parts.stream().map(Hidden.Part::kind).distinct().count();
    if (parts.size() > 2 || kinds < parts.size()) {
      throw f.get("faults").refused(Message.of(MessageKey.ALLOWED_HIDDEN));
    }
    return new Hidden(parts);
  }

  private static Hidden.Part part(JsonValue value) {
    JsonFields f = value.fields("kind", "severity");
    FaultKind kind = f.get("kind").oneOf(FaultKind.class);
    if (!f.has("severity")) {
      return new Hidden.Part(kind, null);
    }
    Dimension dimension =
        kind.dimension()
            .orElseThrow(
                () -> f.get("severity").refused(Message.of(MessageKey.ALLOWED_NO_SEVERITY)));
    Message allowed =
        Message.of(
            MessageKey.ALLOWED_RANGE,
            Argument.quantity(kind.least(), dimension),
            Argument.quantity(kind.most(), dimension));
    double severity = f.get("severity").typed(dimension, allowed);
    return f.make(() -> new Hidden.Part(kind, Fault.of(kind, severity)));
  }

  private static Work closed(JsonValue value) {
    String id = value.text();
    List<Work> works =
        Stream.<Work[]>of(Look.values(), MeterTest.values()).flatMap(Stream::of).toList();
    String ids = works.stream().map(Work::id).collect(Collectors.joining(", "));
    return works.stream()
        .filter(w -> w.id().equals(id))
        .findFirst()
        .orElseThrow(
            () -> value.refused(Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(ids))));
  }

  static int count(JsonValue value, int least, int most) {
    long number = value.wholeNumber();
    if (!(number >= least && number <= most)) {
      throw value.refused(JsonValue.between(least, most));
    }
    return (int) number;
  }
}
