package halfwave.grading;

import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Appearances;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Sitting;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Marks answer sheets of one quiz by playing them again. Remembers furnaces and thoughts between
 * sheets. Safe for many threads.
 */
public final class Grader {

  private final Quiz quiz;
  private final String quizHash;
  private final String engine;
  private final Outlooks outlooks;
  private final Appearances appearances;
  private final Map<String, Assessor> assessors = new ConcurrentHashMap<>();

  /**
   * Prepares it.
   *
   * @param quiz the quiz
   * @param quizHash its hash, as answer sheets have it
   * @param engine name and version of this program, as answer sheets have it
   * @param outlooks where the judgement comes from
   */
  public Grader(Quiz quiz, String quizHash, String engine, Outlooks outlooks) {
    this(quiz, quizHash, engine, outlooks, new Appearances());
  }

  /** The same where furnaces are known already. */
  Grader(Quiz quiz, String quizHash, String engine, Outlooks outlooks, Appearances appearances) {
    this.quiz = quiz;
    this.quizHash = quizHash;
    this.engine = engine;
    this.outlooks = outlooks;
    this.appearances = appearances;
  }

  /** The quiz. */
  public Quiz quiz() {
    return quiz;
  }

  /** What an expert thinks on one of its calls. */
  public Assessor assessor(ServiceCall call) {
    return assessors.computeIfAbsent(call.name(), n -> new Assessor(call, outlooks.of(call)));
  }

  /** All marks of a sheet. */
  public SheetMarks grade(AnswerSheet sheet) {
    List<CallMarks> calls = quiz.calls().stream().map(call -> grade(call, sheet)).toList();
    double total = SheetMarks.mean(quiz, calls, CallMarks::totalRatio);
    return new SheetMarks(sheet, calls, total, total >= quiz.passRatio(), remarks(sheet));
  }

  /** A call of a sheet played again, as it is marked; empty where it was not begun. */
  public Optional<Visit> visit(ServiceCall call, AnswerSheet sheet) {
    Variant variant = Variant.of(call, quiz.seed(), sheet.learner());
    return sheet
        .call(call.name())
        .map(c -> Replay.of(variant, c, quiz.rules().hints(), appearances).visit());
  }

  /** The marks of one of its calls. */
  CallMarks grade(ServiceCall call, AnswerSheet sheet) {
    Variant variant = Variant.of(call, quiz.seed(), sheet.learner());
    CallSheet handed = sheet.call(call.name()).orElse(null);
    if (handed == null || (!handed.worked() && handed.conclusion() == null)) {
      return Marker.missing(call, variant.cause(), quiz.weights());
    }
    Replay replay = Replay.of(variant, handed, quiz.rules().hints(), appearances);
    return new Marker(assessor(call), replay.visit(), handed.conclusion())
        .marks(quiz.weights(), replay.remarks());
  }

  private List<Message> remarks(AnswerSheet sheet) {
    List<Message> remarks = new ArrayList<>();
    if (!sheet.engine().equals(engine)) {
      remarks.add(
          Message.of(
              MessageKey.GRADE_OTHER_ENGINE, Argument.text(sheet.engine()), Argument.text(engine)));
    }
    if (!sheet.quizHash().equals(quizHash)) {
      remarks.add(Message.of(MessageKey.GRADE_OTHER_QUIZ, Argument.text(sheet.quiz())));
    }
    for (CallSheet call : sheet.calls()) {
      if (quiz.call(call.call()).isEmpty()) {
        remarks.add(Message.of(MessageKey.GRADE_NO_SUCH_CALL, Argument.text(call.call())));
      }
    }
    for (Sitting.Restart restart : sheet.sitting().restarts()) {
      remarks.add(
          Message.of(
              restart.known() ? MessageKey.GRADE_RESTARTED : MessageKey.GRADE_RESTARTED_UNKNOWN,
              Argument.count(restart.fromSeconds() / 60),
              Argument.count(restart.toSeconds() / 60)));
    }
    double limit = 60 * quiz.rules().wallMinutes() * sheet.extraTimeRatio();
    long last = sheet.lastMoveSeconds();
    if (limit > 0 && last > limit) {
      remarks.add(
          Message.of(
              MessageKey.GRADE_OVER_TIME,
              Argument.count(last / 60),
              Argument.count(Math.round(limit / 60))));
    }
    return remarks;
  }
}
