package halfwave.board;

import java.util.function.UnaryOperator;

/** What a checker drives: the board itself, or one that was broken on purpose. */
interface BoardUnderTest {

  /** The board as it ships. */
  BoardUnderTest REAL = Board::settle;

  BoardStep settle(BoardSettings settings, BoardState state, BoardInputs inputs);

  default long dueMillis(BoardSettings settings, BoardState state, BoardInputs inputs) {
    return Board.dueMillis(settings, state, inputs);
  }

  default BoardState after(
      BoardSettings settings, BoardState state, BoardInputs inputs, long millis) {
    return Board.after(settings, state, inputs, millis);
  }

  default BoardOutputs outputs(BoardSettings settings, BoardState state) {
    return Board.outputs(settings, state);
  }

  /** Turns what the board sees into what a broken one believes to see. */
  interface Belief {
    BoardInputs of(BoardState state, BoardInputs inputs);
  }

  /** Turns what the board remembers before and after an instant into what a broken one does. */
  interface Slip {
    BoardStep of(BoardState before, BoardInputs inputs, BoardStep step);
  }

  /** Turns what the board does into what a broken one does. */
  interface Fault {
    BoardOutputs of(BoardState state, BoardOutputs outputs);
  }

  /** A board that works to other settings than those it was made for. */
  static BoardUnderTest set(UnaryOperator<BoardSettings> wrong) {
    return new BoardUnderTest() {
      @Override
      public BoardStep settle(BoardSettings settings, BoardState state, BoardInputs inputs) {
        return Board.settle(wrong.apply(settings), state, inputs);
      }

      @Override
      public long dueMillis(BoardSettings settings, BoardState state, BoardInputs inputs) {
        return Board.dueMillis(wrong.apply(settings), state, inputs);
      }

      @Override
      public BoardState after(
          BoardSettings settings, BoardState state, BoardInputs inputs, long millis) {
        return Board.after(wrong.apply(settings), state, inputs, millis);
      }

      @Override
      public BoardOutputs outputs(BoardSettings settings, BoardState state) {
        return Board.outputs(wrong.apply(settings), state);
      }
    };
  }

  /** A board that sees what is not so. */
  static BoardUnderTest seeing(Belief wrong) {
    return new BoardUnderTest() {
      @Override
      public BoardStep settle(BoardSettings settings, BoardState state, BoardInputs inputs) {
        return Board.settle(settings, state, wrong.of(state, inputs));
      }

      @Override
      public long dueMillis(BoardSettings settings, BoardState state, BoardInputs inputs) {
        return Board.dueMillis(settings, state, wrong.of(state, inputs));
      }

      @Override
      public BoardState after(
          BoardSettings settings, BoardState state, BoardInputs inputs, long millis) {
        return Board.after(settings, state, wrong.of(state, inputs), millis);
      }
    };
  }

  /** A board that slips. */
  static BoardUnderTest slipping(Slip slip) {
    return (settings, state, inputs) ->
        slip.of(state, inputs, Board.settle(settings, state, inputs));
  }

  /** A board with welded or dead relays. */
  static BoardUnderTest driving(Fault fault) {
    return new BoardUnderTest() {
      @Override
      public BoardStep settle(BoardSettings settings, BoardState state, BoardInputs inputs) {
        return Board.settle(settings, state, inputs);
      }

      @Override
      public BoardOutputs outputs(BoardSettings settings, BoardState state) {
        return fault.of(state, Board.outputs(settings, state));
      }
    };
  }
}
