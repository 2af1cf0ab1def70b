package halfwave.io.evidence;

import halfwave.forecast.Forecast;
import halfwave.io.CsvLine;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The band of a forecast as CSV, in SI with every digit. */
public final class ForecastCsv {

  private static final List<String> COLUMNS =
      List.of("flameSeconds", "lowAmps", "middleAmps", "highAmps");

  private ForecastCsv() {}

  /** The whole text: one line per time. */
  public static String of(Forecast forecast) {
    return forecast.band().stream()
        .map(p -> Stream.of(p.flameSeconds(), p.lowAmps(), p.middleAmps(), p.highAmps()))
        .map(numbers -> CsvLine.of(numbers.map(Object::toString).toList()))
        .collect(Collectors.joining("", CsvLine.of(COLUMNS), ""));
  }
}
