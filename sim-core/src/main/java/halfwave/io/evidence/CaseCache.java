package halfwave.io.evidence;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.diagnosis.CaseTable;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.evidence.SymptomTable;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.bench.BenchText;
import halfwave.io.bench.BoardText;
import java.io.IOException;
import java.io.InputStream;
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
 * Tables of cases, those of the shipped benches from the program itself and others from a folder,
 * each under a name that follows from everything it was made from. A folder that cannot be used
 * costs time and nothing else.
 */
public final class CaseCache {

  /** To be raised with every change of the model that changes what a case looks like. */
  public static final int MODEL = 3;

  private static final String SHIPPED = "/halfwave/diagnosis/";

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
      Bench bench, BoardSettings settings, List<Cause> causes, SymptomTable.Watch watch) {
    String name = name(bench, settings, causes);
    Path file = folder == null ? null : folder.resolve(name);
    Optional<CaseTable> kept =
        shipped(name)
            .or(() -> file == null ? Optional.empty() : bytes(file))
            .flatMap(bytes -> read(name, bytes, causes, bench));
    return kept.isPresent() ? kept : make(bench, settings, causes, watch);
  }

  /** The same, made anew and kept, whatever is there. */
  Optional<CaseTable> make(
      Bench bench, BoardSettings settings, List<Cause> causes, SymptomTable.Watch watch) {
    Optional<CaseTable> made = CaseTable.of(bench, settings, causes, watch);
    if (folder != null && made.isPresent()) {
      write(folder.resolve(name(bench, settings, causes)), made.get());
    }
    return made;
  }

  /** The bytes of a table that comes with the program. */
  private static Optional<byte[]> shipped(String name) {
    try (InputStream stream = CaseCache.class.getResourceAsStream(SHIPPED + name)) {
      return stream == null ? Optional.empty() : Optional.of(stream.readAllBytes());
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Optional<byte[]> bytes(Path file) {
    try {
      return Optional.of(Files.readAllBytes(file));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Optional<CaseTable> read(
      String name, byte[] bytes, List<Cause> causes, Bench bench) {
    try {
      List<Check> checks = Check.all(bench.design().ignition());
      return Optional.of(CaseTableFile.of(name, bytes, causes, checks));
    } catch (BadInputException | IndexOutOfBoundsException e) {
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

  /** What the table of all this is called. */
  static String name(Bench bench, BoardSettings settings, List<Cause> causes) {
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
