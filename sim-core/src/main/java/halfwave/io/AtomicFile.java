package halfwave.io;

import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
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
public final class AtomicFile implements AutoCloseable {

  private final Path target;
  private final Path real;
  private final Path part;
  private final FileChannel channel;
  private final OutputStream stream;

  private AtomicFile(Path target, Path real, Path part, FileChannel channel) {
    this.target = target;
    this.real = real;
    this.part = part;
    this.channel = channel;
    stream = new BufferedOutputStream(Channels.newOutputStream(channel));
  }

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
   * Writes text in UTF-8 to a file that people then edit: one that is there stays as it is.
   *
   * @param target the file
   * @param text its whole content
   * @param replace whether one that is there may be replaced
   * @param option what a person has to say to replace it
   * @throws BadInputException if it cannot be written there; what stood there is untouched
   */
  public static void write(Path target, String text, boolean replace, String option) {
    check(target);
    if (!replace && Files.exists(target)) {
      throw BadInputException.ofFile(
          target.toString(), Message.of(MessageKey.ALLOWED_NEW_FILE, Argument.text(option)));
    }
    write(target, text);
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
    try (AtomicFile file = open(target)) {
      file.stream().write(bytes);
      file.keep();
    } catch (IOException e) {
      throw refused(target, MessageKey.ALLOWED_WRITABLE_FILE);
    }
  }

  /**
   * Begins a file that is too long to hold; until {@link #keep} nothing stands at the target.
   *
   * @param target the file, new or to be replaced
   * @throws BadInputException if it cannot be written there
   */
  public static AtomicFile open(Path target) {
    check(target);
    try {
      // a link stays a link
      Path real = Files.isSymbolicLink(target) ? target.toRealPath() : target.toAbsolutePath();
      Path folder = real.getParent();
      if (folder == null) {
        throw refused(target, MessageKey.ALLOWED_WRITABLE_FILE);
      }
      Path part = Files.createTempFile(folder, ".halfwave-", ".part", readableByOthers(folder));
      // also where somebody ends the program half-way
      part.toFile().deleteOnExit();
      FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE);
      return new AtomicFile(target, real, part, channel);
    } catch (IOException e) {
      throw refused(target, MessageKey.ALLOWED_WRITABLE_FILE);
    }
  }

  /** Where the content goes. */
  public OutputStream stream() {
    return stream;
  }

  /**
   * Puts the file in its place.
   *
   * @throws BadInputException if that fails; what stood there is untouched
   */
  public void keep() {
    try {
      stream.flush();
      // the content is on the disk before the name points at it
      channel.force(true);
      stream.close();
      rename(part, real);
    } catch (IOException e) {
      throw refused(target, MessageKey.ALLOWED_WRITABLE_FILE);
    }
  }

  /** Leaves no trace of a file that was not kept. */
  @Override
  public void close() {
    try {
      channel.close();
      Files.deleteIfExists(part);
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
