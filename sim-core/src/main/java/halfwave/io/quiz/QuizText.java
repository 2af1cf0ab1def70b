package halfwave.io.quiz;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.fault.Fault;
import halfwave.io.JsonValue;
import halfwave.io.LanguageWords;
import halfwave.io.bench.BenchField;
import halfwave.quiz.BlueprintRow;
import halfwave.quiz.Hidden;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Weights;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Writes what {@link QuizFile} reads. */
public final class QuizText {

  private static final int HASH_BYTES = 8;

  private QuizText() {}

  /** The quiz as the text of the instructor's file. */
  public static String of(Quiz quiz) {
    return node(quiz, false).toPrettyString() + "\n";
  }

  /** The same to hand out: what is wrong can't be read by opening the file. */
  public static String sealed(Quiz quiz) {
    return node(quiz, true).toPrettyString() + "\n";
  }

  /** Says which quiz it is with all that is hidden, however its file is spaced or sealed. */
  public static String hash(Quiz quiz) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(node(quiz, false).toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest, 0, HASH_BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  static ObjectNode node(Quiz quiz, boolean sealed) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", QuizFile.FORMAT).put("version", QuizFile.VERSION).put("name", quiz.name());
    LanguageWords.put(root, "title", quiz.title());
    LanguageWords.put(root, "about", quiz.about());
    root.put("seed", quiz.seed()).put("passRatio", quiz.passRatio());
    put(root.putObject("weights"), quiz.weights());
    root.putObject("rules")
        .put("wallMinutes", quiz.rules().wallMinutes())
        .put("hints", quiz.rules().hints());
    ArrayNode rows = root.putArray("blueprint");
    quiz.blueprint().forEach(row -> put(rows.addObject(), row));
    ArrayNode calls = root.putArray("calls");
    quiz.calls().forEach(call -> put(calls.addObject(), quiz, call, sealed));
    return root;
  }

  private static void put(ObjectNode node, Weights weights) {
    node.put("safety", weights.safetyPoints())
        .put("testChoice", weights.testChoicePoints())
        .put("interpretation", weights.interpretationPoints())
        .put("cause", weights.causePoints())
        .put("repair", weights.repairPoints())
        .put("waste", weights.wastePoints());
  }

  private static void put(ObjectNode node, BlueprintRow row) {
    node.put("objective", JsonValue.spelling(row.objective()))
        .put("level", JsonValue.spelling(row.level()))
        .put("weight", row.weightRatio());
  }

  private static void put(ObjectNode node, Quiz quiz, ServiceCall call, boolean sealed) {
    node.put("name", call.name());
    LanguageWords.put(node, "title", call.title());
    LanguageWords.put(node, "complaint", call.complaint());
    BenchField.put(node, call.bench());
    if (call.board() != null) {
      node.put("board", call.board());
    }
    if (sealed) {
      node.put("sealed", HiddenSeal.sealed(hidden(call), quiz.name(), call.name()));
    } else {
      node.set("hidden", hidden(call));
    }
    ArrayNode closed = node.putArray("closed");
    call.closed().forEach(work -> closed.add(work.id()));
    node.put("minutes", call.minutes())
        .put("parts", call.partsUnits())
        .put("objective", JsonValue.spelling(call.objective()))
        .put("level", JsonValue.spelling(call.level()));
    if (call.since() != null) {
      node.put("since", JsonValue.spelling(call.since()));
    }
  }

  private static ArrayNode hidden(ServiceCall call) {
    ArrayNode alternatives = JsonNodeFactory.instance.arrayNode();
    for (Hidden hidden : call.hidden()) {
      ArrayNode faults = alternatives.addObject().putArray("faults");
      for (Hidden.Part part : hidden.faults()) {
        ObjectNode fault = faults.addObject().put("kind", part.kind().id());
        Fault fixed = part.fixed();
        if (fixed != null && fixed.severity() == Double.POSITIVE_INFINITY) {
          fault.put("severity", JsonValue.OPEN);
        } else if (fixed != null) {
          fault.put("severity", fixed.severity());
        }
      }
    }
    return alternatives;
  }
}
