package halfwave.quiz;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.fault.FaultGroup;
import halfwave.fault.FaultKind;
import halfwave.grading.Expert;
import halfwave.grading.ExpertPath;
import halfwave.grading.Grader;
import halfwave.grading.SheetMarks;
import halfwave.io.JsonFile;
import halfwave.io.evidence.CachedOutlooks;
import halfwave.io.evidence.CaseCache;
import halfwave.io.quiz.Engine;
import halfwave.io.quiz.QuizFile;
import halfwave.io.quiz.QuizText;
import halfwave.work.Look;
import halfwave.work.Repair;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A small quiz and a class that took it, all invented; with what names may hold. */
public final class InventedClass {

  // all meet furnace number one of each call: every other one takes seconds to play

  /** Who works as an expert does. */
  private static final String FIRST = "A-379";

  /** Who stops early. */
  private static final String LAST = "A-655";

  /** A name that a spreadsheet would take for a formula. */
  public static final String FORMULA = "=2+6";

  /** A name with everything that has to be quoted. */
  public static final String QUOTED = "Lane, \"Two\nRows\" 931";

  private static final Quiz QUIZ = read();
  private static final CachedOutlooks OUTLOOKS =
      new CachedOutlooks(new CaseCache(null), (done, all) -> true);
  private static final Grader GRADER = grader(QUIZ);
  private static final Appearances APPEARANCES = new Appearances();

  private InventedClass() {}

  private static Quiz read() {
    String name = "three-cold-houses.json";
    try (InputStream in = Objects.requireNonNull(Quiz.class.getResourceAsStream(name), name)) {
      return QuizFile.of(JsonFile.parse(name, in.readAllBytes())).quiz();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The quiz. */
  public static Quiz quiz() {
    return QUIZ;
  }

  /** The same with one of its calls alone. */
  public static Quiz only(int call) {
    return new Quiz(
        QUIZ.name(),
        QUIZ.title(),
        QUIZ.about(),
        QUIZ.seed(),
        QUIZ.passRatio(),
        QUIZ.weights(),
        QUIZ.rules(),
        List.of(),
        List.of(QUIZ.calls().get(call)));
  }

  /** The grader of such a quiz. */
  public static Grader grader(Quiz quiz) {
    return new Grader(quiz, QuizText.hash(quiz), Engine.text(), OUTLOOKS);
  }

  /** Its grader. */
  public static Grader grader() {
    return GRADER;
  }

  /** What is remembered of its benches. */
  public static Appearances appearances() {
    return APPEARANCES;
  }

  private static final class Marks {
    static final List<SheetMarks> ALL = sheets().stream().map(GRADER::grade).toList();
  }

  /** The marks of the class, in the order of its sheets; once. */
  public static List<SheetMarks> marks() {
    return Marks.ALL;
  }

  /** One who works as an expert does, one who guesses, one in danger, one who stops early. */
  public static List<AnswerSheet> sheets() {
    return Sheets.ALL;
  }

  private static final class Sheets {
    static final List<AnswerSheet> ALL = made();
  }

  private static List<AnswerSheet> made() {
    return List.of(
        sheet(FIRST, QUIZ.calls().stream().map(c -> expert(c, FIRST)).toList()),
        sheet(QUOTED, QUIZ.calls().stream().map(c -> guesser(c, QUOTED)).toList()),
        sheet(
            FORMULA,
            List.of(
                endangered(QUIZ.calls().get(0), FORMULA), expert(QUIZ.calls().get(1), FORMULA))),
        sheet(LAST, List.of(expert(QUIZ.calls().get(2), LAST))));
  }

  private static AnswerSheet sheet(String learner, List<CallSheet> calls) {
    return new AnswerSheet(Engine.text(), QUIZ.name(), QuizText.hash(QUIZ), learner, 1, calls);
  }

  private static CallSheet expert(ServiceCall call, String learner) {
    Variant variant = Variant.of(call, QUIZ.seed(), learner);
    ExpertPath path = ExpertPath.of(GRADER.assessor(call), variant, APPEARANCES);
    return sheet(path.end(), Expert.conclusion(variant.cause()));
  }

  private static CallSheet guesser(ServiceCall call, String learner) {
    List<Move> moves =
        List.of(
            new Move.Note("it is always the board"),
            new Move.Repaired(Repair.REPLACE_BOARD),
            new Move.Checked(new Check.Light()),
            new Move.Suspects(Set.of(FaultGroup.BOARD, FaultGroup.GAS)),
            new Move.Checked(new Check.Call()));
    return played(
        Variant.of(call, QUIZ.seed(), learner),
        moves,
        new Conclusion(Cause.of(FaultKind.BOARD_FAULT), null, Repair.REPLACE_BOARD));
  }

  private static CallSheet endangered(ServiceCall call, String learner) {
    Check rod =
        call.checks().stream()
            .filter(c -> c instanceof Check.Looked looked && looked.look() == Look.ROD)
            .findFirst()
            .orElseThrow();
    List<Move> moves =
        List.of(
            new Move.Checked(new Check.Call()),
            new Move.Checked(rod),
            new Move.Signal(true),
            new Move.Power(true),
            new Move.Checked(new Check.Light()),
            new Move.Tempted(Temptation.JUMPER_AT_THE_ROD));
    return played(Variant.of(call, QUIZ.seed(), learner), moves, null);
  }

  private static CallSheet played(
      Variant variant, List<Move> moves, @Nullable Conclusion conclusion) {
    Visit visit = Visit.begin(variant, APPEARANCES, false);
    for (Move move : moves) {
      boolean works = move instanceof Move.Checked || move instanceof Move.Repaired;
      // who puts a signal in throws the switches himself
      visit = works && !visit.signal() ? Ready.forMove(visit, move).after(move) : visit.after(move);
    }
    return sheet(visit, conclusion);
  }

  private static CallSheet sheet(Visit visit, @Nullable Conclusion conclusion) {
    List<CallSheet.Logged> logged = new ArrayList<>();
    for (Done done : visit.log()) {
      logged.add(
          new CallSheet.Logged(done.move(), done.minute(), 30L * logged.size(), Found.text(done)));
    }
    return new CallSheet(visit.variant().call().name(), logged, conclusion);
  }
}
