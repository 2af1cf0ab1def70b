package halfwave.cli;

import halfwave.io.AtomicFile;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Refuses a file whose name promises something else than what would be in it. */
final class Ending {

  private Ending() {}

  /**
   * Checks a target before any work is done.
   *
   * @param command what the person typed
   * @param option the option
   * @param file its file; null: it was not asked for
   * @param ending what its name has to end in, with the dot
   * @throws halfwave.io.BadInputException where it ends otherwise, or cannot be written
   */
  static void check(String command, String option, @Nullable Path file, String ending) {
    if (file == null) {
      return;
    }
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    if (!name.endsWith(ending)) {
      throw new Typed(command, option)
          .refused(file.toString(), Message.of(MessageKey.ALLOWED_ENDING, Argument.text(ending)));
    }
    AtomicFile.check(file);
  }
}
