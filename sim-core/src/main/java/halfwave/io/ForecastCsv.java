package halfwave.io;

import halfwave.forecast.Forecast;
import java.util.stream.Collectors;

/** The band of a forecast as CSV, in SI with every digit. */
public final class ForecastCsv {

  private static final String HEADING = "flameSeconds,lowAmps,middleAmps,highAmps";

  private ForecastCsv() {}

  /** The whole text: one line per time. */
  public static String of(Forecast forecast) {
    return forecast.band().stream()
        .map(p -> p.flameSeconds() + "," + p.lowAmps() + "," + p.middleAmps() + "," + p.highAmps())
        .collect(
            Collectors.joining(SweepCsv.LINE_END, HEADING + SweepCsv.LINE_END, SweepCsv.LINE_END));
  }
}
