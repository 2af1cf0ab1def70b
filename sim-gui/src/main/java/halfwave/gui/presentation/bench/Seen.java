package halfwave.gui.presentation.bench;

import halfwave.board.Board;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.sequence.Moment;

/**
 * What of a furnace is seen to change. A signal that rises, or a fault that comes and goes, is not.
 *
 * @param stage where the board stands; a trip sends it elsewhere
 * @param code what its light says
 * @param burning whether there is a flame
 */
record Seen(Stage stage, StatusCode code, boolean burning) {

  static Seen of(Moment moment) {
    return new Seen(
        moment.board().stage(),
        Board.code(moment.board(), moment.filter().signal()),
        moment.furnace().burning());
  }
}
