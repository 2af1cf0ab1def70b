package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.grading.CallCheck;
import halfwave.grading.Grader;
import halfwave.grading.Routine;
import halfwave.grading.RoutineTrial;
import halfwave.io.quiz.RoutineFile;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Appearances;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tries every call of a quiz on each of its furnaces. */
@Command(name = "check")
final class QuizCheckCommand implements Callable<Integer> {

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "QUIZ", descriptionKey = "quiz-file")
  private @Nullable Path file;

  @Option(names = "--routine", paramLabel = "FILE", descriptionKey = "quiz-routine")
  private @Nullable Path routine;

  @Override
  public Integer call() {
    Path from = Objects.requireNonNull(file);
    Quiz quiz = QuizArgument.open(from);
    if (routine != null) {
      return compared(quiz, RoutineFile.read(routine));
    }
    Progress progress = new Progress(standard);
    Grader grader = QuizArgument.grader(quiz, progress);
    Appearances appearances = new Appearances();
    List<CallCheck> checks = new ArrayList<>();
    for (ServiceCall call : quiz.calls()) {
      checks.add(CallCheck.of(grader, call, appearances));
      progress.goOn(checks.size(), quiz.calls().size());
    }
    progress.end();
    standard.out().print(standard.json() ? json(checks) : text(checks));
    String bad =
        checks.stream()
            .filter(c -> !c.sound())
            .map(c -> c.call().name())
            .collect(Collectors.joining(", "));
    if (!bad.isEmpty()) {
      throw new CommandFailedException(
          Failures.BAD_INPUT,
          Message.of(MessageKey.QUIZ_UNSOUND, Argument.text(from.toString()), Argument.text(bad)));
    }
    return 0;
  }

  /** An order of work beside an expert's, on the first furnace of each call. */
  private int compared(Quiz quiz, Routine own) {
    Progress progress = new Progress(standard);
    Grader grader = QuizArgument.grader(quiz, progress);
    Appearances appearances = new Appearances();
    TextTable table =
        new TextTable(
            QuizArgument.headings(
                standard, "call", "whole", "minutes", "cost", "expert-minutes", "expert-cost"),
            2);
    ObjectNode root = JsonNodeFactory.instance.objectNode().put("routine", own.name());
    ArrayNode calls = root.putArray("calls");
    for (ServiceCall call : quiz.calls()) {
      RoutineTrial trial = RoutineTrial.of(grader, own, call, appearances);
      table.add(
          List.of(
              call.name(),
              standard.sentences().truth(trial.whole()),
              Integer.toString(trial.minutes()),
              Integer.toString(trial.partsUnits()),
              Integer.toString(trial.expertMinutes()),
              Integer.toString(trial.expertUnits())));
      calls
          .addObject()
          .put("call", call.name())
          .put("whole", trial.whole())
          .put("minutes", trial.minutes())
          .put("partsUnits", trial.partsUnits())
          .put("expertMinutes", trial.expertMinutes())
          .put("expertPartsUnits", trial.expertUnits());
      progress.goOn(calls.size(), quiz.calls().size());
    }
    progress.end();
    standard.out().print(standard.json() ? root.toPrettyString() + "\n" : table.toString());
    return 0;
  }

  private String text(List<CallCheck> checks) {
    TextTable table =
        new TextTable(
            QuizArgument.headings(
                standard, "call", "solvable", "tellable", "expert-minutes", "cost", "mean-mark"),
            3);
    for (CallCheck c : checks) {
      table.add(
          List.of(
              c.call().name(),
              standard.sentences().truth(c.solved()),
              standard.sentences().truth(c.tellable()),
              Long.toString(Math.round(c.expertMinutes())),
              Long.toString(Math.round(c.expertUnits())),
              String.format(Locale.ROOT, "%.0f %%", 100 * c.difficultyRatio())));
    }
    return table.toString();
  }

  private static String json(List<CallCheck> checks) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode calls = root.putArray("calls");
    for (CallCheck c : checks) {
      calls
          .addObject()
          .put("call", c.call().name())
          .put("solvable", c.solved())
          .put("tellable", c.tellable())
          .put("expertMinutes", c.expertMinutes())
          .put("expertPartsUnits", c.expertUnits())
          .put("difficultyRatio", c.difficultyRatio());
    }
    return root.toPrettyString() + "\n";
  }
}
