package halfwave.grading;

import halfwave.diagnosis.Adviser;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.CheckAdvice;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Reasons;
import halfwave.diagnosis.Step;
import halfwave.fault.FaultGroup;
import halfwave.grading.Assessor.Thought;
import halfwave.message.Message;
import halfwave.quiz.Done;
import halfwave.quiz.Move;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.util.FastMath;
import org.jspecify.annotations.Nullable;

/**
 * Goes through a visit move by move and judges each by what could be known when it was chosen,
 * never by what came of it.
 */
final class Walk {

  /** A check with this share of the best information splits [judgement]. */
  private static final double SPLIT_RATIO = 0.5;

  /** Or with as much as this (bits) [judgement]. */
  private static final double SPLIT_BITS = 0.3;

  /** A repair of what is less likely than this is one on suspicion [judgement]. */
  private static final double LIKELY_PROBABILITY = 0.5;

  /** So much information is evidence (bits) [judgement]. */
  static final double EVIDENCE_BITS = 0.1;

  private final Assessor assessor;
  private final Entries entries = new Entries();
  private final List<MarkedMove> moves = new ArrayList<>();
  private boolean repaired;
  private boolean callProved;
  private boolean readingProved;

  private Walk(Assessor assessor) {
    this.assessor = assessor;
  }

  /** Judges all moves of a visit. */
  static List<MarkedMove> through(Assessor assessor, List<Done> log) {
    Walk walk = new Walk(assessor);
    log.forEach(walk::step);
    return List.copyOf(walk.moves);
  }

  private void step(Done done) {
    Thought thought = assessor.after(entries.lines());
    Map<Cause, Double> now = thought.belief().now();
    if (done.danger() != null) {
      keep(done, MoveClass.DANGEROUS, Double.NaN, 0, null, now, List.of());
    } else if (done.move() instanceof Move.Checked checked) {
      checked(done, checked.check(), thought);
    } else if (done.move() instanceof Move.Repaired mended) {
      repaired(done, mended.repair(), thought);
    } else {
      entries.add(done);
      boolean says =
          done.move() instanceof Move.Suspects
              || done.move() instanceof Move.Hint
              || done.move() instanceof Move.Note;
      MoveClass kind = says ? MoveClass.SAYS : MoveClass.PREPARES;
      keep(done, kind, Double.NaN, 0, null, now, List.of());
    }
  }

  private void checked(Done done, Check check, Thought thought) {
    Map<Cause, Double> now = thought.belief().now();
    Check best = best(thought).map(CheckAdvice::check).orElse(null);
    if (!entries.counts(done)) {
      // such a call is not one of the table's: what it tells is not reckoned further
      double bits = entries.signal() && check instanceof Check.Call ? boardBits(now) : 0;
      double merit = merit(bits / check.minutes(), thought);
      MoveClass kind = bits < Adviser.REDUNDANT_BITS ? MoveClass.IRRELEVANT : MoveClass.SPLITS;
      keep(done, kind, merit, bits, best, now, List.of());
      return;
    }
    Optional<CheckAdvice> advice = thought.check(check);
    double bits = advice.map(CheckAdvice::gainBits).orElse(0.0);
    MoveClass kind = kind(check, bits, thought);
    boolean marked = kind != MoveClass.DESCRIBES && kind != MoveClass.PROVES;
    double ratio =
        marked ? merit(advice.map(CheckAdvice::meritBits).orElse(0.0), thought) : Double.NaN;
    entries.add(done);
    List<Step> steps = assessor.after(entries.lines()).belief().steps();
    List<Message> told = Reasons.of(steps.get(steps.size() - 1));
    keep(done, kind, ratio, bits, best, now, told);
  }

