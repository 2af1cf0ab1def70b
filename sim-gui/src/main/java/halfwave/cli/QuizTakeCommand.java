package halfwave.cli;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Reasons;
import halfwave.fault.FaultKind;
import halfwave.grading.Coach;
import halfwave.io.AtomicFile;
import halfwave.io.Typed;
import halfwave.io.bench.ChangeWords;
import halfwave.io.quiz.Engine;
import halfwave.io.quiz.MoveWords;
import halfwave.io.quiz.QuizFile;
import halfwave.io.quiz.QuizText;
import halfwave.io.quiz.SheetFile;
import halfwave.io.quiz.SheetLock;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Appearances;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Done;
import halfwave.quiz.Move;
import halfwave.quiz.Moves;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import halfwave.work.FurnacePart;
import halfwave.work.Repair;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * Takes a quiz a few moves at a time; the answer sheet holds what was done before. The clock on the
 * wall is not kept here.
 */
@Command(name = "take")
final class QuizTakeCommand implements Callable<Integer> {

  private static final String DO = "--do";
  private static final String NOTHING = "nothing";

  @Mixin private Standard standard = new Standard();

  @Parameters(index = "0", paramLabel = "QUIZ", descriptionKey = "quiz-any-file")
  private @Nullable Path file;

  @Parameters(index = "1", paramLabel = "SHEET", descriptionKey = "quiz-sheet")
  private @Nullable Path sheetFile;

  @Option(names = "--learner", paramLabel = "CODE", descriptionKey = "quiz-learner")
  private @Nullable String learner;

  @Option(names = "--call", paramLabel = "NAME", descriptionKey = "quiz-take-call")
  private @Nullable String callName;

  @Option(names = DO, paramLabel = "MOVE", descriptionKey = "quiz-do")
  private List<String> moves = new ArrayList<>();

  @Option(names = "--cause", paramLabel = "KIND", descriptionKey = "quiz-cause")
  private @Nullable String cause;

  @Option(names = "--place", paramLabel = "PART", descriptionKey = "quiz-place")
  private @Nullable String place;

  @Option(names = "--repair", paramLabel = "REPAIR", descriptionKey = "quiz-repair")
  private @Nullable String repair;

  @Override
  public Integer call() {
    Quiz quiz = QuizFile.read(Objects.requireNonNull(file)).quiz();
    Path target = Objects.requireNonNull(sheetFile);
    SheetLock lock = SheetLock.of(target);
    try {
      return take(quiz, target);
    } finally {
      lock.close();
    }
  }

  private int take(Quiz quiz, Path target) {
    AnswerSheet sheet = Files.exists(target) ? SheetFile.read(target, quiz) : begun(quiz);
    if (sheet.sitting().handedIn()) {
      throw bad(Message.of(MessageKey.QUIZ_SHEET_ENDED, Argument.text(target.toString())));
    }
    ServiceCall chosen = chosen(quiz, sheet);
    CallSheet before =
        sheet.call(chosen.name()).orElse(new CallSheet(chosen.name(), List.of(), null));
    List<CallSheet.Logged> logged = new ArrayList<>(before.moves());
    Visit visit = again(quiz, sheet, chosen, logged);
    say(complaint(chosen, visit));
    if (before.conclusion() != null) {
      throw bad(Message.of(MessageKey.QUIZ_CONCLUDED, Argument.text(chosen.name())));
    }
    for (String text : moves) {
      Typed where = new Typed(standard.spec().qualifiedName(), DO);
      Move move = MoveWords.move(where, text, chosen.ignition());
      visit
          .refusal(move)
          .ifPresent(
              why -> {
                throw where.refused(text, Message.of(MessageKey.ALLOWED_NOW, Argument.name(why)));
              });
      visit = visit.after(move);
      Done done = visit.last();
      logged.add(CallSheet.Logged.of(done, 0));
      // the sheet is its own journal
      sheet = sheet.with(new CallSheet(chosen.name(), logged, null));
      AtomicFile.write(target, SheetFile.text(sheet));
      say(line(quiz, chosen, visit, done));
    }
    if (cause != null) {
      sheet = sheet.with(new CallSheet(chosen.name(), logged, conclusion(cause)));
      AtomicFile.write(target, SheetFile.text(sheet));
      say(Message.of(MessageKey.QUIZ_HANDED_IN, Argument.text(chosen.name())));
    }
    return 0;
  }

