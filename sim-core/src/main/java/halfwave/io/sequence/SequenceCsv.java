package halfwave.io.sequence;

import halfwave.board.BoardOutputs;
import halfwave.io.CsvLine;
import halfwave.io.JsonValue;
import halfwave.sequence.Sample;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The samples of a sequence as comma-separated values (RFC 4180: header line, CRLF line ends), the
 * same in every language: SI, dots as decimal signs, every digit; what is on is 1, what is off 0.
 * {@code failure} says in one word why there was no sense current; it is empty where there was one.
 */
public final class SequenceCsv {

  /** Names of the columns. */
  static final List<String> COLUMNS =
      List.of(
          "timeSeconds",
          "stage",
          "statusCode",
          "inducer",
          "igniter",
          "spark",
          "pilotValve",
          "mainValve",
          "blower",
          "flameSignal",
          "filteredDcAmps",
          "senseDcAmps",
          "senseAcAmpsRms",
          "litCount",
          "flameGrowthRatio",
          "rodKelvin",
          "igniterKelvin",
          "failure");

  private final OutputStream to;

  /** Writes the header line. */
  public SequenceCsv(OutputStream to) {
    this.to = to;
    line(COLUMNS);
  }

  /** One line each. */
  public void add(List<Sample> samples) {
    samples.forEach(sample -> line(cells(sample)));
  }

  private static List<String> cells(Sample s) {
    BoardOutputs o = s.outputs();
    return List.of(
        BigDecimal.valueOf(s.timeMillis(), 3).toPlainString(),
        JsonValue.spelling(s.stage()),
        JsonValue.spelling(s.code()),
        bit(o.inducer()),
        bit(o.igniter()),
        bit(o.spark()),
        bit(o.pilotValve()),
        bit(o.mainValve()),
        bit(o.blower()),
        JsonValue.spelling(s.signal()),
        Double.toString(s.filteredAmps()),
        Double.toString(s.sense().meanAmps()),
        Double.toString(s.sense().alternatingRmsAmps()),
        Integer.toString(s.litCount()),
        Double.toString(s.growthRatio()),
        Double.toString(s.rodKelvin()),
        Double.toString(s.igniterKelvin()),
        failure(s));
  }

  /** Why there was no sense current, in one word; empty where there was. */
  static String failure(Sample sample) {
    var unsolved = sample.sense().unsolved();
    return unsolved == null ? "" : JsonValue.spelling(unsolved.failure());
  }

  private static String bit(boolean on) {
    return on ? "1" : "0";
  }

  private void line(List<String> cells) {
    try {
      to.write(CsvLine.of(cells).getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
