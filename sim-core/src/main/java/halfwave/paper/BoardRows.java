package halfwave.paper;

import halfwave.board.Board;
import halfwave.board.BoardState;
import halfwave.board.Sensing;
import halfwave.board.StatusCode;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.sequence.Moment;

/** What the board is doing, with the numbers that make it do so. */
final class BoardRows {

  private final PageFlow flow;
  private final PaperWords words;
  private final Moment moment;

  BoardRows(PageFlow flow, PaperWords words, Moment moment) {
    this.flow = flow;
    this.words = words;
    this.moment = moment;
  }

  void put() {
    BoardState board = moment.board();
    StatusCode code = Board.code(board, moment.filter().signal());
    flow.heading(words.text("board.title"));
    Table table = new Table(flow, 0.3, 0.7);
    table.row(words.text("board.stage"), PaperWords.capital(words.sentences().name(board.stage())));
    table.row(words.text("board.light"), PaperWords.capital(words.light(code)));
    table.row(words.text("board.signal"), signal());
    table.row(
        words.text("board.trials"),
        words.text(
            "board.counts",
            board.failedTrials(),
            moment.settings().counting().mostTrials(),
            board.losses()));
  }

  private String signal() {
    QuantityText numbers = words.sentences().quantities();
    Sensing sensing = moment.settings().sensing();
    return words.text(
        "board.limits",
        numbers.fixed(moment.filter().meanAmps(), DisplayUnit.MICROAMP, 2),
        numbers.text(sensing.dropOutAmps(), DisplayUnit.MICROAMP, 2),
        numbers.text(sensing.pickUpAmps(), DisplayUnit.MICROAMP, 2),
        numbers.text(sensing.warningAmps(), DisplayUnit.MICROAMP, 2));
  }
}
