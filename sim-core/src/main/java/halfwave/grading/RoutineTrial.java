package halfwave.grading;

import halfwave.quiz.Appearances;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;

/**
 * An order of work beside an expert's, on the first furnace of a call.
 *
 * @param call the call
 * @param whole whether the furnace heats after it with nothing left wrong
 * @param minutes simulated minutes to its end
 * @param partsUnits what its parts cost (units)
 * @param expertMinutes the same of the expert
 * @param expertUnits the same of the expert
 */
public record RoutineTrial(
    ServiceCall call,
    boolean whole,
    int minutes,
    int partsUnits,
    int expertMinutes,
    int expertUnits) {

  /**
   * Goes through it.
   *
   * @param grader knows the expert and the quiz
   * @param own the order of work
   * @param call one of the quiz
   * @param appearances what is remembered of benches
   */
  public static RoutineTrial of(
      Grader grader, Routine own, ServiceCall call, Appearances appearances) {
    Variant variant = Variant.numbered(call, grader.quiz().seed(), 0);
    Visit visit = own.at(variant, appearances);
    Visit expert = ExpertPath.of(grader.assessor(call), variant, appearances).end();
    return new RoutineTrial(
        call,
        visit.whole(),
        visit.minutes(),
        visit.partsUnits(),
        expert.minutes(),
        expert.partsUnits());
  }
}
