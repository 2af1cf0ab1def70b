package halfwave.io.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.BoardSettings;
import halfwave.board.Ignition;
import halfwave.board.ShippedBoards;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A bench, and the board that is made for it, as they stand in another file. */
public final class BenchField {

  private BenchField() {}

  /**
   * A shipped bench by its name, or a whole one.
   *
   * @throws BadInputException if there is none of that name, or anything in it is not as it should
   *     be
   */
  public static Bench bench(JsonValue value) {
    if (value.isObject()) {
      return BenchFile.of(value);
    }
    String names = ShippedBenches.all().stream().map(Bench::name).collect(Collectors.joining(", "));
    return ShippedBenches.named(value.text())
        .orElseThrow(
            () -> value.refused(Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(names))));
  }

  /**
   * The name of a shipped board.
   *
   * @throws BadInputException if there is none of that name
   */
  public static String board(JsonValue value) {
    String name = value.text();
    if (ShippedBoards.named(name).isEmpty()) {
      throw value.refused(
          Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(names(ShippedBoards.all()))));
    }
    return name;
  }

  /**
   * The name of a shipped board that fits.
   *
   * @param ignition what the appliance is lit with
   * @throws BadInputException if there is none of that name, or it does not fit
   */
  public static String board(JsonValue value, Ignition ignition) {
    String name = board(value);
    if (!ShippedBoards.named(name).orElseThrow().ignition().fits(ignition)) {
      List<BoardSettings> fitting =
          ShippedBoards.all().stream().filter(b -> b.ignition().fits(ignition)).toList();
      throw value.refused(
          Message.of(
              MessageKey.ALLOWED_FITTING_BOARD,
              Argument.name(ignition),
              Argument.text(names(fitting))));
    }
    return name;
  }

  private static String names(List<BoardSettings> boards) {
    return boards.stream().map(BoardSettings::name).collect(Collectors.joining(", "));
  }

  /** Writes a bench into the field {@code bench}: by its name where it is as shipped. */
  public static void put(ObjectNode root, Bench bench) {
    Optional<Bench> shipped = ShippedBenches.named(bench.name());
    if (shipped.isPresent() && shipped.get().equals(bench)) {
      root.put("bench", bench.name());
    } else {
      root.set("bench", BenchText.node(bench));
    }
  }
}
