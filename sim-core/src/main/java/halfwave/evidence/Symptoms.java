package halfwave.evidence;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.board.StatusCode;
import halfwave.instrument.MeterReading;
import java.util.Optional;

/**
 * What one bench looks like through a heating call.
 *
 * @param course how the call goes
 * @param code what the light says of it at the worst
 * @param standby 10 MΩ voltmeter at the sense terminal, no flame, lead on
 * @param leadOff the same with the lead pulled off
 * @param trial current towards the rod at the end of the first trial or at proof; empty where the
 *     gas never came
 * @param warm the same at the end of the call, if it burns then
 * @param sights what all looks find
 */
public record Symptoms(
    Course course,
    StatusCode code,
    MeterReading standby,
    MeterReading leadOff,
    Optional<MeterReading> trial,
    Optional<MeterReading> warm,
    Sights sights) {

  /**
   * Plays a heating call on a damp day.
   *
   * @param bench with or without faults
   * @param settings its board
   * @param seed of all chance
   */
  public static Symptoms of(Bench bench, BoardSettings settings, long seed) {
    return new SymptomCall(settings).symptoms(bench, seed);
  }
}