  private void say(Message message) {
    standard.out().println(standard.sentences().text(message));
  }

  private AnswerSheet begun(Quiz quiz) {
    if (learner == null || learner.isBlank()) {
      throw standard.missing("--learner");
    }
    return new AnswerSheet(Engine.text(), quiz.name(), QuizText.hash(quiz), learner, 1, List.of());
  }

  private static CommandFailedException bad(Message message) {
    return new CommandFailedException(Failures.BAD_INPUT, message);
  }

  /** The named one, or the first that is not concluded. */
  private ServiceCall chosen(Quiz quiz, AnswerSheet sheet) {
    String names = quiz.calls().stream().map(ServiceCall::name).collect(Collectors.joining(", "));
    if (callName != null) {
      String wanted = callName;
      return quiz.call(wanted)
          .orElseThrow(
              () ->
                  new Typed(standard.spec().qualifiedName(), "--call")
                      .refused(
                          wanted, Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(names))));
    }
    return quiz.calls().stream()
        .filter(c -> sheet.call(c.name()).map(s -> s.conclusion() == null).orElse(true))
        .findFirst()
        .orElseThrow(() -> bad(Message.of(MessageKey.QUIZ_ALL_DONE, Argument.text(quiz.name()))));
  }

  private static Visit again(
      Quiz quiz, AnswerSheet sheet, ServiceCall call, List<CallSheet.Logged> logged) {
    Visit visit =
        Visit.begin(
            Variant.of(call, quiz.seed(), sheet.learner()),
            new Appearances(),
            quiz.rules().hints());
    for (CallSheet.Logged done : logged) {
      if (visit.refusal(done.move()).isPresent()) {
        throw bad(
            Message.of(
                MessageKey.QUIZ_SHEET_IMPOSSIBLE,
                Argument.text(call.name()),
                Argument.nested(Moves.said(done.move()))));
      }
      visit = visit.after(done.move());
    }
    return visit;
  }

  private Message complaint(ServiceCall call, Visit visit) {
    return Message.of(
        MessageKey.QUIZ_CALL,
        Argument.text(call.title().in(standard.language().locale())),
        Argument.text(call.complaint().in(standard.language().locale())),
        Argument.count(visit.minutes()),
        Argument.count(call.minutes()),
        Argument.count(visit.partsUnits()),
        Argument.count(call.partsUnits()));
  }

  private Message line(Quiz quiz, ServiceCall call, Visit visit, Done done) {
    Argument minute = Argument.count(done.minute());
    Argument move = Argument.nested(Moves.said(done.move()));
    if (done.danger() != null) {
      return Message.of(MessageKey.QUIZ_STOPPED, minute, move, Argument.name(done.danger()));
    } else if (done.outcome() != null) {
      return Message.of(
          MessageKey.QUIZ_FOUND, minute, move, Argument.nested(Reasons.said(done.outcome())));
    } else if (done.move() instanceof Move.Hint hint) {
      Progress progress = new Progress(standard);
      Coach coach = new Coach(QuizArgument.grader(quiz, progress).assessor(call));
      return Message.of(
          MessageKey.QUIZ_FOUND, minute, move, Argument.nested(coach.hint(visit, hint.grade())));
    }
    return Message.of(MessageKey.QUIZ_DID, minute, move);
  }

  private Conclusion conclusion(String text) {
    Typed where = new Typed(standard.spec().qualifiedName(), "--cause");
    List<FaultKind> kinds =
        text.equals(NOTHING)
            ? List.of()
            : Stream.of(text.split("\\+", -1))
                .map(k -> ChangeWords.oneOf(where, FaultKind.class, k))
                .distinct()
                .toList();
    if (kinds.size() > 2) {
      throw where.refused(text, Message.of(MessageKey.ALLOWED_HIDDEN));
    }
    return new Conclusion(
        new Cause(kinds),
        one("--place", FurnacePart.class, place),
        one("--repair", Repair.class, repair));
  }

  private <E extends Enum<E>> @Nullable E one(String option, Class<E> type, @Nullable String text) {
    return text == null
        ? null
        : ChangeWords.oneOf(new Typed(standard.spec().qualifiedName(), option), type, text);
  }
}
