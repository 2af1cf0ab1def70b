package halfwave.quiz;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.fault.FaultGroup;
import halfwave.fault.FaultKind;
import halfwave.grading.ExpertPath;
import halfwave.grading.Grader;
import halfwave.grading.Places;
import halfwave.grading.SheetMarks;
import halfwave.io.CachedOutlooks;
import halfwave.io.CaseCache;
import halfwave.io.Engine;
import halfwave.io.JsonFile;
import halfwave.io.PriorsFile;
import halfwave.io.QuizFile;
import halfwave.io.QuizText;
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

  /** A name that a spreadsheet would take for a formula. */
  public static final String FORMULA = "=2+3";

  /** A name with everything that has to be quoted. */
  public static final String QUOTED = "Lane, \"Two\nRows\"";

  private static final Quiz QUIZ = read();
  private static final CachedOutlooks OUTLOOKS =
      new CachedOutlooks(new CaseCache(null), PriorsFile.shipped(), (done, all) -> true);
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
        sheet("A-01", QUIZ.calls().stream().map(c -> expert(c, "A-01")).toList()),
        sheet(QUOTED, QUIZ.calls().stream().map(c -> guesser(c, QUOTED)).toList()),
        sheet(
            FORMULA,
            List.of(
                endangered(QUIZ.calls().get(0), FORMULA), expert(QUIZ.calls().get(1), FORMULA))),
        sheet("A-04", List.of(expert(QUIZ.calls().get(2), "A-04"))));
  }

  private static AnswerSheet sheet(String learner, List<CallSheet> calls) {
    return new AnswerSheet(Engine.text(), QUIZ.name(), QuizText.hash(QUIZ), learner, 1, calls);
  }

  private static CallSheet expert(ServiceCall call, String learner) {
    Variant variant = Variant.of(call, QUIZ.seed(), learner);
    List<Move> moves = new ArrayList<>(List.of(new Move.Checked(new Check.Call())));
    ExpertPath path = ExpertPath.of(GRADER.assessor(call), variant, APPEARANCES);
    path.steps().stream().map(ExpertPath.Step::move).forEach(moves::add);
    moves.add(1, new Move.Suspects(Set.of(FaultGroup.values())));
    Cause truth = variant.cause();
    return played(
        variant,
        moves,
        new Conclusion(truth, Places.of(truth).iterator().next(), Places.repairs(truth).get(0)));
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
            new Move.Power(false),
            new Move.Gas(false),
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
      Visit ready = ready(visit, move);
      visit = ready.refusal(move).isPresent() ? ready : ready.after(move);
    }
    List<CallSheet.Logged> logged = new ArrayList<>();
    for (Done done : visit.log()) {
      logged.add(
          new CallSheet.Logged(done.move(), done.minute(), 30L * logged.size(), Found.text(done)));
    }
    return new CallSheet(variant.call().name(), logged, conclusion);
  }

  /** Who puts a signal in throws the switches himself. */
  private static Visit ready(Visit visit, Move move) {
    boolean works = move instanceof Move.Checked || move instanceof Move.Repaired;
    return works && !visit.signal() ? Ready.forMove(visit, move) : visit;
  }
}
