package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.grading.ClassReport;
import halfwave.grading.ItemReport;
import halfwave.grading.ObjectiveReport;
import halfwave.io.JsonValue;
import java.util.List;

/** A class report for a program. What cannot be computed is null. */
final class ReportJson {

  private ReportJson() {}

  static String text(ClassReport report) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    put(root, "alpha", report.alphaRatio());
    ArrayNode learners = root.putArray("learners");
    report
        .sheets()
        .forEach(
            s ->
                learners
                    .addObject()
                    .put("learner", s.sheet().learner())
                    .put("totalRatio", s.totalRatio())
                    .put("passed", s.passed()));
    ArrayNode items = root.putArray("items");
    for (ItemReport item : report.items()) {
      ObjectNode node =
          items.addObject().put("call", item.call().name()).put("count", item.count());
      put(node, "difficultyRatio", item.difficultyRatio());
      put(node, "discrimination", item.discriminationRatio());
      put(node, "medianMinutes", item.medianMinutes());
      turns(node.putArray("wrongTurns"), item.wrongTurns());
      turns(node.putArray("wrongCauses"), item.wrongCauses());
    }
    ArrayNode objectives = root.putArray("objectives");
    for (ObjectiveReport o : report.objectives()) {
      objectives
          .addObject()
          .put("objective", JsonValue.spelling(o.objective()))
          .put("calls", o.calls())
          .put("ratio", o.ratio())
          .put("mastered", o.mastered());
    }
    return root.toPrettyString() + "\n";
  }

  private static void put(ObjectNode node, String name, double value) {
    node.put(name, Double.isNaN(value) ? null : value);
  }

  private static void turns(ArrayNode node, List<ItemReport.Turn> turns) {
    turns.forEach(t -> node.addObject().put("what", t.what()).put("count", t.count()));
  }
}
