package halfwave.diagnosis;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.evidence.Course;
import halfwave.evidence.HeatingCall;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.quantity.Noise;
import halfwave.quantity.RejectedValueException;
import halfwave.work.Finding;
import halfwave.work.Recollection;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.util.FastMath;

/**
 * A service call as it really is, on a bench and with a severity that the engine's table does not
 * have: drawn from wider spreads, other parts and other frequencies than the engine assumes, played
 * by the full model. What a technician finds has errors of its own.
 */
final class Situation {

  /** Errors of looks and readings; the engine assumes twice as many [judgement]. */
  private static final double MISREAD_PROBABILITY = 0.01;

  private static final double MISREMEMBERED_PROBABILITY = 0.15;

  private static final double READING_RATIO = 0.04;
  private static final double READING_AMPS = 0.04e-6;
  private static final double READING_VOLTS = 0.7;

  private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);

  private final long seed;
  private final Cause cause;
  private final BoardSettings settings;
  private final List<Check> checks;
  private final Bench asFound;
  private final Finding sinceWhen;

  /** What each bench of this call looks like: shared by all who come to it. */
  private final Map<Bench, List<Outcome>> looks;

  private Bench bench;
  private Cause left;
  private int turns;

  private Situation(
      long seed,
      Cause cause,
      Bench bench,
      Finding sinceWhen,
      BoardSettings settings,
      List<Check> checks,
      Map<Bench, List<Outcome>> looks) {
    this.seed = seed;
    this.cause = cause;
    this.bench = bench;
    this.sinceWhen = sinceWhen;
    asFound = bench;
    this.looks = looks;
    this.settings = settings;
    this.checks = checks;
    left = cause;
  }

  /**
   * Draws one.
   *
   * @param like the bench that the technician takes it for
   */
  static Situation draw(long seed, Bench like, BoardSettings settings, Priors priors) {
    List<Check> checks = Check.all(like.design().ignition());
    for (int attempt = 0; ; attempt++) {
      long own = seed * 1000 + attempt;
      Cause cause = cause(own, priors);
      try {
        Bench faulty = faulty(own, cause, other(own, like));
        // nobody remembers how a furnace differs from others of its kind
        Finding since = Recollection.sinceWhen(faulty(own, cause, like).condition());
        return new Situation(own, cause, faulty, since, settings, checks, new HashMap<>());
      } catch (RejectedValueException e) {
        // that bench has no room for that fault: another call
        continue;
      }
    }
  }

  private static Bench faulty(long seed, Cause cause, Bench sound) {
    Bench faulty = sound;
    for (FaultKind kind : cause.kinds()) {
      double u = uniform(seed, 40 + kind.ordinal());
      faulty = Fault.of(kind, Draws.severity(kind, u)).on(faulty);
    }
    return faulty;
  }

  private static double uniform(long seed, long what) {
    return Noise.uniform(seed, Noise.Purpose.READING, what);
  }

  private static double normal(long seed, long what) {
    return NORMAL.inverseCumulativeProbability(
        Math.max(1e-9, Math.min(1 - 1e-9, uniform(seed, what))));
  }

  /** Frequencies of which the engine knows nothing: its own, flattened and shaken by a factor. */
  private static Cause cause(long seed, Priors priors) {
    List<Cause> causes = priors.causes();
    double[] weights = new double[causes.size()];
    double sum = 0;
    for (int k = 0; k < weights.length; k++) {
      // the same factor for all calls: these are the frequencies of one town
      double shaken = FastMath.exp(0.7 * normal(77, k));
      weights[k] = FastMath.pow(priors.weight(causes.get(k)), 0.7) * shaken;
      sum += weights[k];
    }
    double u = uniform(seed, 1) * sum;
    for (int k = 0; k < weights.length; k++) {
      u -= weights[k];
      if (u < 0) {
        return causes.get(k);
      }
    }
    return Cause.HEALTHY;
  }

  /** A bench of another make: spreads half as wide again, another lead, another way to ground. */
  private static Bench other(long seed, Bench like) {
    double[] u = new double[10];
    for (int k = 0; k < u.length; k++) {
      u[k] =
          k == 6 ? uniform(seed, 10 + k) : NORMAL.cumulativeProbability(1.5 * normal(seed, 10 + k));
    }
    Bench bench = Draws.variation(u).on(like);
    Lead lead = bench.design().lead();
    return bench.with(
        bench
            .design()
            .withLead(
                new Lead(
                    lead.resistanceOhms(),
                    lead.insulationOhms(),
                    lead.capacitanceFarads() * FastMath.exp(0.2 * normal(seed, 30)))));
  }

  Cause cause() {
    return cause;
  }

  /** What is still wrong. */
  Cause left() {
    return left;
  }

  /** The same call once more, for somebody else. */
  Situation again() {
    return new Situation(seed, cause, asFound, sinceWhen, settings, checks, looks);
  }

  /** The furnace as it is now, without any errors of the technician. */
  private List<Outcome> looks() {
    return looks.computeIfAbsent(
        bench, b -> new Appearance(b, HeatingCall.of(b, settings, seed), sinceWhen).of(checks));
  }

  /** What the technician finds. */
  Outcome find(Check check) {
    int place = checks.indexOf(check);
    Outcome true_ = looks().get(place);
    long index = 1000L * (turns + 1) + place;
    if (true_ instanceof Outcome.Amps amps) {
      return new Outcome.Amps(
          amps.meanAmps() * (1 + READING_RATIO * normal(seed, index))
              + READING_AMPS * normal(seed, index + 200),
          amps.alternatingRmsAmps() * (1 + READING_RATIO * normal(seed, index + 400)));
    } else if (true_ instanceof Outcome.Volts volts) {
      return new Outcome.Volts(
          Math.max(
              0,
              volts.alternatingRmsVolts() * (1 + READING_RATIO / 4 * normal(seed, index))
                  + READING_VOLTS * normal(seed, index + 200)));
    } else if (true_ instanceof Outcome.Found
        && !(check instanceof Check.Call)
        && uniform(seed, index) < errors(check)) {
      List<Enum<?>> all = new ArrayList<>(check.outcomes());
      return new Outcome.Found(all.get((int) (uniform(seed, index + 200) * all.size())));
    }
    return true_;
  }

  private static double errors(Check check) {
    return check.remembered() ? MISREMEMBERED_PROBABILITY : MISREAD_PROBABILITY;
  }

  /**
   * Repairs, and watches a call. What a repair does not concern is left as it was, its residue on a
   * clean rod included: it shows in nothing and would have to be played again.
   */
  Entry.Result repair(Repair repair) {
    turns++;
    Cause before = left;
    left = left.after(repair);
    if (left.equals(before)) {
      return before.healthy() ? Entry.Result.CURED : Entry.Result.UNCHANGED;
    }
    Outcome was = looks().get(0);
    bench = repair.on(bench);
    if (left.healthy()) {
      return Entry.Result.CURED;
    }
    Outcome is = looks().get(0);
    if (is.equals(new Outcome.Found(Course.RUNS)) && !was.equals(is)) {
      return Entry.Result.CURED;
    }
    return was.equals(is) ? Entry.Result.UNCHANGED : Entry.Result.WORSE;
  }
}
