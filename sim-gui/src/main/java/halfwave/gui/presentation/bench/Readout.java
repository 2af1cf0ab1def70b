package halfwave.gui.presentation.bench;

import halfwave.bench.BenchFlame;
import halfwave.bench.Stages;
import halfwave.board.Board;
import halfwave.board.StatusCode;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.instrument.Measurement;
import halfwave.sequence.MeterDisplay;
import halfwave.sequence.Moment;
import halfwave.sequence.Subjects;
import java.util.Optional;

/**
 * What instruments and eyes find at a moment.
 *
 * @param flame the flame that the bench has when it burns
 * @param steady the sense circuit with the meter in it, just now
 * @param measured what the meter shows, if one is on
 * @param code what the status light says
 * @param rodPositivePeakAmps crest of the flame current while the rod is positive (A); zero or
 *     above
 * @param rodNegativePeakAmps crest while it is negative (A); zero or above
 */
public record Readout(
    BenchFlame flame,
    SteadyState steady,
    Optional<Measurement> measured,
    StatusCode code,
    double rodPositivePeakAmps,
    double rodNegativePeakAmps) {

  /** What they find at a moment. */
  public static Readout of(Stages stages, Moment moment) {
    BenchFlame flame = stages.flame(moment.benchNow());
    Optional<Measurement> measured = MeterDisplay.at(moment);
    SteadyState steady =
        SteadyState.of(
            measured.map(Measurement::loaded).orElseGet(() -> Subjects.at(moment).circuit()));
    double positive = 0;
    double negative = 0;
    if (steady instanceof Solved solved && moment.furnace().growthRatio() > 0) {
      boolean star =
          solved.circuit().elements().stream().anyMatch(e -> e.part() == Part.ROD_SHEATH);
      boolean path = solved.circuit().elements().stream().anyMatch(e -> e.part() == Part.FLAME);
      double[] amps =
          star || path ? solved.currentAmps(star ? Part.ROD_SHEATH : Part.FLAME) : new double[] {0};
      for (double a : amps) {
        positive = Math.max(positive, a);
        negative = Math.max(negative, -a);
      }
    }
    return new Readout(
        flame,
        steady,
        measured,
        Board.code(moment.board(), moment.filter().signal()),
        positive,
        negative);
  }
}
