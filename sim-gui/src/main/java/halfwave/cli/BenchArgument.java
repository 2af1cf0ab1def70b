package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.io.BadInputException;
import halfwave.io.bench.BenchFile;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
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
    return ShippedBenches.named(text).orElseGet(() -> BenchFile.read(file(text, unknown(text))));
  }

  /** The file of that name, or what is to be said where there is none. */
  static Path file(String text, BadInputException unknown) {
    try {
      Path file = Path.of(text);
      if (!text.isEmpty() && !Files.notExists(file)) {
        return file;
      }
    } catch (InvalidPathException e) {
      // said below, like any other name that is none
    }
    throw unknown;
  }

  private static BadInputException unknown(String text) {
    String names = ShippedBenches.all().stream().map(Bench::name).collect(Collectors.joining(", "));
    return BadInputException.ofFile(
        text, Message.of(MessageKey.ALLOWED_BENCH, Argument.text(names)));
  }
}
