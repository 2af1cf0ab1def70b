package halfwave.io.quiz;

import halfwave.io.BadInputException;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Keeps an answer sheet to one window or command. The sheet is replaced with every move, so a file
 * beside it is locked in its place; the system lets go of it however the program ends. Where files
 * cannot be locked nothing is kept: whoever cannot write the sheet either is told so then.
 */
public final class SheetLock implements AutoCloseable {

  private final Path file;
  private final @Nullable FileChannel channel;

  private SheetLock(Path file, @Nullable FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Takes a sheet.
   *
   * @param sheet its file, which need not be there yet
   * @throws BadInputException if it is taken already
   */
  public static SheetLock of(Path sheet) {
    Path file = beside(sheet);
    FileChannel channel = null;
    try {
      channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return new SheetLock(file, channel);
      }
    } catch (OverlappingFileLockException e) {
      // by this very program: refused as well
    } catch (IOException e) {
      close(channel);
      return new SheetLock(file, null);
    }
    close(channel);
    throw BadInputException.ofFile(sheet.toString(), Message.of(MessageKey.ALLOWED_UNSHARED));
  }

  /** One for all the ways in which a sheet can be named. */
  private static Path beside(Path sheet) {
    Path real = sheet.toAbsolutePath().normalize();
    try {
      real = sheet.toRealPath();
    } catch (IOException e) {
      // it is not there yet
    }
    return real.resolveSibling("." + real.getFileName() + ".lock");
  }

  /** Lets go of it. */
  @Override
  public void close() {
    if (channel != null) {
      close(channel);
      try {
        Files.deleteIfExists(file);
      } catch (IOException e) {
        // an empty file stays, and locks nobody out
      }
    }
  }

  private static void close(@Nullable FileChannel channel) {
    try {
      if (channel != null) {
        channel.close();
      }
    } catch (IOException e) {
      // the system lets go of it at the latest when the program ends
    }
  }
}
