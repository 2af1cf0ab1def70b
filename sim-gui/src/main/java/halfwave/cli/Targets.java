package halfwave.cli;

import halfwave.io.AtomicFile;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The files that a command is asked to write beside a CSV. */
final class Targets {

  static final String CSV = "--csv";

  private Targets() {}

  /**
   * Refuses files that cannot be written, or that are one and the same, before any work is done.
   *
   * @param command what the person typed
   * @param csv file of {@value #CSV}, or null
   * @param option the other option
   * @param other its file, or null
   */
  static void check(String command, @Nullable Path csv, String option, @Nullable Path other) {
    if (csv != null) {
      AtomicFile.check(csv);
    }
    if (other != null) {
      AtomicFile.check(other);
      if (csv != null
          && other.toAbsolutePath().normalize().equals(csv.toAbsolutePath().normalize())) {
        throw new Typed(command, option)
            .refused(
                other.toString(), Message.of(MessageKey.ALLOWED_OTHER_FILE, Argument.text(CSV)));
      }
    }
  }
}
