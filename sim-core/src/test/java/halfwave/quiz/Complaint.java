package halfwave.quiz;

import halfwave.board.StatusCode;
import halfwave.evidence.Course;
import halfwave.work.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a complaint says, in words of the model: a person's reading of it, as no program can do it.
 *
 * @param course how a heating call goes
 * @param light what the light tells of it, if the customer counted
 * @param flame what the flames look like in the first trial, if the customer looked
 * @param rodBlamed whether somebody blamed or worked on a rod that is innocent
 * @param since since when it has been so, if the story tells it
 */
record Complaint(
    Course course,
    Optional<StatusCode> light,
    Optional<Finding> flame,
    boolean rodBlamed,
    Optional<Finding> since) {

  private static final String FILE = "complaints.csv";
  private static final int COLUMNS = 6;

  /** Of each call of the bank, by its name. */
  static Map<String, Complaint> all() {
    Map<String, Complaint> all = new LinkedHashMap<>();
    text().lines().filter(l -> !l.startsWith("#")).skip(1).forEach(line -> put(all, line));
    return all;
  }

  private static void put(Map<String, Complaint> all, String line) {
    String[] cells = line.split(",", -1);
    if (cells.length != COLUMNS) {
      throw new IllegalStateException(FILE + ": " + line);
    }
    all.put(
        cells[0],
        new Complaint(
            Course.valueOf(constant(cells[1])),
            cell(cells[2], StatusCode::valueOf),
            cell(cells[3], Finding::valueOf),
            cells[4].equals("rod"),
            cell(cells[5], Finding::valueOf)));
  }

  private static <T> Optional<T> cell(String cell, Function<String, T> value) {
    return cell.isEmpty() ? Optional.empty() : Optional.of(value.apply(constant(cell)));
  }

  private static String constant(String word) {
    return word.toUpperCase(Locale.ROOT).replace('-', '_');
  }

  private static String text() {
    try (InputStream in = Complaint.class.getResourceAsStream(FILE)) {
      return new String(Objects.requireNonNull(in, FILE).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
