package halfwave.cli;

import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.forecast.Calendar;
import halfwave.forecast.Forecast;
import halfwave.forecast.Forecast.Plan;
import halfwave.forecast.Forecast.Point;
import halfwave.io.evidence.ForecastWords;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;

/** A forecast as tables of readings, of what could be done and of rates, and what follows. */
final class ForecastText {

  /** Every so many points of the band have a line. */
  private static final int EVERY = 2;

  private static final int AMPS_DECIMALS = 2;
  private static final int RATIO_DIGITS = 2;

  /** Stands where a time is not reached. */
  private static final String NONE = "–";

  private final Sentences sentences;
  private final ResourceBundle words;
  private final Forecast forecast;
  private final @Nullable Calendar calendar;

  ForecastText(Standard standard, Forecast forecast, @Nullable Calendar calendar) {
    sentences = standard.sentences();
    words = standard.spec().resourceBundle();
    this.forecast = forecast;
    this.calendar = calendar;
  }

  String text() {
    List<String> conclusions =
        ForecastWords.conclusions(forecast, calendar).stream().map(sentences::text).toList();
    return String.join("\n", band(), plans(), rates(), Wrapping.paragraphs(conclusions));
  }

  private String band() {
    TextTable table = table("flame", "low", "middle", "high");
    for (int k = 0; k < forecast.band().size(); k += EVERY) {
      Point point = forecast.band().get(k);
      table.add(
          List.of(
              hours(point.flameSeconds()),
              amps(point.lowAmps()),
              amps(point.middleAmps()),
              amps(point.highAmps())));
    }
    return table.toString();
  }

  private String plans() {
    TextTable table = table("plan", "after", "minutes", "cost", "service", "likely");
    for (Plan plan : forecast.plans()) {
      Repair repair = plan.repair();
      table.add(
          List.of(
              repair == null
                  ? sentences.text(Message.of(MessageKey.FORECAST_NOTHING))
                  : sentences.name(repair),
              amps(plan.after().middleAmps()),
              Integer.toString(repair == null ? 0 : repair.minutes()),
              Integer.toString(repair == null ? 0 : repair.costUnits()),
              hours(plan.serviceSeconds()),
              hours(plan.likelySeconds())));
    }
    return table.toString();
  }

  private String rates() {
    TextTable table = table("rate", "low", "middle", "high");
    for (Forecast.Learned learned : forecast.learned()) {
      table.add(
          List.of(
              sentences.name(learned.rate()),
              ratio(learned.lowRatio()),
              ratio(learned.middleRatio()),
              ratio(learned.highRatio())));
    }
    return table.toString();
  }

  private TextTable table(String... columns) {
    List<String> heading = new ArrayList<>();
    for (String column : columns) {
      heading.add(words.getString("table." + column));
    }
    return new TextTable(heading, 1);
  }

  private String hours(double seconds) {
    return seconds == Double.POSITIVE_INFINITY
        ? NONE
        : sentences.text(ForecastWords.hours(seconds, calendar));
  }

  private String amps(double amps) {
    return sentences.quantities().fixed(amps, DisplayUnit.MICROAMP, AMPS_DECIMALS);
  }

  private String ratio(double ratio) {
    return sentences.quantities().significant(ratio, RATIO_DIGITS);
  }
}
