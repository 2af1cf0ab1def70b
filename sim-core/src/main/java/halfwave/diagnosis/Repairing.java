package halfwave.diagnosis;

import halfwave.board.Ignition;
import halfwave.fault.FaultKind;
import halfwave.work.Hazard;
import halfwave.work.Repair;
import halfwave.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The effort of repairing by suspicion: at each turn the repair that cures most for its effort,
 * until all is cured. Best for one fault and repairs that do not overlap (falling p/C: Kadane and
 * Simon, Cognitive Psychology 9 (1977) 380), a rule of thumb else.
 */
final class Repairing {

  /** What a film that cleaning leaves costs later (s/m) [judgement]: a minute for 10 nm. */
  private static final double RESIDUE_SECONDS_PER_METER = 60 / 1e-8;

  /** What half a cure of two faults counts (1) [judgement]. */
  private static final double HALF = 0.5;

  private final List<Repair> repairs;
  private final long[] cures;
  private final double[] efforts;
  private final long[] faults;

  /** One turn: the repair, and how probable it is that it completes the cure. */
  record Turn(Repair repair, double curesProbability, double effortSeconds) {}

  /**
   * Repairs and causes as bits, one for each fault.
   *
   * @param repairs the repairs
   * @param cures what each of them cures
   * @param efforts what each of them takes (s)
   * @param faults what is wrong by each cause
   */
  Repairing(List<Repair> repairs, long[] cures, double[] efforts, long[] faults) {
    this.repairs = List.copyOf(repairs);
    this.cures = cures.clone();
    this.efforts = efforts.clone();
    this.faults = faults.clone();
  }

  /** All repairs of an appliance against these causes. */
  static Repairing of(List<Cause> causes, Priors priors, Ignition ignition) {
    List<Repair> repairs =
        Stream.of(Repair.values())
            .filter(r -> r.possibleAt(ignition) && !Cause.curedBy(r).isEmpty())
            .toList();
    return new Repairing(
        repairs,
        repairs.stream().mapToLong(r -> mask(Cause.curedBy(r))).toArray(),
        repairs.stream().mapToDouble(r -> effort(r, priors, ignition)).toArray(),
        causes.stream().mapToLong(c -> mask(Set.copyOf(c.kinds()))).toArray());
  }

  private static long mask(Set<FaultKind> kinds) {
    return kinds.stream().mapToLong(k -> 1L << k.ordinal()).reduce(0, (a, b) -> a | b);
  }

  private static double effort(Repair repair, Priors priors, Ignition ignition) {
    double snaps =
        repair.mishap().isEmpty()
            ? 0
            : repair.mishap().get().probabilityRatio(ignition)
                * effort(Repair.REPLACE_ROD, priors, ignition);
    return seconds(repair, priors, ignition)
        + 60 * Check.CALL_MINUTES
        + priors.costUnitSeconds() * repair.costUnits()
        + RESIDUE_SECONDS_PER_METER * repair.residueMeters()
        + snaps;
  }

  /** Time of some work, and time for its hazards (s). */
  static double seconds(Work work, Priors priors, Ignition ignition) {
    return 60.0 * work.minutes() + hazards(work.hazards(ignition), priors);
  }

  /** Time that one would rather spend than meet hazards (s). */
  static double hazards(Set<Hazard> hazards, Priors priors) {
    return hazards.stream()
        .mapToDouble(h -> 60 * priors.hazardMinutes().getOrDefault(h, 0.0))
        .sum();
  }

  /** Expected effort of repairing by these probabilities of the causes, in their order (s). */
  double expectedSeconds(double[] probabilities) {
    return expectedSeconds(turns(probabilities), faulty(probabilities));
  }

  /**
   * Expected effort of turns in their order (s), Σ C_i (1 − Σ_{j before i} p_j).
   *
   * @param faultyProbability that something is wrong at all
   */
  static double expectedSeconds(List<Turn> turns, double faultyProbability) {
    double seconds = 0;
    double left = faultyProbability;
    for (Turn turn : turns) {
      seconds += turn.effortSeconds() * left;
      left -= turn.curesProbability();
    }
    return seconds;
  }

  private double faulty(double[] probabilities) {
    double sum = 0;
    for (int k = 0; k < faults.length; k++) {
      sum += faults[k] == 0 ? 0 : probabilities[k];
    }
    return sum;
  }

  /** The turns, best first, until everything that has a probability is cured. */
  List<Turn> turns(double[] probabilities) {
    List<Turn> turns = new ArrayList<>();
    long cured = 0;
    for (int next = best(probabilities, cured); next >= 0; next = best(probabilities, cured)) {
      double whole = whole(probabilities, cured, cures[next]);
      turns.add(new Turn(repairs.get(next), whole, efforts[next]));
      cured |= cures[next];
    }
    return turns;
  }

  private int best(double[] probabilities, long cured) {
    int best = -1;
    double most = 0;
    for (int r = 0; r < cures.length; r++) {
      if ((cures[r] & ~cured) != 0) {
        double merit = gain(probabilities, cured, cures[r]) / efforts[r];
        if (merit > most) {
          most = merit;
          best = r;
        }
      }
    }
    return best;
  }

  private double gain(double[] probabilities, long cured, long cure) {
    double gain = 0;
    for (int k = 0; k < faults.length; k++) {
      long left = faults[k] & ~cured;
      long still = left & ~cure;
      if (left != still) {
        gain += still == 0 ? probabilities[k] : HALF * probabilities[k];
      }
    }
    return gain;
  }

  private double whole(double[] probabilities, long cured, long cure) {
    double whole = 0;
    for (int k = 0; k < faults.length; k++) {
      long left = faults[k] & ~cured;
      whole += left != 0 && (left & ~cure) == 0 ? probabilities[k] : 0;
    }
    return whole;
  }
}
