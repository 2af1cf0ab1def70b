package halfwave.sequence;

import halfwave.bench.Stages;
import halfwave.board.Board;
import halfwave.work.Scene;

/** What a moment looks like to whoever stands before the furnace. */
public final class Scenes {

  private Scenes() {}

  /** The scene of a moment. */
  public static Scene of(Stages stages, Moment moment) {
    Furnace furnace = moment.furnace();
    return new Scene(
        moment.bench(),
        moment.triggers(),
        moment.supply(),
        furnace.litCount(),
        Board.code(moment.board(), moment.filter().signal()),
        moment.outputs(),
        stages.flame(moment.benchNow()).field().sheets().state(),
        furnace.draftProved(),
        furnace.overheated());
  }
}
