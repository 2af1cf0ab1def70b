package halfwave.lesson;

import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How far a demonstration has been shown to a class. An immutable value: each operation gives
 * another one. It knows no clock; it hands out the moment at which a step begins and, on the
 * reveal, the stretch to be played, and whoever shows it plays that at its pace. Where the
 * audience's furnace strays meanwhile does not matter: the next step begins where the script says.
 *
 * <p>{@link #begin}, {@link #next}, {@link #jump} and {@link #moments} may have to play what leads
 * to the step, which takes up to seconds; moments once found are remembered.
 *
 * <pre>{@code
 * Playthrough now = Playthrough.begin(demonstration);
 * now = now.vote(1).reveal();
 * Stretch shown = now.stretch();
 * now = now.next();
 * }</pre>
 *
 * @param demonstration what is shown
 * @param stepIndex the step it stands at, from zero
 * @param revealed whether this step's answer is out
 * @param votes for each step, how many votes each answer has; kept until they are cleared
 * @param moments the moments at which the first steps begin, as far as they are known; at least up
 *     to this step
 */
public record Playthrough(
    Demonstration demonstration,
    int stepIndex,
    boolean revealed,
    List<List<Integer>> votes,
    List<Moment> moments) {

  /** Takes copies. */
  public Playthrough {
    votes = votes.stream().map(List::copyOf).toList();
    moments = List.copyOf(moments);
    if (!(stepIndex >= 0 && stepIndex < moments.size())) {
      throw new IllegalArgumentException(
          "stepIndex = " + stepIndex + ": zero to " + (moments.size() - 1));
    }
  }

  /** At the first step; plays the start. */
  public static Playthrough begin(Demonstration demonstration) {
    List<List<Integer>> votes = demonstration.steps().stream().map(Playthrough::noVotes).toList();
    Moment first = demonstration.start().from(demonstration.cold()).performed().after();
    return new Playthrough(demonstration, 0, false, votes, List.of(first)).at(0);
  }

  /** The moments at which the steps begin, and behind them the one at which the last ends. */
  public static List<Moment> moments(Demonstration demonstration) {
    Playthrough last = begin(demonstration).jump(demonstration.steps().size() - 1);
    List<Moment> all = new ArrayList<>(last.moments());
    all.add(last.stretch().performed().after());
    return List.copyOf(all);
  }

  private static List<Integer> noVotes(Step step) {
    return Collections.nCopies(step.answerCount(), 0);
  }

  /** The step it stands at. */
  public Step step() {
    return demonstration.steps().get(stepIndex);
  }

  /** The moment at which this step begins: what the bench returns to after an excursion. */
  public Moment moment() {
    return moments.get(stepIndex);
  }

  /** What is played in this step after the reveal. */
  public Stretch stretch() {
    return step().play().from(moment());
  }

  /** The votes of this step, one number for each answer. */
  public List<Integer> tally() {
    return votes.get(stepIndex);
  }

  /** Whether a vote counts: there is a question and its answer is not out yet. */
  public boolean takesVotes() {
    return !revealed && step().question() != null;
  }

  /**
   * One vote more.
   *
   * @param answer index of the answer
   * @throws IllegalStateException where no vote counts; ask {@link #takesVotes}
   */
  public Playthrough vote(int answer) {
    return counted(answer, 1);
  }

  /**
   * One vote less, where there is one: a hand was counted twice.
   *
   * @param answer index of the answer
   * @throws IllegalStateException where no vote counts; ask {@link #takesVotes}
   */
  public Playthrough takeBackVote(int answer) {
    return counted(answer, -1);
  }

  private Playthrough counted(int answer, int more) {
    if (!takesVotes()) {
      throw new IllegalStateException("step " + stepIndex + " takes no votes now");
    }
    if (!(answer >= 0 && answer < tally().size())) {
      throw new IllegalArgumentException(
          "answer = " + answer + ": zero to " + (tally().size() - 1));
    }
    List<Integer> counted = new ArrayList<>(tally());
    counted.set(answer, Math.max(0, counted.get(answer) + more));
    return withTally(counted);
  }

  /** Without the votes of this step. */
  public Playthrough clearVotes() {
    return withTally(noVotes(step()));
  }

  private Playthrough withTally(List<Integer> tally) {
    List<List<Integer>> all = new ArrayList<>(votes);
    all.set(stepIndex, tally);
    return new Playthrough(demonstration, stepIndex, revealed, all, moments);
  }

  /** The answer is out; what is to be played is {@link #stretch}. */
  public Playthrough reveal() {
    return new Playthrough(demonstration, stepIndex, true, votes, moments);
  }

  /** Whether there is a step behind this one. */
  public boolean hasNext() {
    return stepIndex + 1 < demonstration.steps().size();
  }

  /** Whether there is anything to go back to: this step's question, or a step before this one. */
  public boolean hasBack() {
    return answered() || stepIndex > 0;
  }

  /** Whether what this step held back is out. */
  private boolean answered() {
    return revealed && step().holdsBack();
  }

  /** At the next step; the same at the last one. */
  public Playthrough next() {
    return hasNext() ? jump(stepIndex + 1) : this;
  }

  /**
   * Where the answer is out, this step asked anew, with its votes; else the step before, asked
   * anew; the same at the first one.
   */
  public Playthrough back() {
    return answered() ? jump(stepIndex) : hasBack() ? jump(stepIndex - 1) : this;
  }

  /** What one key does: reveals, or goes on where all is out. */
  public Playthrough forward() {
    return revealed ? next() : reveal();
  }

  /** At any step, asked anew; plays what leads to it where that is not known yet. */
  public Playthrough jump(int step) {
    if (!(step >= 0 && step < demonstration.steps().size())) {
      throw new IllegalArgumentException(
          "step = " + step + ": zero to " + (demonstration.steps().size() - 1));
    }
    return at(step);
  }

  private Playthrough at(int index) {
    List<Moment> known = new ArrayList<>(moments);
    while (known.size() <= index) {
      int last = known.size() - 1;
      Play play = demonstration.steps().get(last).play();
      known.add(play.from(known.get(last)).performed().after());
    }
    boolean out = !demonstration.steps().get(index).holdsBack();
    return new Playthrough(demonstration, index, out, votes, known);
  }
}
