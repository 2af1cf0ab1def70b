package halfwave.io;

import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.board.BoardSettings;
import halfwave.board.Ignition;
import halfwave.board.ShippedBoards;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.Optional;
import java.util.stream.Collectors;

/** A bench, and the board that is made for it, as they stand in another file. */
final class BenchField {

  private BenchField() {}

  /** A shipped bench by its name, or a whole one. */
  static Bench bench(JsonValue value) {
    if (value.isObject()) {
      return BenchFile.of(value);
    }
    String names = ShippedBenches.all().stream().map(Bench::name).collect(Collectors.joining(", "));
    return ShippedBenches.named(value.text())
        .orElseThrow(
            () -> value.refused(Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(names))));
  }

  /** The name of a shipped board that fits. */
  static String board(JsonValue value, Ignition ignition) {
    String name = ScriptFile.board(value);
    if (!ShippedBoards.named(name).orElseThrow().ignition().fits(ignition)) {
      String names =
          ShippedBoards.all().stream()
              .filter(b -> b.ignition().fits(ignition))
              .map(BoardSettings::name)
              .collect(Collectors.joining(", "));
      throw value.refused(
          Message.of(
              MessageKey.ALLOWED_FITTING_BOARD, Argument.name(ignition), Argument.text(names)));
    }
    return name;
  }

  /** Writes a bench: by its name where it is as shipped. */
  static void put(ObjectNode root, Bench bench) {
    Optional<Bench> shipped = ShippedBenches.named(bench.name());
    if (shipped.isPresent() && shipped.get().equals(bench)) {
      root.put("bench", bench.name());
    } else {
      root.set("bench", BenchText.node(bench));
    }
  }
}
