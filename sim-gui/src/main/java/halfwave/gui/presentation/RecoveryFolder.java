package halfwave.gui.presentation;

import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.bench.RecoveryFile;
import halfwave.io.lesson.DraftRecoveryFile;
import halfwave.io.quiz.QuizRecoveryFile;
import halfwave.io.quiz.RoutineRecoveryFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where each running program keeps what it would need after a crash, in a file named after its
 * process, so that two windows never write the same one. A folder that cannot be read or written
 * spoils nobody's lesson: then there is nothing to bring back. May be used from several threads.
 *
 * <p>Known limit: a folder that several machines share shows the processes of the others as gone.
 *
 * @param <T> what is kept
 */
public final class RecoveryFolder<T> {

  private final Path folder;
  private final Kind<T> kind;
  private final Pattern name;
  private final Owner own;
  private final Predicate<Owner> running;
  private boolean ended;

  /** A bench. */
  public static final Kind<RecoveryFile> BENCH =
      new Kind<>("recovery", RecoveryFile::text, RecoveryFile::read);

  /** A demonstration that is being made. */
  public static final Kind<DraftRecoveryFile> DRAFT =
      new Kind<>("draft", DraftRecoveryFile::text, DraftRecoveryFile::read);

  /** A quiz at the instructor's desk. */
  public static final Kind<QuizRecoveryFile> QUIZ =
      new Kind<>("desk", QuizRecoveryFile::text, QuizRecoveryFile::read);

  /** An instructor's own order of work. */
  public static final Kind<RoutineRecoveryFile> ROUTINE =
      new Kind<>("routine", RoutineRecoveryFile::text, RoutineRecoveryFile::read);

  /**
   * What is kept.
   *
   * @param prefix how its files begin; in lower case
   * @param text as text
   * @param read from a file; throws where that is spoilt
   */
  public record Kind<T>(String prefix, Function<T, String> text, Function<Path, T> read) {}

  /**
   * A process of this program.
   *
   * @param process its number
   * @param startMillis when it was started (ms since 1970): numbers are given out again
   */
  public record Owner(long process, long startMillis) {

    /** This one. */
    public static Owner current() {
      return of(ProcessHandle.current());
    }

    private static Owner of(ProcessHandle handle) {
      return new Owner(
          handle.pid(), handle.info().startInstant().map(Instant::toEpochMilli).orElse(0L));
    }

    /** Whether it still runs; where the system does not tell starts, the number decides. */
    public boolean running() {
      return ProcessHandle.of(process)
          .filter(ProcessHandle::isAlive)
          .map(Owner::of)
          .filter(o -> o.startMillis == 0 || startMillis == 0 || o.startMillis == startMillis)
          .isPresent();
    }
  }

  /**
   * What a program left behind.
   *
   * @param path its file, which belongs to this process now
   * @param content what was kept
   * @param kept when it was written
   */
  public record Found<T>(Path path, T content, Instant kept) {}

  /** Beside the settings. */
  public RecoveryFolder(Path folder, Kind<T> kind) {
    this(folder, kind, Owner.current(), Owner::running);
  }

  RecoveryFolder(Path folder, Kind<T> kind, Owner own, Predicate<Owner> running) {
    this.folder = folder;
    this.kind = kind;
    name = Pattern.compile(kind.prefix + "-(\\d{1,18})-(\\d{1,18})(-found)?\\.json");
    this.own = own;
    this.running = running;
  }

  private Path path(String suffix) {
    return folder.resolve(
        kind.prefix + '-' + own.process + '-' + own.startMillis + suffix + ".json");
  }

  /** Keeps something, if that is possible and the program has not ended. */
  public synchronized void keep(T content) {
    if (ended) {
      return;
    }
    try {
      Files.createDirectories(folder);
      AtomicFile.write(path(""), kind.text.apply(content));
    } catch (IOException | BadInputException e) {
      // nobody is disturbed by what is only needed after a crash; the next change tries again
    }
  }

  /** Nothing would be lost any more. */
  public synchronized void clear() {
    delete(path(""));
  }

  /** The program ends as it should: from here on nothing is kept. */
  public synchronized void end() {
    ended = true;
    clear();
  }

  /** Without a file that was found. */
  public synchronized void drop(Found<T> found) {
    delete(found.path);
  }

  private static void delete(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      // it is asked about once more at the next start
    }
  }

  /**
   * The latest that a program left behind which does not run any more; older ones wait for the next
   * start. The file is taken over, so that no other window asks about it, and stays until it is
   * dropped. What cannot be read is put aside and never asked about again.
   */
  public synchronized Optional<Found<T>> find() {
    for (Path left : left()) {
      Path taken = path("-found");
      if (moved(left, taken)) {
        try {
          Instant kept = Files.getLastModifiedTime(taken).toInstant();
          return Optional.of(new Found<>(taken, kind.read.apply(taken), kept));
        } catch (IOException | RuntimeException e) {
          moved(taken, taken.resolveSibling(left.getFileName() + ".broken"));
        }
      }
    }
    return Optional.empty();
  }

  /** Files of processes that are gone, the latest first. */
  private List<Path> left() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      List<Path> left =
          new ArrayList<>(all.filter(p -> gone(p) && Files.isRegularFile(p)).toList());
      left.sort(Comparator.comparingLong((Path p) -> writtenMillis(p)).reversed());
      return left;
    } catch (IOException | UncheckedIOException e) {
      return List.of();
    }
  }

  private boolean gone(Path path) {
    Owner owner = owner(path);
    return owner != null && !owner.equals(own) && !running.test(owner);
  }

  private @Nullable Owner owner(Path path) {
    Matcher parts = name.matcher(String.valueOf(path.getFileName()));
    return parts.matches()
        ? new Owner(Long.parseLong(parts.group(1)), Long.parseLong(parts.group(2)))
        : null;
  }

  private static long writtenMillis(Path path) {
    try {
      return Files.getLastModifiedTime(path).toMillis();
    } catch (IOException e) {
      return 0;
    }
  }

  private static boolean moved(Path from, Path to) {
    try {
      Files.move(from, to);
      return true;
    } catch (IOException e) {
      // another window was faster
      return false;
    }
  }
}
