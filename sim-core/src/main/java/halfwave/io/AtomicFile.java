package halfwave.io;

import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Writes a file whole or not at all: a crash never costs the old one. */
public final class AtomicFile {

  private AtomicFile() {}

  /**
   * Writes text in UTF-8.
   *
   * @param target the file, new or to be replaced
   * @param text its whole content
   * @throws BadInputException if it cannot be written there; what stood there is untouched
   */
  public static void write(Path target, String text) {
    write(target, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Refuses a target that cannot be written, before any work is spent on its content.
   *
   * @param target the file, new or to be replaced
   * @throws BadInputException if it cannot be written there as things stand now
   */
  public static void check(Path target) {
    if (Files.isDirectory(target)) {
      throw refused(target, MessageKey.ALLOWED_FILE_NOT_FOLDER);
    }
    // a rename would put a plain file in the place of a device or pipe
    boolean other = Files.exists(target) && !Files.isRegularFile(target);
    Path folder = target.toAbsolutePath().getParent();
    if (other || folder == null || !Files.isDirectory(folder)) {
      throw refused(target, MessageKey.ALLOWED_WRITABLE_FILE);
    }
  }

  /**
   * Writes bytes.
   *
   * @param target the file, new or to be replaced
   * @param bytes its whole content
   * @throws BadInputException if it cannot be written there; what stood there is untouched
   */
  public static void write(Path target, byte[] bytes) {
    check(target);
    try {
      // a link stays a link
      Path real = Files.isSymbolicLink(target) ? target.toRealPath() : target.toAbsolutePath();
      Path folder = real.getParent();
      if (folder == null) {
        throw refused(target, MessageKey.ALLOWED_WRITABLE_FILE);
      }
      Path part = Files.createTempFile(folder, ".halfwave-", ".part", readableByOthers(folder));
      try {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
          ByteBuffer buffer = ByteBuffer.wrap(bytes);
          while (buffer.hasRemaining()) {
            channel.write(buffer);
          }
          // the content is on the disk before the name points at it
          channel.force(true);
        }
        rename(part, real);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException e) {
      throw refused(target, MessageKey.ALLOWED_WRITABLE_FILE);
    }
  }

  private static void rename(Path part, Path target) throws IOException {
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Temporary files are private by default; a person's file is as the system's mask has it. */
  private static FileAttribute<?>[] readableByOthers(Path folder) {
    return folder.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-rw-rw-"))
        }
        : new FileAttribute<?>[0];
  }

  private static BadInputException refused(Path target, MessageKey allowed) {
    return BadInputException.ofFile(target.toString(), Message.of(allowed));
  }
}
