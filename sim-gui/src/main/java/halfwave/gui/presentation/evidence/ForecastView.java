package halfwave.gui.presentation.evidence;

import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.forecast.Calendar;
import halfwave.forecast.Forecast;
import halfwave.forecast.Forecasted;
import halfwave.gui.presentation.Wording;
import halfwave.io.bench.LumpedCircuitFile;
import halfwave.io.evidence.ForecastWords;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A forecast as the window shows it.
 *
 * @param forecast what is drawn, or null where there is none
 * @param calendar its dates
 * @param said what follows from it
 * @param doubtful whether the log holds something that is no ageing, or nothing could be forecast
 * @param rows what could be done now: a name, the reading then, minutes, cost, next service
 */
public record ForecastView(
    @Nullable Forecast forecast,
    @Nullable Calendar calendar,
    List<String> said,
    boolean doubtful,
    List<List<String>> rows) {

  /** Stands where a time is not reached. */
  private static final String NONE = "–";

  /** The view of an answer. */
  public static ForecastView of(ForecastAnswer answer, Wording words) {
    Sentences sentences = words.sentences();
    Calendar calendar = answer.calendar();
    if (answer.forecasted() instanceof Forecasted.Unsolved unsolved) {
      String why = sentences.sentence(LumpedCircuitFile.said(unsolved.reason()));
      return new ForecastView(null, calendar, List.of(why), true, List.of());
    }
    Forecast forecast = (Forecast) answer.forecasted();
    List<Message> all = ForecastWords.conclusions(forecast, calendar);
    List<String> said = new ArrayList<>();
    // the last one is about tables of rates, which the window does not show
    all.subList(0, all.size() - 1).forEach(m -> said.add(sentences.text(m)));
    said.add(words.text("forecast.band"));
    List<List<String>> rows = new ArrayList<>();
    forecast.plans().forEach(p -> rows.add(row(p, calendar, sentences)));
    return new ForecastView(
        forecast, calendar, List.copyOf(said), !forecast.plausible(), List.copyOf(rows));
  }

  private static List<String> row(
      Forecast.Plan plan, @Nullable Calendar calendar, Sentences sentences) {
    Repair repair = plan.repair();
    String name =
        repair == null
            ? sentences.text(Message.of(MessageKey.FORECAST_NOTHING))
            : sentences.name(repair);
    return List.of(
        Wording.capital(name),
        sentences.quantities().fixed(plan.after().middleAmps(), DisplayUnit.MICROAMP, 2),
        Integer.toString(repair == null ? 0 : repair.minutes()),
        Integer.toString(repair == null ? 0 : repair.costUnits()),
        plan.serviceSeconds() == Double.POSITIVE_INFINITY
            ? NONE
            : sentences.text(ForecastWords.hours(plan.serviceSeconds(), calendar)));
  }
}
