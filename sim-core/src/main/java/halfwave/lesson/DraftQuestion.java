package halfwave.lesson;

import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A question on its way.
 *
 * @param ask the question
 * @param answers as many as a question may have
 * @param right index of the right one
 */
public record DraftQuestion(DraftText ask, List<DraftAnswer> answers, int right) {

  /** Two empty answers. */
  public static final DraftQuestion EMPTY =
      new DraftQuestion(DraftText.EMPTY, List.of(DraftAnswer.EMPTY, DraftAnswer.EMPTY), 0);

  /**
   * Stands in for the proof that a right answer still lacks. No bench has so many burners, so that
   * an unfinished demonstration never passes for a proved one.
   */
  static final Claim UNPROVED =
      new Claim.Between(new Reading.Burners(), new Quantity(1000, Dimension.NUMBER), null);

  /** Checks the number of answers and takes a copy. */
  public DraftQuestion {
    answers = List.copyOf(answers);
    if (!(answers.size() >= Question.LEAST_ANSWERS && answers.size() <= Question.MOST_ANSWERS)) {
      throw new IllegalArgumentException(
          "answers: "
              + answers.size()
              + ": "
              + Question.LEAST_ANSWERS
              + " to "
              + Question.MOST_ANSWERS);
    }
    if (!(right >= 0 && right < answers.size())) {
      throw new IllegalArgumentException("right = " + right + ": zero to " + (answers.size() - 1));
    }
  }

  static DraftQuestion of(Question question) {
    return new DraftQuestion(
        DraftText.of(question.ask()),
        question.answers().stream().map(DraftAnswer::of).toList(),
        question.right());
  }

  /** With another question to the same answers. */
  public DraftQuestion with(DraftText other) {
    return new DraftQuestion(other, answers, right);
  }

  /** With another answer in the place of one. */
  public DraftQuestion with(int answer, DraftAnswer other) {
    List<DraftAnswer> all = new ArrayList<>(answers);
    all.set(answer, other);
    return new DraftQuestion(ask, all, right);
  }

  /** With another one right. */
  public DraftQuestion withRight(int answer) {
    return new DraftQuestion(ask, answers, answer);
  }

  /** Whether there is room for one answer more. */
  public boolean mayGrow() {
    return answers.size() < Question.MOST_ANSWERS;
  }

  /** Whether one answer can be spared. */
  public boolean mayShrink() {
    return answers.size() > Question.LEAST_ANSWERS;
  }

  /** With one empty answer more. */
  public DraftQuestion grown() {
    List<DraftAnswer> all = new ArrayList<>(answers);
    all.add(DraftAnswer.EMPTY);
    return new DraftQuestion(ask, all, right);
  }

  /** Without an answer; if it was the right one, the one that takes its place is. */
  public DraftQuestion without(int answer) {
    List<DraftAnswer> all = new ArrayList<>(answers);
    all.remove(answer);
    int still = answer < right ? right - 1 : right;
    return new DraftQuestion(ask, all, Math.min(still, all.size() - 1));
  }

  /** With an answer one place up or down. */
  public DraftQuestion moved(int from, int to) {
    List<DraftAnswer> all = new ArrayList<>(answers);
    all.add(to, all.remove(from));
    List<Integer> order = new ArrayList<>(IntStream.range(0, answers.size()).boxed().toList());
    order.add(to, order.remove(from));
    return new DraftQuestion(ask, all, order.indexOf(right));
  }

  DraftQuestion wordless() {
    return new DraftQuestion(
        DraftText.EMPTY, answers.stream().map(a -> a.with(DraftText.EMPTY)).toList(), right);
  }

  Question question() {
    return new Question(
        ask.orStandIn(),
        IntStream.range(0, answers.size())
            .mapToObj(k -> answers.get(k).answer(k == right))
            .toList(),
        right);
  }
}
