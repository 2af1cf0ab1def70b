package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.io.BadInputException;
import halfwave.io.BenchFile;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a command line means by {@code BENCH}: the name of a shipped bench, or the path of a bench
 * file. A shipped name wins over a file of the same name, which {@code ./NAME} still reaches.
 */
public final class BenchArgument {

  private BenchArgument() {}

  /**
   * The bench that is meant.
   *
   * @param text the argument as it was typed
   * @throws BadInputException where there is neither such a shipped bench nor such a file, or the
   *     file holds no bench
   */
  public static Bench resolve(String text) {
    Optional<Bench> shipped = ShippedBenches.named(text);
    if (shipped.isPresent()) {
      return shipped.get();
    }
    Path file;
    try {
      file = Path.of(text);
    } catch (InvalidPathException e) {
      throw unknown(text);
    }
    if (text.isEmpty() || Files.notExists(file)) {
      throw unknown(text);
    }
    return BenchFile.read(file);
  }

  private static BadInputException unknown(String text) {
    String names = ShippedBenches.all().stream().map(Bench::name).collect(Collectors.joining(", "));
    return BadInputException.ofFile(
        text, Message.of(MessageKey.ALLOWED_BENCH, Argument.text(names)));
  }
}
