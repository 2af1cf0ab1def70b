package halfwave.io.evidence;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.display.Sentences;
import halfwave.io.JsonValue;
import halfwave.io.bench.BenchText;
import halfwave.matching.Match;
import halfwave.matching.Match.Proposal;
import halfwave.matching.Sight;

/**
 * A match as JSON, numbers in SI, {@code "open"} for infinite ohms; only {@code conclusions} are in
 * a language.
 */
public final class MatchJson {

  private MatchJson() {}

  /** The whole text. */
  public static String of(Match match, Sentences sentences) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode estimates = root.putArray("estimates");
    for (Match.Estimate e : match.estimates()) {
      ObjectNode node = estimates.addObject().put("unknown", JsonValue.spelling(e.unknown()));
      BenchText.putOhms(node, "value", e.value().si());
      BenchText.putOhms(node, "low", e.low().si());
      BenchText.putOhms(node, "high", e.high().si());
    }
    ArrayNode readings = root.putArray("readings");
    for (Match.Compared c : match.compared()) {
      put(readings.addObject(), c.taken().sight())
          .put("read", c.taken().value().si())
          .put("fitted", c.fitted().si())
          .put("deviations", c.deviationCount());
    }
    root.put("fitProbability", match.fitProbability());
    ArrayNode ambiguities = root.putArray("ambiguities");
    for (Match.Ambiguity a : match.ambiguities()) {
      ObjectNode node = ambiguities.addObject();
      ArrayNode unknowns = node.putArray("unknowns");
      a.unknowns().forEach(u -> unknowns.add(JsonValue.spelling(u)));
      Proposal further = a.further();
      if (further == null) {
        node.putNull("further");
      } else {
        put(node.putObject("further"), further.sight())
            .put("expected", further.expected().si())
            .put("remainingRatio", further.remainingRatio());
      }
    }
    ArrayNode conclusions = root.putArray("conclusions");
    MatchWords.conclusions(match).forEach(m -> conclusions.add(sentences.text(m)));
    root.set("bench", BenchText.node(match.bench()));
    return root.toPrettyString() + "\n";
  }

  static ObjectNode put(ObjectNode node, Sight sight) {
    return node.put("kind", JsonValue.spelling(sight.kind()))
        .put("cleaned", sight.setting().cleaned())
        .put("rodAcross", sight.setting().acrossMeters())
        .put("rodUp", sight.setting().upMeters())
        .put("rodAlong", sight.setting().alongMeters())
        .put("meter", sight.meter().name());
  }
}
