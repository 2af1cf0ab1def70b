package halfwave.io;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.grading.Routine;

/** Writes somebody's own order of work; {@link RoutineFile} reads it. */
public final class RoutineText {

  private RoutineText() {}

  /** The text of the file. */
  public static String of(Routine routine) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", RoutineFile.FORMAT)
        .put("version", RoutineFile.VERSION)
        .put("name", routine.name());
    ArrayNode steps = root.putArray("steps");
    routine.steps().forEach(s -> put(steps.addObject(), s));
    return root.toPrettyString() + "\n";
  }

  private static void put(ObjectNode node, Routine.Step step) {
    if (step.check() != null) {
      node.put("check", step.check().id());
    }
    if (!step.found().isEmpty()) {
      ArrayNode found = node.putArray("found");
      step.found().stream().sorted().forEach(found::add);
    }
    if (!Double.isNaN(step.belowAmps())) {
      node.put("belowAmps", step.belowAmps());
    }
    if (!Double.isNaN(step.belowVolts())) {
      node.put("belowVolts", step.belowVolts());
    }
    if (step.repair() != null) {
      node.put("repair", step.repair().id());
    }
  }
}
