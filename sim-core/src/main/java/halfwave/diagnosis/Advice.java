package halfwave.diagnosis;

import java.util.List;
import java.util.Optional;

/**
 * What to do next.
 *
 * @param checks all that is left to check, the most information for each minute first
 * @param repairs in the order in which to try if nothing more is checked
 * @param repairSeconds expected effort of trying them so (s)
 * @param doubtBits how much is not known about what is wrong (bits)
 * @param healthyProbability that nothing is wrong
 */
public record Advice(
    List<CheckAdvice> checks,
    List<RepairAdvice> repairs,
    double repairSeconds,
    double doubtBits,
    double healthyProbability) {

  /** From here on nothing is repaired on suspicion any more (1) [judgement]. */
  private static final double SOUND_PROBABILITY = 0.8;

  /** Takes copies. */
  public Advice {
    checks = List.copyOf(checks);
    repairs = List.copyOf(repairs);
  }

  /** The check to do now; nothing where checking no longer pays. */
  public Optional<CheckAdvice> nextCheck() {
    return checks.stream().filter(CheckAdvice::pays).findFirst();
  }

  /** The repair to begin with; nothing where nothing seems to be wrong. */
  public Optional<RepairAdvice> nextRepair() {
    return healthyProbability > SOUND_PROBABILITY ? Optional.empty() : repairs.stream().findFirst();
  }
}
