package halfwave.lesson;

import java.util.List;

/**
 * Asks for a prediction before anything is shown.
 *
 * @param ask the question
 * @param answers the predictions to choose from
 * @param right index of the right one; the claims of this answer prove it
 */
public record Question(Words ask, List<Answer> answers, int right) {

  /** Fewer is no choice. */
  public static final int LEAST_ANSWERS = 2;

  /** More cannot be read from the back of a classroom, nor counted in raised hands. */
  public static final int MOST_ANSWERS = 5;

  /** Checks that there is a choice, one of them right and proved. */
  public Question {
    answers = List.copyOf(answers);
    if (!(answers.size() >= LEAST_ANSWERS && answers.size() <= MOST_ANSWERS)) {
      throw new IllegalArgumentException(
          "answers: " + answers.size() + ": " + LEAST_ANSWERS + " to " + MOST_ANSWERS);
    }
    if (!(right >= 0 && right < answers.size())) {
      throw new IllegalArgumentException("right = " + right + ": zero to " + (answers.size() - 1));
    }
    if (answers.get(right).claims().isEmpty()) {
      throw new IllegalArgumentException("answers: the right one has no claim that proves it");
    }
  }
}
