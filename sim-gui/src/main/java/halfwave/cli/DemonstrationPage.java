package halfwave.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.display.Sentences;
import halfwave.io.lesson.DemonstrationText;
import halfwave.lesson.Claim;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Question;
import halfwave.lesson.Rehearsal;
import halfwave.lesson.Rehearsal.Doubt;
import halfwave.lesson.Step;
import halfwave.lesson.Words;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.List;
import java.util.Locale;

/** A demonstration as text to read, with what the model has against it. */
final class DemonstrationPage {

  private static final int WIDTH = 96;

  private final Demonstration demonstration;
  private final Sentences sentences;
  private final Locale reader;

  DemonstrationPage(Demonstration demonstration, Sentences sentences, Locale reader) {
    this.demonstration = demonstration;
    this.sentences = sentences;
    this.reader = reader;
  }

  String text(Rehearsal rehearsal) {
    StringBuilder page = new StringBuilder();
    put(page, "", demonstration.title());
    put(page, "", demonstration.about());
    List<Step> steps = demonstration.steps();
    for (int k = 0; k < steps.size(); k++) {
      Step step = steps.get(k);
      page.append('\n').append(k + 1).append(". ");
      put(page, "", step.heading());
      put(page, "   ", step.say());
      Question question = step.question();
      if (question != null) {
        put(page, question);
      }
      Words explanation = step.explanation();
      if (explanation != null) {
        put(page, "   ", explanation);
      }
    }
    page.append('\n');
    if (rehearsal.doubts().isEmpty()) {
      page.append(sentences.text(Message.of(MessageKey.DEMONSTRATION_HOLDS))).append('\n');
    }
    rehearsal.doubts().forEach(d -> page.append(sentences.text(said(d))).append('\n'));
    return page.toString();
  }

  private void put(StringBuilder page, Question question) {
    put(page, "   ? ", question.ask());
    for (int k = 0; k < question.answers().size(); k++) {
      String mark = k == question.right() ? "   * " : "     ";
      put(page, mark + letter(k) + ") ", question.answers().get(k).text());
    }
  }

  private static String letter(int answer) {
    return String.valueOf((char) ('a' + answer));
  }

  private void put(StringBuilder page, String lead, Words words) {
    List<String> lines = Wrapping.lines(words.in(reader), WIDTH - lead.length());
    String room = "\n" + " ".repeat(lead.length());
    page.append(lead).append(String.join(room, lines)).append('\n');
  }

  private static Message said(Doubt doubt) {
    Argument step = Argument.count(doubt.stepIndex() + 1L);
    Claim claim = doubt.claim();
    Integer answer = doubt.answerIndex();
    if (claim == null) {
      return Message.of(
          MessageKey.DEMONSTRATION_WRONG_COMES_TRUE,
          step,
          Argument.text(answer == null ? "" : letter(answer)));
    }
    return Message.of(
        answer == null ? MessageKey.DEMONSTRATION_DOUBT : MessageKey.DEMONSTRATION_RIGHT_FAILS,
        step,
        Argument.text(DemonstrationText.of(claim)));
  }

  String json(Rehearsal rehearsal) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("name", demonstration.name())
        .put("title", demonstration.title().in(reader))
        .put("steps", demonstration.steps().size());
    ArrayNode doubts = root.putArray("doubts");
    for (Doubt doubt : rehearsal.doubts()) {
      Claim claim = doubt.claim();
      doubts
          .addObject()
          .put("step", doubt.stepIndex())
          .put("answer", doubt.answerIndex())
          .put("claim", claim == null ? null : DemonstrationText.of(claim))
          .put("text", sentences.text(said(doubt)));
    }
    return root.toPrettyString() + "\n";
  }
}
