package halfwave.gui.presentation.quiz;

import halfwave.bench.Stages;
import halfwave.board.Board;
import halfwave.picture.scene.DrawnBench;
import halfwave.quiz.ServiceCall;
import halfwave.sequence.Moment;

/** The furnace of a service call as it should be, at rest: what is wrong with it is not drawn. */
final class HealthyFurnace {

  private HealthyFurnace() {}

  /** What a drawing shows of it. */
  static DrawnBench of(ServiceCall call) {
    Moment cold = Moment.cold(call.bench(), call.settings(), 0);
    return new DrawnBench(
        cold,
        new Stages().flame(cold.benchNow()),
        Board.code(cold.board(), cold.filter().signal()),
        null,
        "");
  }
}
