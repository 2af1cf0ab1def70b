package halfwave.grading;

import halfwave.diagnosis.Cause;
import halfwave.quiz.Appearances;
import halfwave.quiz.AsFound;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import java.util.List;

/**
 * Whether a call can be set: tried on each of its furnaces.
 *
 * @param call the call
 * @param solved whether an expert with the tests it allows makes every furnace whole in its time
 * @param tellable whether all allowed tests together point at the cause, or at causes with the same
 *     repair
 * @param expertMinutes minutes an expert takes, on average (min)
 * @param expertUnits what parts cost an expert, on average (units)
 * @param difficultyRatio mean mark of simulated learners of all habits (1)
 */
public record CallCheck(
    ServiceCall call,
    boolean solved,
    boolean tellable,
    double expertMinutes,
    double expertUnits,
    double difficultyRatio) {

  /** Slips of the simulated learners (1), and how many of each. */
  private static final double[] SLIPS = {0, 0.2, 0.4};

  /** Whether it can be given to a class. */
  public boolean sound() {
    return solved && tellable;
  }

  /** Tries a call. */
  public static CallCheck of(Grader grader, ServiceCall call, Appearances appearances) {
    Quiz quiz = grader.quiz();
    Assessor assessor = grader.assessor(call);
    boolean solved = true;
    boolean tellable = true;
    double minutes = 0;
    double units = 0;
    double marks = 0;
    int learners = 0;
    for (int number = 0; number < Variant.COUNT; number++) {
      Variant variant = Variant.numbered(call, quiz.seed(), number);
      Visit visit = ExpertPath.of(assessor, variant, appearances).end();
      solved &= visit.ending().isEmpty() && visit.whole();
      tellable &= tellable(assessor, variant, appearances);
      minutes += visit.minutes() / (double) Variant.COUNT;
      units += visit.partsUnits() / (double) Variant.COUNT;
      for (Habit habit : Habit.values()) {
        double slip = SLIPS[number % SLIPS.length];
        Learner learner = new Learner(habit, slip, variant.seed() + habit.ordinal());
        Visit begun = Visit.begin(variant, appearances, false);
        marks += marked(grader, variant, learner.take(begun, assessor), appearances);
        learners++;
      }
    }
    return new CallCheck(call, solved, tellable, minutes, units, marks / learners);
  }

  private static double marked(
      Grader grader, Variant variant, CallSheet sheet, Appearances appearances) {
    Replay replay = Replay.of(variant, sheet, false, appearances);
    return new Marker(grader.assessor(variant.call()), replay.visit(), sheet.conclusion())
        .marks(grader.quiz().weights(), List.of())
        .totalRatio();
  }

  /** All allowed tests, whatever they take. */
  private static boolean tellable(Assessor assessor, Variant variant, Appearances appearances) {
    Cause truth = variant.cause();
    Cause first =
        assessor.knowing(AsFound.of(variant, appearances)).now().keySet().iterator().next();
    return first.equals(truth) || Places.repairs(first).equals(Places.repairs(truth));
  }
}
