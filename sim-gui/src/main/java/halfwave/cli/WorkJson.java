package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.board.Ignition;
import halfwave.display.Sentences;
import halfwave.io.JsonValue;
import halfwave.message.Message;
import halfwave.sequence.Changes;
import halfwave.work.Access;
import halfwave.work.Handling;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import halfwave.work.Work;
import java.util.Collection;

/** One thing to do, for programs. */
final class WorkJson {

  private WorkJson() {}

  static ObjectNode of(Work work, Sentences sentences, Ignition ignition) {
    Access access = work.part().access();
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("work", work.id())
        .put("kind", kind(work))
        .put("name", sentences.name(work, ignition))
        .put("possible", work.possibleAt(ignition))
        .put("part", JsonValue.spelling(work.part()))
        .put("minutes", work.minutes())
        .put("accessMinutes", access.minutes())
        .put("fasteners", access.fasteners())
        .put("powerOff", work.powerOff())
        .put("gasOff", work.gasOff())
        .put("needsPower", work.needsPower())
        .put("needsCall", work.needsCall())
        .put("needsFlame", work.needsFlame())
        .put("preparation", JsonValue.spelling(work.preparation()));
    words(node, "covers", access.covers());
    words(node, "tools", work.tools());
    words(node, "hazards", work.hazards(ignition));
    words(node, "cautions", work.cautions(ignition));
    if (work instanceof Look look) {
      words(node, "outcomes", look.outcomes());
      words(node, "shows", look.shows());
    } else if (work instanceof MeterTest test) {
      words(node, "shows", test.shows());
    } else if (work instanceof Repair repair) {
      repair(node, repair);
    } else if (work instanceof Handling handling) {
      handling(node, handling, sentences, ignition);
    }
    return node;
  }

  private static String kind(Work work) {
    return JsonValue.spelling(Kind.of(work));
  }

  private enum Kind {
    LOOK,
    READING,
    REPAIR,
    HANDLING;

    static Kind of(Work work) {
      if (work instanceof Look) {
        return LOOK;
      }
      return work instanceof MeterTest ? READING : work instanceof Repair ? REPAIR : HANDLING;
    }
  }

  private static void repair(ObjectNode node, Repair repair) {
    words(node, "putsRight", repair.aspects());
    node.put("costUnits", repair.costUnits()).put("residueMeters", repair.residueMeters());
    words(node, "spoiltLooks", repair.spoiltLooks());
    words(node, "spoiltReadings", repair.spoiltReadings());
    node.put("mishap", repair.mishap().map(Handling::id).orElse(null));
  }

  private static void handling(
      ObjectNode node, Handling handling, Sentences sentences, Ignition ignition) {
    Message change = Changes.said(handling.change());
    node.put("probabilityRatio", handling.probabilityRatio(ignition))
        .put("trigger", handling.trigger().map(JsonValue::spelling).orElse(null))
        .put("consequence", sentences.text(change))
        .put("rightMinutes", handling.rightMinutes())
        .put("rightWay", sentences.rightWay(handling));
  }

  private static void words(
      ObjectNode node, String field, Collection<? extends Enum<?>> constants) {
    ArrayNode list = node.putArray(field);
    constants.forEach(constant -> list.add(JsonValue.spelling(constant)));
  }
}
