package halfwave.evidence;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.board.StatusCode;
import halfwave.sequence.Moment;
import java.util.Optional;

/**
 * One heating call on a damp day, played, and the moments of it at which one may look: power at
 * once, the call after ten seconds, its end after ten minutes.
 *
 * @param course how it goes
 * @param code what the light says of it at the worst
 * @param standby before the call
 * @param start ten seconds into the call, before any trial
 * @param trial at the end of the first trial; empty where there is none
 * @param loss when a proved flame is lost, gas still on; empty where none is
 * @param warm at the end of the call; empty where it does not run then
 */
public record HeatingCall(
    Course course,
    StatusCode code,
    Moment standby,
    Moment start,
    Optional<Moment> trial,
    Optional<Moment> loss,
    Optional<Moment> warm) {

  /**
   * Plays it.
   *
   * @param bench with or without faults
   * @param settings its board
   * @param seed of all chance
   */
  public static HeatingCall of(Bench bench, BoardSettings settings, long seed) {
    return new SymptomCall(settings).played(bench, seed).call();
  }
}
