package halfwave.matching;

import halfwave.bench.Bench;
import halfwave.message.Quantity;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The bench that fits the readings best, and how sure it is. The intervals are those of meter and
 * flicker; the model's own error is not in them.
 *
 * @param bench with the fitted values, the rod as found
 * @param estimates one per unknown, in the order asked for
 * @param compared what was read and what this bench gives
 * @param fitProbability chance that readings of this very bench would differ from it as much as
 *     these do (1); 1 where there are no more readings than unknowns
 * @param ambiguities what the readings leave open
 */
public record Match(
    Bench bench,
    List<Estimate> estimates,
    List<Compared> compared,
    double fitProbability,
    List<Ambiguity> ambiguities)
    implements Matched {

  /** Below this the readings do not belong to one such bench, but for one set in a hundred. */
  private static final double LEAST_PROBABILITY = 0.01;

  /** Takes copies. */
  public Match {
    estimates = List.copyOf(estimates);
    compared = List.copyOf(compared);
    ambiguities = List.copyOf(ambiguities);
  }

  /**
   * A number with the shortest interval that holds 90 % of what it may be.
   *
   * @param unknown which
   * @param value the best
   * @param low lower end
   * @param high upper end; infinite for a leakage that may be none
   */
  public record Estimate(Unknown unknown, Quantity value, Quantity low, Quantity high) {

    /** Whether a value lies in the interval, in SI. */
    public boolean holds(double si) {
      return low.si() <= si && si <= high.si();
    }
  }

  /**
   * A reading beside the model's.
   *
   * @param taken what was read
   * @param fitted what the fitted bench gives
   * @param deviationCount how many standard deviations of meter and flicker lie between them
   */
  public record Compared(TakenReading taken, Quantity fitted, double deviationCount) {}

  /**
   * Numbers that the readings do not fix: less than half of what they might have been before is
   * excluded. Of two or more, each would be fixed if the others were known: they cannot be told
   * apart. One alone is not seen at all.
   *
   * @param unknowns which; at least one
   * @param further the reading that would narrow them most, or null where none would by a tenth
   */
  public record Ambiguity(List<Unknown> unknowns, @Nullable Proposal further) {
    /** Takes a copy. */
    public Ambiguity {
      unknowns = List.copyOf(unknowns);
    }
  }

  /**
   * A reading that is worth taking.
   *
   * @param sight which
   * @param expected what it will be if the best values are right
   * @param remainingRatio width that it leaves, over the width now (1)
   */
  public record Proposal(Sight sight, Quantity expected, double remainingRatio) {}

  /** Whether one such bench can have given all the readings. */
  public boolean plausible() {
    return fitProbability >= LEAST_PROBABILITY;
  }

  /** The estimate of that unknown, if it was asked for. */
  public Optional<Estimate> estimate(Unknown unknown) {
    return estimates.stream().filter(e -> e.unknown() == unknown).findFirst();
  }
}
