package halfwave.paper;

import halfwave.bench.BenchFlame;
import halfwave.bench.Stages;
import halfwave.board.Board;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.display.MeterText;
import halfwave.display.Sentences;
import halfwave.explain.VoltageLadder;
import halfwave.instrument.Measurement;
import halfwave.picture.scene.Arrows;
import halfwave.picture.scene.DrawnBench;
import halfwave.sequence.MeterDisplay;
import halfwave.sequence.Moment;
import halfwave.sequence.Subjects;
import java.util.Optional;

/** What the drawing has to show of a moment. Remembers flames and belongs to one thread. */
final class DrawnMoments {

  private final Stages stages = new Stages();
  private final Sentences sentences;

  DrawnMoments(Sentences sentences) {
    this.sentences = sentences;
  }

  DrawnBench of(Moment moment) {
    BenchFlame flame = stages.flame(moment.benchNow());
    Optional<Measurement> measured = MeterDisplay.at(moment);
    SteadyState steady =
        SteadyState.of(
            measured.map(Measurement::loaded).orElseGet(() -> Subjects.at(moment).circuit()));
    boolean flows = steady instanceof Solved && moment.furnace().growthRatio() > 0;
    Arrows arrows =
        flows && flame.burning()
            ? Arrows.of(
                VoltageLadder.rodPositive((Solved) steady, flame.path()),
                VoltageLadder.rodNegative((Solved) steady, flame.path()))
            : null;
    return new DrawnBench(
        moment,
        flame,
        Board.code(moment.board(), moment.filter().signal()),
        arrows != null && arrows.rodPositiveAmps() + arrows.rodNegativeAmps() > 0 ? arrows : null,
        measured.map(m -> MeterText.text(m.shown(), sentences)).orElse(""));
  }
}
