package halfwave.cli;

import halfwave.display.Sentences;
import halfwave.io.AtomicFile;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.io.bench.ChangeWords;
import halfwave.io.quiz.QuizText;
import halfwave.io.quiz.ShippedQuizzes;
import halfwave.lesson.Words;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Assembly;
import halfwave.quiz.BlueprintRow;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import halfwave.quiz.Quiz;
import halfwave.quiz.Rules;
import halfwave.quiz.ServiceCall;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a quiz together from a bank. */
@Command(name = "new")
final class QuizNewCommand implements Callable<Integer> {

  private static final String ROW = "--row";
  private static final String CALL = "--call";
  private static final String REPLACE = "--replace";

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "FILE", descriptionKey = "quiz-new-file")
  private @Nullable Path file;

  @Option(names = "--bank", paramLabel = "QUIZ", descriptionKey = "quiz-bank")
  private @Nullable Path bank;

  @Option(names = ROW, paramLabel = "OBJECTIVE:LEVEL[:COUNT[:WEIGHT]]", descriptionKey = "quiz-row")
  private List<String> rows = new ArrayList<>();

  @Option(names = CALL, paramLabel = "NAME", descriptionKey = "quiz-call")
  private List<String> calls = new ArrayList<>();

  @Option(names = "--name", paramLabel = "NAME", descriptionKey = "quiz-name")
  private @Nullable String name;

  @Option(names = "--seed", paramLabel = "NUMBER", descriptionKey = "quiz-seed")
  private long seed = 1;

  @Option(names = "--wall-minutes", paramLabel = "MINUTES", descriptionKey = "quiz-wall-minutes")
  private double wallMinutes;

  @Option(names = "--hints", descriptionKey = "quiz-hints")
  private boolean hints;

  @Option(names = "--hand-out", paramLabel = "FILE", descriptionKey = "quiz-hand-out")
  private @Nullable Path handOut;

  @Option(names = REPLACE, descriptionKey = "replace")
  private boolean replace;

  @Override
  public Integer call() {
    Path target = Objects.requireNonNull(file);
    Quiz from = bank == null ? ShippedQuizzes.bank() : QuizArgument.open(bank);
    Quiz made = ruled(assembled(from, name == null ? plainName(target) : name));
    AtomicFile.write(target, QuizText.of(made), replace, REPLACE);
    if (handOut != null) {
      AtomicFile.write(handOut, QuizText.sealed(made), replace, REPLACE);
    }
    standard.out().print(standard.json() ? QuizText.of(made) : listed(made));
    return 0;
  }

  private static String plainName(Path target) {
    String plain = String.valueOf(target.getFileName()).replaceAll("\\.json$", "");
    return plain.isBlank() ? "quiz" : plain;
  }

  private Quiz ruled(Quiz quiz) {
    if (!(wallMinutes >= 0 && wallMinutes <= Rules.MOST_MINUTES)) {
      throw new Typed(standard.spec().qualifiedName(), "--wall-minutes")
          .refused(Double.toString(wallMinutes), JsonValue.between(0, Rules.MOST_MINUTES));
    }
    return quiz.with(new Rules(wallMinutes, hints));
  }

  private Quiz assembled(Quiz from, String quizName) {
    Words title = new Words(Map.of(Words.FALLBACK, quizName));
    if (calls.isEmpty()) {
      List<Assembly> wanted = rows.isEmpty() ? usual(from) : rows.stream().map(this::row).toList();
      Assembly.lacking(from, wanted)
          .ifPresent(
              a -> {
                throw new Typed(standard.spec().qualifiedName(), ROW)
                    .refused(text(a), lacks(from, a));
              });
      return Assembly.drawn(from, quizName, title, wanted, seed);
    }
    List<ServiceCall> chosen = calls.stream().distinct().map(c -> named(from, c)).toList();
    List<BlueprintRow> weights = rows.stream().map(this::row).map(Assembly::row).toList();
    return Assembly.of(from, quizName, title, weights, chosen, seed);
  }

  private ServiceCall named(Quiz from, String wanted) {
    String names = from.calls().stream().map(ServiceCall::name).collect(Collectors.joining(", "));
    return from.call(wanted)
        .orElseThrow(
            () ->
                new Typed(standard.spec().qualifiedName(), CALL)
                    .refused(wanted, Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(names))));
  }

  /** One call of each objective, of the first level that has one. */
  private static List<Assembly> usual(Quiz from) {
    List<Assembly> usual = new ArrayList<>();
    for (Objective objective : Objective.values()) {
      for (Level level : Level.values()) {
        BlueprintRow row = new BlueprintRow(objective, level, 1);
        if (!Assembly.fitting(from, row).isEmpty()) {
          usual.add(new Assembly(row, 1));
          break;
        }
      }
    }
    return usual;
  }

  private static String text(Assembly a) {
    return JsonValue.spelling(a.row().objective())
        + ":"
        + JsonValue.spelling(a.row().level())
        + ":"
        + a.count();
  }

  private static Message lacks(Quiz from, Assembly a) {
    return Message.of(
        MessageKey.ALLOWED_IN_BANK, Argument.count(Assembly.fitting(from, a.row()).size()));
  }

  private Assembly row(String text) {
    Typed where = new Typed(standard.spec().qualifiedName(), ROW);
    String[] parts = text.split(":", -1);
    if (parts.length < 2 || parts.length > 4) {
      throw where.refused(text, Message.of(MessageKey.ALLOWED_ROW));
    }
    try {
      int count = parts.length > 2 ? Integer.parseInt(parts[2]) : 1;
      double weight = parts.length > 3 ? Double.parseDouble(parts[3]) : 1;
      return new Assembly(
          new BlueprintRow(
              ChangeWords.oneOf(where, Objective.class, parts[0]),
              ChangeWords.oneOf(where, Level.class, parts[1]),
              weight),
          count);
    } catch (IllegalArgumentException e) {
      throw where.refused(text, Message.of(MessageKey.ALLOWED_ROW));
    }
  }

  private String listed(Quiz quiz) {
    Sentences sentences = standard.sentences();
    TextTable table =
        new TextTable(
            QuizArgument.headings(standard, "call", "objective", "level", "minutes", "cost"), 3);
    for (ServiceCall call : quiz.calls()) {
      table.add(
          List.of(
              call.name(),
              sentences.name(call.objective()),
              sentences.name(call.level()),
              Integer.toString(call.minutes()),
              Integer.toString(call.partsUnits())));
    }
    return table.toString();
  }
}
