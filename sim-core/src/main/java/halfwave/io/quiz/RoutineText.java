package halfwave.io.quiz;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.grading.Routine;

/** Writes somebody's own order of work; {@link RoutineFile} reads it. */
public final class RoutineText {

  private RoutineText() {}

  /** The text of the file; {@link RoutineFile#read} refuses one that is not finished. */
  public static String of(RoutineFile.Unfinished routine) {
    return node(routine).toPrettyString() + "\n";
  }

  static ObjectNode node(RoutineFile.Unfinished routine) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", RoutineFile.FORMAT)
        .put("version", RoutineFile.VERSION)
        .put("name", routine.name());
    ArrayNode steps = root.putArray("steps");
    routine.steps().forEach(s -> put(steps.addObject(), s));
    return root;
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
