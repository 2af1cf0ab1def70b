package halfwave.io.bench;

import halfwave.bench.Parameter;
import halfwave.explain.Axis;
import halfwave.explain.Sweep;
import halfwave.explain.SweepRow;
import halfwave.explain.SweepRow.Failed;
import halfwave.explain.SweepRow.Impossible;
import halfwave.explain.SweepRow.Taken;
import halfwave.io.CsvLine;
import halfwave.io.JsonValue;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * A sweep as comma-separated values (RFC 4180: header line, CRLF line ends), the same in every
 * language: SI, dots as decimal signs, every digit. Columns are the parameters, then {@code
 * seriesDcAmps, seriesAcAmpsRms, terminalAcVoltsRms, failure}; where nothing was read the three
 * readings are empty and {@code failure} says why in one word.
 */
public final class SweepCsv {

  /** Names of the readings, here and in {@link SweepJson}. */
  static final List<String> READINGS =
      List.of("seriesDcAmps", "seriesAcAmpsRms", "terminalAcVoltsRms");

  static final String FAILURE = "failure";

  private SweepCsv() {}

  /** The whole text. */
  public static String of(Sweep sweep) {
    StringBuilder text = new StringBuilder();
    List<String> header = new ArrayList<>();
    sweep.axes().stream().map(Axis::parameter).map(SweepCsv::column).forEach(header::add);
    header.addAll(READINGS);
    header.add(FAILURE);
    text.append(CsvLine.of(header));
    for (SweepRow row : sweep.rows()) {
      List<String> cells = new ArrayList<>();
      row.values().stream().map(Object::toString).forEach(cells::add);
      cells.addAll(readings(row));
      cells.add(failure(row));
      text.append(CsvLine.of(cells));
    }
    return text.toString();
  }

  /** Name of a parameter with its SI unit: {@code rodUpMeters}. */
  public static String column(Parameter parameter) {
    String[] words = parameter.id().split("-");
    StringBuilder name = new StringBuilder(words[0]);
    for (int k = 1; k < words.length; k++) {
      name.append(capital(words[k]));
    }
    String unit = unit(parameter.dimension());
    return name.toString().endsWith(unit) ? name.toString() : name + unit;
  }

  /** Why a row has no readings, in one word; empty where it has. */
  static String failure(SweepRow row) {
    if (row.outcome() instanceof Impossible impossible) {
      return JsonValue.spelling(impossible.reason().allowed());
    }
    return row.outcome() instanceof Failed failed
        ? JsonValue.spelling(failed.reason().failure())
        : "";
  }

  private static List<String> readings(SweepRow row) {
    return row.outcome() instanceof Taken t
        ? List.of(
            Double.toString(t.seriesMeanAmps()),
            Double.toString(t.seriesAlternatingRmsAmps()),
            Double.toString(t.terminalAlternatingRmsVolts()))
        : List.of("", "", "");
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  private static String unit(Dimension dimension) {
    return switch (dimension) {
      case VOLTAGE -> "Volts";
      case CURRENT -> "Amps";
      case RESISTANCE -> "Ohms";
      case CAPACITANCE -> "Farads";
      case LENGTH -> "Meters";
      case ANGLE -> "Radians";
      case AREA -> "SquareMeters";
      case PRESSURE -> "Pascals";
      case TEMPERATURE, TEMPERATURE_DIFFERENCE -> "Kelvin";
      case FREQUENCY -> "Hertz";
      case POWER -> "Watts";
      case SPEED -> "MetersPerSecond";
      case TIME -> "Seconds";
      case NUMBER_DENSITY -> "PerCubicMeter";
      case MASS_DENSITY -> "KilogramsPerCubicMeter";
      case RATIO, NUMBER -> "Ratio";
    };
  }
}
