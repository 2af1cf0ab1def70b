package halfwave.gui.presentation.quiz;

import halfwave.io.quiz.Engine;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Appearances;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Move;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Sitting;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A learner at a quiz: the answer sheet, and where its moves have led. Immutable.
 *
 * @param quiz the quiz
 * @param sheet what would be handed in now
 * @param visits the furnace of each call that was begun, by the name of the call
 * @param appearances what is remembered of benches
 */
public record Attempt(
    Quiz quiz, AnswerSheet sheet, Map<String, Visit> visits, Appearances appearances) {

  /** How far a call has come. */
  public enum Standing {
    /** Nobody has been there yet. */
    NEW,
    /** It is being worked at. */
    BEGUN,
    /** A conclusion was handed in. */
    HANDED_IN,
    /** It ended before its conclusion. */
    STOPPED
  }

  /** Takes a copy. */
  public Attempt {
    visits = Map.copyOf(visits);
  }

  /**
   * Nothing is done yet.
   *
   * @param quizHash of the quiz
   * @param learner name or code
   * @param extraTimeRatio time by the wall over that of the others (1)
   */
  public static Attempt begin(
      Quiz quiz, String quizHash, String learner, double extraTimeRatio, Appearances appearances) {
    AnswerSheet empty =
        new AnswerSheet(Engine.text(), quiz.name(), quizHash, learner, extraTimeRatio, List.of());
    return new Attempt(quiz, empty, Map.of(), appearances);
  }

  /** Where a sheet had come to, its moves played again; nothing where one of them cannot be. */
  public static Optional<Attempt> resumed(Quiz quiz, AnswerSheet sheet, Appearances appearances) {
    Map<String, Visit> visits = new HashMap<>();
    for (CallSheet handed : sheet.calls()) {
      ServiceCall call = quiz.call(handed.call()).orElse(null);
      if (call == null) {
        return Optional.empty();
      }
      Visit visit = visit(quiz, call, sheet.learner(), appearances);
      for (CallSheet.Logged logged : handed.moves()) {
        if (visit.refusal(logged.move()).isPresent()) {
          return Optional.empty();
        }
        visit = visit.after(logged.move());
      }
      visits.put(call.name(), visit);
    }
    return Optional.of(new Attempt(quiz, sheet, visits, appearances));
  }

  private static Visit visit(Quiz quiz, ServiceCall call, String learner, Appearances appearances) {
    Variant variant = Variant.of(call, quiz.seed(), learner);
    return Visit.begin(variant, appearances, quiz.rules().hints());
  }

  /** Goes to a call; one that was begun stays as it is. */
  public Attempt opened(ServiceCall call) {
    if (visits.containsKey(call.name())) {
      return this;
    }
    CallSheet empty = new CallSheet(call.name(), List.of(), null);
    return with(empty, call, visit(quiz, call, sheet.learner(), appearances));
  }

  /**
   * After a move at a call that was begun.
   *
   * @param wallSeconds seconds by the clock on the wall since the quiz began
   * @throws IllegalArgumentException if the move is refused
   */
  public Attempt after(ServiceCall call, Move move, long wallSeconds) {
    Visit visit = at(call).after(move);
    CallSheet before = sheet.call(call.name()).orElseThrow();
    List<CallSheet.Logged> moves = new ArrayList<>(before.moves());
    moves.add(CallSheet.Logged.of(visit.last(), wallSeconds));
    return with(new CallSheet(call.name(), moves, before.conclusion()), call, visit);
  }

  /** After the conclusion of a call that was begun. */
  public Attempt concluded(ServiceCall call, Conclusion conclusion) {
    CallSheet before = sheet.call(call.name()).orElseThrow();
    CallSheet after = new CallSheet(call.name(), before.moves(), conclusion);
    return with(after, call, at(call));
  }

  private Attempt with(CallSheet handed, ServiceCall call, Visit visit) {
    Map<String, Visit> others = new HashMap<>(visits);
    others.put(call.name(), visit);
    return new Attempt(quiz, sheet.with(handed), others, appearances);
  }

  /**
   * The furnace of a call.
   *
   * @throws NullPointerException if it was not begun
   */
  Visit at(ServiceCall call) {
    return Objects.requireNonNull(visits.get(call.name()), call.name());
  }

  /** How far a call has come. */
  public Standing standing(ServiceCall call) {
    Visit visit = visits.get(call.name());
    if (visit == null) {
      return Standing.NEW;
    } else if (sheet.call(call.name()).map(c -> c.conclusion() != null).orElse(false)) {
      return Standing.HANDED_IN;
    }
    return visit.ending().isPresent() ? Standing.STOPPED : Standing.BEGUN;
  }

  /** Whether there is nothing more to do. */
  public boolean over() {
    return quiz.calls().stream()
        .map(this::standing)
        .allMatch(s -> s == Standing.HANDED_IN || s == Standing.STOPPED);
  }

  /** The same, begun then. */
  Attempt begunAt(long nowSeconds) {
    return with(new Sitting(nowSeconds, List.of(), false));
  }

  /** The same, gone on with then. */
  Attempt goneOnAt(long nowSeconds) {
    return with(sheet.sitting().goneOn(sheet.wallSeconds(), nowSeconds));
  }

  /** The same, ended by the learner. */
  Attempt ended() {
    return with(sheet.sitting().ended());
  }

  private Attempt with(Sitting sitting) {
    return new Attempt(quiz, sheet.with(sitting), visits, appearances);
  }

  /** Seconds by the clock on the wall at the last that is known; zero at the beginning. */
  public long wallSeconds() {
    return sheet.wallSeconds();
  }
}
