package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.board.Ignition;
import halfwave.board.ShippedBoards;
import halfwave.io.BadInputException;
import halfwave.io.Typed;
import halfwave.io.bench.BoardFile;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a command line means by a board: the name of a shipped one, or the path of a board file. A
 * shipped name wins over a file of the same name, which {@code ./NAME} still reaches.
 */
final class BoardArgument {

  private BoardArgument() {}

  /**
   * The board that is meant.
   *
   * @throws BadInputException where there is neither such a shipped board nor such a file, or the
   *     file holds no board
   */
  static BoardSettings resolve(String text) {
    return ShippedBoards.named(text)
        .orElseGet(() -> BoardFile.read(BenchArgument.file(text, unknown(text))));
  }

  private static BadInputException unknown(String text) {
    return BadInputException.ofFile(
        text, Message.of(MessageKey.ALLOWED_BOARD, names(ShippedBoards.all().stream())));
  }

  /**
   * The board that an option means for a bench: the standard one where it means none.
   *
   * @throws CommandFailedException where it is not made for that bench
   */
  static BoardSettings fitted(String command, Bench bench, @Nullable String option) {
    if (option == null) {
      return ShippedBoards.standard(bench.design().ignition());
    }
    BoardSettings board = resolve(option);
    if (!board.ignition().fits(bench.design().ignition())) {
      throw new Typed(command, SequencePlan.BOARD).refused(option, fitting(bench));
    }
    return board;
  }

  /** Which shipped boards can work a bench. */
  static Message fitting(Bench bench) {
    Ignition ignition = bench.design().ignition();
    return Message.of(
        MessageKey.ALLOWED_FITTING_BOARD,
        Argument.name(ignition),
        names(ShippedBoards.all().stream().filter(b -> b.ignition().fits(ignition))));
  }

  private static Argument names(Stream<BoardSettings> boards) {
    return Argument.text(boards.map(BoardSettings::name).collect(Collectors.joining(", ")));
  }
}
