package halfwave.grading;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.fault.FaultGroup;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Appearances;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Conclusion;
import halfwave.quiz.InventedClass;
import halfwave.quiz.Move;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Temptation;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What holds of marks whatever the sheets. */
class GraderPropertyTest {

  private static final int LEARNERS = 4;

  private static final Quiz QUIZ = InventedClass.quiz();

  @Test
  void marksAreTheSameEverywhere() {
    List<SheetMarks> here = InventedClass.marks();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      Grader elsewhere = InventedClass.grader(QUIZ);
      List<SheetMarks> there = InventedClass.sheets().stream().map(elsewhere::grade).toList();
      assertThat(there).isEqualTo(here);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void allMarksAreSharesAndTheGateHolds() {
    for (SheetMarks sheet : InventedClass.marks()) {
      for (CallMarks call : sheet.calls()) {
        assertThat(call.totalRatio()).isBetween(0.0, 1.0);
        call.marks().forEach(m -> assertThat(m.ratio()).isBetween(0.0, 1.0));
        call.marks().forEach(m -> assertThat(m.reasons()).isNotEmpty());
        double most = call.facts().dangerous() > 0 ? Criterion.GATE_RATIO : 1;
        assertThat(call.totalRatio()).isLessThanOrEqualTo(most);
      }
    }
  }

  @Test
  void whoWorksLikeAnExpertGetsMoreThanWhoGuesses() {
    List<SheetMarks> marks = InventedClass.marks();
    assertThat(marks.get(0).totalRatio()).isGreaterThan(marks.get(1).totalRatio());
  }

  @Test
  void aCallThatWasNotHandedInGetsNothing() {
    SheetMarks last = InventedClass.marks().get(3);
    assertThat(last.calls().get(0).facts().done()).isFalse();
    assertThat(last.calls().get(0).totalRatio()).isZero();
  }

  /** Nor does one that was opened and left, whatever was thought or switched meanwhile. */
  @Test
  void aCallThatWasOnlyOpenedGetsNothing() {
    Visit left =
        begun("nobody")
            .after(new Move.Power(false))
            .after(new Move.Suspects(EnumSet.allOf(FaultGroup.class)));
    CallMarks marks = marks(left, null);
    assertThat(marks.facts().done()).isFalse();
    assertThat(marks.totalRatio()).isZero();
  }

  /** It pays neither to be stopped at once nor to look once and find nothing wrong. */
  @Test
  void whoFindsNothingSavesNothing() {
    Visit begun = begun("nobody");
    Visit stopped = begun.after(new Move.Tempted(Temptation.JUMPER_AT_THE_ROD));
    assertThat(marks(stopped, null).totalRatio()).isZero();
    Visit looked = begun.after(new Move.Checked(new Check.Light()));
    CallMarks marks = marks(looked, Expert.conclusion(Cause.HEALTHY));
    assertThat(marks.truth().healthy()).isFalse();
    double safetyAlone = QUIZ.weights().safetyPoints() / QUIZ.weights().sum();
    assertThat(marks.totalRatio()).isLessThanOrEqualTo(safetyAlone);
  }

  private static Visit begun(String learner) {
    Variant variant = Variant.of(QUIZ.calls().get(0), QUIZ.seed(), learner);
    return Visit.begin(variant, InventedClass.appearances(), false);
  }

  private static CallMarks marks(Visit visit, @Nullable Conclusion conclusion) {
    List<CallSheet.Logged> log = visit.log().stream().map(d -> CallSheet.Logged.of(d, 0)).toList();
    ServiceCall call = visit.variant().call();
    CallSheet handed = new CallSheet(call.name(), log, conclusion);
    AnswerSheet sheet = new AnswerSheet("e", QUIZ.name(), "h", "nobody", 1, List.of(handed));
    return InventedClass.grader().grade(call, sheet);
  }

  @Test
  void weightsOfABlueprintAreSharedByItsCalls() {
    double all = QUIZ.calls().stream().mapToDouble(QUIZ::weight).sum();
    assertThat(all).isPositive();
  }

  /** The full order is in the study; two habits that are far apart are told apart by few calls. */
  @Test
  void simulatedLearnersAreInTheOrderOfTheirHabits() {
    assertThat(mean(Habit.EVIDENCE_ENGINE)).isGreaterThan(mean(Habit.PARTS_SWAPPER));
    assertThat(mean(Habit.ROUTINE_FOLLOWER)).isGreaterThan(mean(Habit.RANDOM_TESTER));
  }

  /** Whoever swaps parts watches a call and the light, and then buys something. */
  @Test
  void aPartsSwapperReplacesAPartBeforeAnythingIsTested() {
    for (ServiceCall call : QUIZ.calls()) {
      Visit begun =
          Visit.begin(Variant.of(call, QUIZ.seed(), "swapper"), InventedClass.appearances(), false);
      CallSheet handed =
          new Learner(Habit.PARTS_SWAPPER, 0, 1).take(begun, InventedClass.grader().assessor(call));
      List<Move> moves = handed.moves().stream().map(CallSheet.Logged::move).toList();
      assertThat(moves.subList(0, 2))
          .containsExactly(new Move.Checked(new Check.Call()), new Move.Checked(new Check.Light()));
      Move first =
          moves.stream()
              .skip(2)
              .filter(m -> m instanceof Move.Repaired || m instanceof Move.Checked)
              .findFirst()
              .orElseThrow();
      assertThat(first).isInstanceOf(Move.Repaired.class);
      assertThat(((Move.Repaired) first).repair().costUnits()).isPositive();
    }
  }

  private static double mean(Habit habit) {
    Appearances appearances = InventedClass.appearances();
    double sum = 0;
    for (int k = 0; k < LEARNERS; k++) {
      String code = habit + " " + k;
      List<CallSheet> calls = new ArrayList<>();
      for (ServiceCall call : QUIZ.calls()) {
        Visit begun = Visit.begin(Variant.of(call, QUIZ.seed(), code), appearances, false);
        calls.add(
            new Learner(habit, 0.1, code.hashCode())
                .take(begun, InventedClass.grader().assessor(call)));
      }
      AnswerSheet sheet = new AnswerSheet("e", QUIZ.name(), "h", code, 1, calls);
      sum += InventedClass.grader().grade(sheet).totalRatio();
    }
    return sum / LEARNERS;
  }
}
