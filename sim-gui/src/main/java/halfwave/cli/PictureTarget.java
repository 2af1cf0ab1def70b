package halfwave.cli;

import halfwave.io.AtomicFile;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.paper.PictureFormat;
import halfwave.picture.Picture;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A file that a picture goes to; the ending of its name says which kind of file that is.
 *
 * @param file the file
 * @param format its kind
 */
record PictureTarget(Path file, PictureFormat format) {

  /** What the option is called; {@value #EARLIER} means the same. */
  static final String OPTION = "--picture";

  static final String EARLIER = "--png";

  /**
   * What an option means, found out before any work is done.
   *
   * @param command what the person typed
   * @param file the file of {@value #OPTION}, or null: no picture is wanted
   * @throws halfwave.io.BadInputException where the ending means no kind of picture
   */
  static @Nullable PictureTarget of(String command, @Nullable Path file) {
    if (file == null) {
      return null;
    }
    PictureFormat format =
        PictureFormat.of(file)
            .orElseThrow(
                () ->
                    new Typed(command, OPTION)
                        .refused(
                            file.toString(),
                            Message.of(
                                MessageKey.ALLOWED_ENDING,
                                Argument.text(PictureFormat.endings()))));
    return new PictureTarget(file, format);
  }

  /** The picture as this kind of file has it. */
  byte[] bytes(Picture picture, String title, Language language) {
    return format.bytes(picture, title, language.locale());
  }

  /** Writes it. */
  void write(byte[] bytes) {
    AtomicFile.write(file, bytes);
  }
}
