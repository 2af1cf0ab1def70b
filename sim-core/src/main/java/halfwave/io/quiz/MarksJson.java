package halfwave.io.quiz;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.display.Sentences;
import halfwave.grading.CallMarks;
import halfwave.grading.Mark;
import halfwave.grading.MarkedMove;
import halfwave.grading.SheetMarks;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Marks as a file, {@code "format": "halfwave-marks", "version": 1}: to keep, and to compare with
 * when sheets are marked again.
 */
public final class MarksJson {

  static final String FORMAT = "halfwave-marks";
  static final int VERSION = 1;

  private MarksJson() {}

  /** The text of the file. */
  public static String text(List<SheetMarks> sheets, Sentences sentences) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", FORMAT).put("version", VERSION);
    ArrayNode all = root.putArray("sheets");
    for (SheetMarks sheet : sheets) {
      ObjectNode node =
          all.addObject()
              .put("learner", sheet.sheet().learner())
              .put("totalRatio", sheet.totalRatio())
              .put("passed", sheet.passed());
      ArrayNode remarks = node.putArray("remarks");
      sheet.remarks().forEach(r -> remarks.add(sentences.text(r)));
      ArrayNode calls = node.putArray("calls");
      sheet.calls().forEach(c -> put(calls.addObject(), c, sentences));
    }
    return root.toPrettyString() + "\n";
  }

  private static void put(ObjectNode node, CallMarks call, Sentences sentences) {
    node.put("call", call.call().name())
        .put("totalRatio", call.totalRatio())
        .put("processRatio", call.ratio(true))
        .put("resultRatio", call.ratio(false))
        .put("truth", call.truth().id())
        .put("said", call.said() == null ? null : call.said().id())
        .put("minutes", call.facts().minutes())
        .put("needlessParts", call.facts().needlessParts())
        .put("dangerous", call.facts().dangerous())
        .put("whole", call.facts().whole());
    ArrayNode remarks = node.putArray("remarks");
    call.remarks().forEach(r -> remarks.add(sentences.text(r)));
    ArrayNode marks = node.putArray("marks");
    for (Mark mark : call.marks()) {
      ObjectNode one =
          marks
              .addObject()
              .put("for", JsonValue.spelling(mark.criterion()))
              .put("ratio", mark.ratio())
              .put("points", mark.points());
      ArrayNode why = one.putArray("why");
      mark.reasons().forEach(r -> why.add(sentences.text(r)));
    }
    ArrayNode moves = node.putArray("moves");
    for (MarkedMove move : call.moves()) {
      ObjectNode one =
          moves
              .addObject()
              .put("move", MoveWords.text(move.done().move()))
              .put("minute", move.done().minute())
              .put("class", JsonValue.spelling(move.kind()));
      if (!Double.isNaN(move.ratio())) {
        one.put("ratio", move.ratio());
      }
    }
  }

  /** Learner, then call: its total, from a file that was kept. */
  public static Map<String, Map<String, Double>> totals(Path file) {
    JsonFields f = JsonFile.read(file).file(FORMAT, VERSION, "format", "version", "sheets");
    Map<String, Map<String, Double>> totals = new LinkedHashMap<>();
    for (JsonValue sheet : f.get("sheets").list(v -> v)) {
      JsonFields s = sheet.anyFields();
      Map<String, Double> calls = new LinkedHashMap<>();
      for (JsonValue call : s.get("calls").list(v -> v)) {
        JsonFields c = call.anyFields();
        calls.put(c.get("call").text(), c.get("totalRatio").number());
      }
      totals.put(s.get("learner").text(), calls);
    }
    return totals;
  }
}
