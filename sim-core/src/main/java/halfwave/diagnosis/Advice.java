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
 */
public record Advice(
    List<CheckAdvice> checks, List<RepairAdvice> repairs, double repairSeconds, double doubtBits) {

  /** Takes copies. */
  public Advice {
    checks = List.copyOf(checks);
    repairs = List.copyOf(repairs);
  }

  /** The check to do now; nothing where checking no longer pays. */
  public Optional<CheckAdvice> nextCheck() {
    return checks.stream().filter(CheckAdvice::pays).findFirst();
  }

  /** The repair to begin with; nothing where there is nothing to repair. */
  public Optional<RepairAdvice> nextRepair() {
    return repairs.stream().findFirst();
  }
}
