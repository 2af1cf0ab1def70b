package halfwave.diagnosis;

import halfwave.board.Ignition;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Chooses what to do next, one step ahead: of all checks the one with the most expected information
 * for each minute (de Kleer and Williams, Artificial Intelligence 32 (1987) 97), as long as some
 * check is expected to save more effort than it takes (Heckerman, Breese and Rommelse, Comm. ACM 38
 * (1995) 49); then the repair that cures most for its effort.
 */
public final class Adviser {

  /** Only the worth of the best few is worth computing. */
  private static final int WORTH_COUNT = 16;

  /** Information below which a check tells nothing (bits) [judgement]. */
  public static final double REDUNDANT_BITS = 0.01;

  private final Outlook outlook;
  private final Ignition ignition;
  private final Repairing repairing;

  /**
   * Prepares it.
   *
   * @param outlook table and judgement
   * @param ignition of the appliance
   */
  public Adviser(Outlook outlook, Ignition ignition) {
    this.outlook = outlook;
    this.ignition = ignition;
    repairing = Repairing.of(outlook.causes(), outlook.priors(), ignition);
  }

  /** What to do when this is believed. */
  public Advice advice(Belief belief) {
    double[] now = belief.nowProbabilities();
    double doubt = Information.entropyBits(now);
    Set<Check> done = belief.done();
    double unaided = repairing.expectedSeconds(now);
    Map<Check, double[][]> joints = new HashMap<>();
    List<CheckAdvice> gains = new ArrayList<>();
    for (Check check : outlook.table().checks()) {
      if (!done.contains(check)) {
        double[][] joint = belief.joint(check);
        double gain = doubt - Information.expectedEntropyBits(joint);
        joints.put(check, joint);
        gains.add(new CheckAdvice(check, Math.max(0, gain), effort(check), Double.NaN));
      }
    }
    gains.sort(Comparator.comparingDouble(CheckAdvice::meritBits).reversed());
    List<CheckAdvice> checks = new ArrayList<>();
    for (int k = 0; k < gains.size(); k++) {
      CheckAdvice c = gains.get(k);
      double worth =
          k < WORTH_COUNT && c.gainBits() > REDUNDANT_BITS
              ? unaided - c.effortSeconds() - after(Objects.requireNonNull(joints.get(c.check())))
              : -c.effortSeconds();
      checks.add(new CheckAdvice(c.check(), c.gainBits(), c.effortSeconds(), worth));
    }
    double healthy = belief.now().getOrDefault(Cause.HEALTHY, 0.0);
    return new Advice(checks, repairs(now, gains), unaided, doubt, healthy);
  }

  /** Time of a check and for its hazards (s). */
  private double effort(Check check) {
    return 60.0 * check.minutes() + Repairing.hazards(check.hazards(ignition), outlook.priors());
  }

  /** Expected effort of repairing after a check (s); a row that is not normalised weighs itself. */
  private double after(double[][] joint) {
    double seconds = 0;
    for (double[] row : joint) {
      seconds += repairing.expectedSeconds(row);
    }
    return seconds;
  }

  private List<RepairAdvice> repairs(double[] now, List<CheckAdvice> gains) {
    return repairing.turns(now).stream()
        .map(
            t ->
                new RepairAdvice(
                    t.repair(), t.curesProbability(), t.effortSeconds(), spoilt(t.repair(), gains)))
        .toList();
  }

  /** The best that could have been learnt by what a repair makes impossible (bits). */
  private static double spoilt(Repair repair, List<CheckAdvice> gains) {
    Set<Look> looks = repair.spoiltLooks();
    Set<MeterTest> readings = repair.spoiltReadings();
    double best = 0;
    for (CheckAdvice gain : gains) {
      Check check = gain.check();
      boolean spoils =
          check instanceof Check.Looked looked && looks.contains(looked.look())
              || check instanceof Check.Read read && readings.contains(read.test());
      best = spoils ? Math.max(best, gain.gainBits()) : best;
    }
    return best;
  }
}
