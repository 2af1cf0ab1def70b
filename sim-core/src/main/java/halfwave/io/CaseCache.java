package halfwave.io;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.diagnosis.CaseTable;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Tables of cases in a folder, each under a name that follows from everything it was made from. A
 * folder that cannot be used costs time and nothing else.
 */
public final class CaseCache {

  /** To be raised with every change of the model that changes what a case looks like. */
  private static final int MODEL = 1;

  private final @Nullable Path folder;

  /**
   * A cache.
   *
   * @param folder where, made when it is needed; null keeps nothing
   */
  public CaseCache(@Nullable Path folder) {
    this.folder = folder;
  }

  /**
   * The table, read or made.
   *
   * @param bench the healthy bench
   * @param settings its board
   * @param causes what may be wrong, nothing first
   * @param watch asked while it is made
   * @return nothing where the watch ended it
   */
  public Optional<CaseTable> get(
      Bench bench, BoardSettings settings, List<Cause> causes, CaseTable.Watch watch) {
    Path file = folder == null ? null : folder.resolve(name(bench, settings, causes));
    Optional<CaseTable> kept = file == null ? Optional.empty() : read(file, causes, bench);
    if (kept.isPresent()) {
      return kept;
    }
    Optional<CaseTable> made = CaseTable.of(bench, settings, causes, watch);
    if (file != null && made.isPresent()) {
      write(file, made.get());
    }
    return made;
  }

  private static Optional<CaseTable> read(Path file, List<Cause> causes, Bench bench) {
    try {
      List<Check> checks = Check.all(bench.design().ignition());
      byte[] bytes = Files.readAllBytes(file);
      return Optional.of(CaseTableFile.of(file.toString(), bytes, causes, checks));
    } catch (IOException | BadInputException | IndexOutOfBoundsException e) {
      // made anew
      return Optional.empty();
    }
  }

  private static void write(Path file, CaseTable table) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      AtomicFile.write(file, CaseTableFile.bytes(table));
    } catch (IOException | BadInputException e) {
      // the next one waits again, and loses nothing
      return;
    }
  }

  private static String name(Bench bench, BoardSettings settings, List<Cause> causes) {
    String made =
        MODEL
            + BenchText.of(bench)
            + BoardText.of(settings)
            + causes.stream().map(Cause::id).collect(Collectors.joining(","));
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(made.getBytes(StandardCharsets.UTF_8));
      return bench.name() + "-" + HexFormat.of().formatHex(digest, 0, 12) + ".cases";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
