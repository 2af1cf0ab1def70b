package halfwave.io.evidence;

import halfwave.forecast.Calendar;
import halfwave.forecast.Forecast;
import halfwave.forecast.Forecast.Plan;
import halfwave.forecast.Forecast.Point;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a forecast says, in messages. */
public final class ForecastWords {

  /** Whole hours are what a log has. */
  private static final double HOUR_SECONDS = 3600;

  private ForecastWords() {}

  /** Now, when to serve, what would help, and what the band is worth. */
  public static List<Message> conclusions(Forecast forecast, @Nullable Calendar calendar) {
    List<Message> all = new ArrayList<>();
    Point now = forecast.now();
    all.add(
        Message.of(
            MessageKey.FORECAST_NOW,
            amps(now.middleAmps()),
            amps(now.lowAmps()),
            amps(now.highAmps())));
    all.add(service(forecast, forecast.plans().get(0), calendar));
    if (!forecast.plausible()) {
      all.add(Message.of(MessageKey.FORECAST_IMPLAUSIBLE));
    }
    if (forecast.rough()) {
      all.add(
          Message.of(
              MessageKey.FORECAST_ROUGH, Argument.count(Math.round(forecast.effectiveCount()))));
    }
    all.add(Message.of(MessageKey.FORECAST_BAND));
    return all;
  }

  private static Message service(Forecast forecast, Plan plan, @Nullable Calendar calendar) {
    double now = forecast.question().nowSeconds();
    Argument limit = amps(forecast.question().limitAmps());
    Argument sure = Argument.quantity(forecast.question().confidenceProbability(), Dimension.RATIO);
    if (plan.serviceSeconds() == Double.POSITIVE_INFINITY) {
      return Message.of(
          MessageKey.FORECAST_LASTS,
          limit,
          sure,
          hours(now + forecast.question().aheadSeconds(), calendar));
    }
    return plan.serviceSeconds() <= now
        ? Message.of(MessageKey.FORECAST_DUE, limit, sure)
        : Message.of(
            MessageKey.FORECAST_SERVICE, limit, sure, hours(plan.serviceSeconds(), calendar));
  }

  /** A time with flame in whole hours, with its date where there is one. */
  public static Argument hours(double flameSeconds, @Nullable Calendar calendar) {
    // cut off: a service an hour early is none too late
    Argument hours = Argument.count((long) Math.floor(flameSeconds / HOUR_SECONDS));
    return Argument.nested(
        calendar == null
            ? Message.of(MessageKey.FORECAST_HOURS, hours)
            : Message.of(
                MessageKey.FORECAST_DAY,
                hours,
                Argument.text(calendar.day(flameSeconds).toString())));
  }

  private static Argument amps(double amps) {
    return Argument.quantity(amps, Dimension.CURRENT);
  }
}
