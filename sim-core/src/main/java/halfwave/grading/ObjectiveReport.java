package halfwave.grading;

import halfwave.quiz.Objective;

/**
 * How far a class, or a learner, has come with an objective.
 *
 * @param objective which
 * @param calls how many calls of the quiz ask for it
 * @param ratio mean mark (1)
 * @param mastered whether that passes
 */
public record ObjectiveReport(Objective objective, int calls, double ratio, boolean mastered) {}
