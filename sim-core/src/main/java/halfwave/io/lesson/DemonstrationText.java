package halfwave.io.lesson;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.io.JsonValue;
import halfwave.io.LanguageWords;
import halfwave.io.bench.BenchField;
import halfwave.io.sequence.ActText;
import halfwave.lesson.Answer;
import halfwave.lesson.Claim;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Play;
import halfwave.lesson.Question;
import halfwave.lesson.Step;
import halfwave.lesson.Words;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import java.util.List;

/** Writes what {@link DemonstrationFile} reads. */
public final class DemonstrationText {

  private DemonstrationText() {}

  /**
   * The demonstration as the text of a file.
   *
   * @throws IllegalArgumentException where an act or a claim has no words, such as a whole new
   *     condition
   */
  public static String of(Demonstration d) {
    return node(d).toPrettyString() + "\n";
  }

  /** The same as a part of a file. */
  static ObjectNode node(Demonstration d) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", DemonstrationFile.FORMAT)
        .put("version", DemonstrationFile.VERSION)
        .put("name", d.name());
    LanguageWords.put(root, "title", d.title());
    LanguageWords.put(root, "about", d.about());
    BenchField.put(root, d.bench());
    if (d.board() != null) {
      root.put("board", d.board());
    }
    root.put("seed", d.seed());
    ObjectNode start = root.putObject("start");
    start.put("seconds", ActText.seconds(d.start().lengthMillis()));
    putActs(start, d.start().acts());
    ArrayNode steps = root.putArray("steps");
    d.steps().forEach(step -> put(steps.addObject(), step));
    return root;
  }

  /** Whether a file has words for a deed. */
  public static boolean says(Deed deed) {
    try {
      ActText.put(JsonNodeFactory.instance.objectNode(), new Act(0, deed));
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /** A claim as a file holds it, in one line. */
  public static String of(Claim claim) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    ClaimFile.put(node, claim);
    return node.toString();
  }

  private static void put(ObjectNode node, Step step) {
    LanguageWords.put(node, "heading", step.heading());
    LanguageWords.put(node, "say", step.say());
    Question question = step.question();
    if (question != null) {
      put(node.putObject("question"), question);
    }
    Play play = step.play();
    node.put("seconds", ActText.seconds(play.lengthMillis())).put("speed", play.speedRatio());
    putActs(node, play.acts());
    Words explanation = step.explanation();
    if (explanation != null) {
      LanguageWords.put(node, "explanation", explanation);
    }
    putClaims(node, step.claims());
    ArrayNode lit = node.putArray("lit");
    step.lit().forEach(part -> lit.add(JsonValue.spelling(part)));
  }

  private static void put(ObjectNode node, Question question) {
    LanguageWords.put(node, "ask", question.ask());
    ArrayNode answers = node.putArray("answers");
    for (Answer answer : question.answers()) {
      ObjectNode one = answers.addObject();
      LanguageWords.put(one, "text", answer.text());
      putClaims(one, answer.claims());
    }
    node.put("right", question.right());
  }

  private static void putActs(ObjectNode node, List<Act> acts) {
    ArrayNode all = node.putArray("acts");
    acts.forEach(act -> ActText.put(all.addObject(), act));
  }

  private static void putClaims(ObjectNode node, List<Claim> claims) {
    ArrayNode all = node.putArray("claims");
    claims.forEach(claim -> ClaimFile.put(all.addObject(), claim));
  }
}
