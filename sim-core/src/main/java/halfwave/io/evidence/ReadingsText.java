package halfwave.io.evidence;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.matching.TakenReading;
import java.util.List;

/** Writes readings in the form that {@link ReadingsFile} reads, numbers in SI. */
public final class ReadingsText {

  private ReadingsText() {}

  /**
   * The whole text.
   *
   * @param readings taken with shipped meters, in order; at least one
   */
  public static String of(List<TakenReading> readings) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", ReadingsFile.FORMAT).put("version", ReadingsFile.VERSION);
    ArrayNode all = root.putArray("readings");
    readings.forEach(r -> MatchJson.put(all.addObject(), r.sight()).put("value", r.value().si()));
    return root.toPrettyString() + "\n";
  }
}
