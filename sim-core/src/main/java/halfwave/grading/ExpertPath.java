package halfwave.grading;

import halfwave.diagnosis.Cause;
import halfwave.quiz.Appearances;
import halfwave.quiz.Move;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How an expert goes about a service call, from the first look to the proof of the repair.
 *
 * @param moves what is done, with what could be known at each, in order
 * @param end the visit after the last of them
 */
public record ExpertPath(List<MarkedMove> moves, Visit end) {

  /** Whoever is not done by then goes in circles. */
  private static final int MOST_MOVES = 100;

  /** Takes a copy. */
  public ExpertPath {
    moves = List.copyOf(moves);
  }

  /**
   * The path.
   *
   * @param assessor what an expert thinks on this call
   * @param variant the furnace
   * @param appearances what is remembered of benches
   */
  public static ExpertPath of(Assessor assessor, Variant variant, Appearances appearances) {
    Expert expert = new Expert(assessor);
    Visit visit = Visit.begin(variant, appearances, false);
    Optional<Move> next = expert.next(visit);
    while (next.isPresent()
        && visit.refusal(next.get()).isEmpty()
        && visit.log().size() < MOST_MOVES) {
      visit = visit.after(next.get());
      next = expert.next(visit);
    }
    return new ExpertPath(Walk.through(assessor, visit.log()), visit);
  }

  /** What is done before the first repair: the search. */
  public List<MarkedMove> search() {
    return moves.stream().takeWhile(m -> !(m.done().move() instanceof Move.Repaired)).toList();
  }

  /** The repairs that put something right, in order. */
  public List<Repair> cures() {
    List<Repair> cures = new ArrayList<>();
    Cause left = end.variant().cause();
    for (MarkedMove move : moves) {
      if (move.done().move() instanceof Move.Repaired repaired) {
        Cause after = left.after(repaired.repair());
        if (!after.equals(left)) {
          cures.add(repaired.repair());
        }
        left = after;
      }
    }
    return cures;
  }
}
