package halfwave.io.evidence;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.display.Sentences;
import halfwave.forecast.Calendar;
import halfwave.forecast.Forecast;
import halfwave.forecast.Forecast.Point;
import halfwave.io.JsonValue;
import halfwave.work.Repair;
import org.jspecify.annotations.Nullable;

/**
 * A forecast as JSON, numbers in SI; only {@code conclusions} are in a language. A time that is not
 * reached is null.
 */
public final class ForecastJson {

  private ForecastJson() {}

  /** The whole text. */
  public static String of(Forecast forecast, @Nullable Calendar calendar, Sentences sentences) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("limitAmps", forecast.question().limitAmps())
        .put("confidenceProbability", forecast.question().confidenceProbability())
        .put("nowSeconds", forecast.question().nowSeconds());
    ArrayNode band = root.putArray("band");
    forecast.band().forEach(p -> put(band.addObject(), p, calendar));
    ArrayNode plans = root.putArray("plans");
    for (Forecast.Plan plan : forecast.plans()) {
      ObjectNode node = plans.addObject();
      Repair repair = plan.repair();
      node.put("repair", repair == null ? null : repair.id())
          .put("minutes", repair == null ? 0 : repair.minutes())
          .put("costUnits", repair == null ? 0 : repair.costUnits());
      put(node.putObject("after"), plan.after(), calendar);
      time(node, "service", plan.serviceSeconds(), calendar);
      time(node, "likely", plan.likelySeconds(), calendar);
    }
    ArrayNode rates = root.putArray("rates");
    for (Forecast.Learned learned : forecast.learned()) {
      rates
          .addObject()
          .put("rate", JsonValue.spelling(learned.rate()))
          .put("lowRatio", learned.lowRatio())
          .put("middleRatio", learned.middleRatio())
          .put("highRatio", learned.highRatio());
    }
    root.put("effectiveCount", forecast.effectiveCount())
        .put("fitProbability", forecast.fitProbability());
    ArrayNode conclusions = root.putArray("conclusions");
    ForecastWords.conclusions(forecast, calendar).forEach(m -> conclusions.add(sentences.text(m)));
    return root.toPrettyString() + "\n";
  }

  private static void put(ObjectNode node, Point point, @Nullable Calendar calendar) {
    time(node, "flame", point.flameSeconds(), calendar);
    node.put("lowAmps", point.lowAmps())
        .put("middleAmps", point.middleAmps())
        .put("highAmps", point.highAmps());
  }

  private static void time(
      ObjectNode node, String name, double seconds, @Nullable Calendar calendar) {
    boolean reached = seconds < Double.POSITIVE_INFINITY;
    node.put(name + "Seconds", reached ? seconds : null);
    if (calendar != null) {
      node.put(name + "Date", reached ? calendar.day(seconds).toString() : null);
    }
  }
}