  private MoveClass kind(Check check, double bits, Thought thought) {
    if (repaired && proves(check)) {
      return MoveClass.PROVES;
    } else if (!repaired && describes(check) && !done(check)) {
      return MoveClass.DESCRIBES;
    } else if (bits >= Adviser.REDUNDANT_BITS) {
      double most =
          thought.advice().checks().stream().mapToDouble(CheckAdvice::gainBits).max().orElse(0);
      boolean splits = bits >= SPLIT_BITS || bits >= SPLIT_RATIO * most;
      return splits ? MoveClass.SPLITS : MoveClass.ELIMINATES;
    }
    double atFirst = assessor.after(List.of()).check(check).map(CheckAdvice::gainBits).orElse(0.0);
    return atFirst >= EVIDENCE_BITS || done(check) ? MoveClass.REDUNDANT : MoveClass.IRRELEVANT;
  }

  /** The first of each kind since the last repair. */
  private boolean proves(Check check) {
    if (check instanceof Check.Call && !callProved) {
      callProved = true;
      return true;
    } else if (check instanceof Check.Read read && read.current() && !readingProved) {
      readingProved = true;
      return true;
    }
    return false;
  }

  private static boolean describes(Check check) {
    return check instanceof Check.Call || check instanceof Check.Light || check.remembered();
  }

  private boolean done(Check check) {
    return entries.lines().stream()
        .anyMatch(e -> e instanceof Entry.Observed observed && observed.check().equals(check));
  }

  /** How much it would tell to know whether the board is sound (bits). */
  private static double boardBits(Map<Cause, Double> now) {
    double board =
        now.entrySet().stream()
            .filter(e -> e.getKey().kinds().stream().anyMatch(k -> k.group() == FaultGroup.BOARD))
            .mapToDouble(Map.Entry::getValue)
            .sum();
    return board <= 0 || board >= 1
        ? 0
        : -(board * FastMath.log(2, board) + (1 - board) * FastMath.log(2, 1 - board));
  }

  private static Optional<CheckAdvice> best(Thought thought) {
    return thought.advice().checks().stream()
        .filter(c -> c.gainBits() >= Adviser.REDUNDANT_BITS)
        .findFirst();
  }

  /** Information for each minute, over that of the best check (1). */
  private static double merit(double meritBits, Thought thought) {
    return best(thought).map(b -> Math.min(1, meritBits / b.meritBits())).orElse(0.0);
  }

  private void repaired(Done done, Repair repair, Thought thought) {
    Map<Cause, Double> now = thought.belief().now();
    double likely =
        now.entrySet().stream()
            .filter(e -> !e.getKey().after(repair).equals(e.getKey()))
            .mapToDouble(Map.Entry::getValue)
            .sum();
    Optional<CheckAdvice> pays = thought.advice().nextCheck();
    boolean suspected = likely < LIKELY_PROBABILITY && pays.isPresent();
    boolean spoils =
        suspected && repair.costUnits() == 0 && spoilt(repair, thought) >= EVIDENCE_BITS;
    MoveClass kind =
        spoils
            ? MoveClass.DESTROYS_EVIDENCE
            : suspected ? MoveClass.ON_SUSPICION : MoveClass.PUTS_RIGHT;
    Check best = suspected ? pays.get().check() : null;
    repaired = true;
    callProved = false;
    readingProved = false;
    entries.add(done);
    keep(done, kind, suspected ? 0 : Double.NaN, 0, best, now, List.of());
  }

  /** The most that could have been learnt by what a repair makes impossible (bits). */
  private static double spoilt(Repair repair, Thought thought) {
    return thought.advice().checks().stream()
        .filter(c -> spoils(repair, c.check()))
        .mapToDouble(CheckAdvice::gainBits)
        .max()
        .orElse(0);
  }

  private static boolean spoils(Repair repair, Check check) {
    return check
        .work()
        .map(
            w ->
                (w instanceof Look look && repair.spoiltLooks().contains(look))
                    || (w instanceof MeterTest test && repair.spoiltReadings().contains(test)))
        .orElse(false);
  }

  private void keep(
      Done done,
      MoveClass kind,
      double ratio,
      double bits,
      @Nullable Check best,
      Map<Cause, Double> before,
      List<Message> told) {
    moves.add(new MarkedMove(done, kind, ratio, bits, best, before, told));
  }
}
