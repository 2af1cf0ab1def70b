package halfwave.io.evidence;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.diagnosis.Advice;
import halfwave.diagnosis.Belief;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.CheckAdvice;
import halfwave.diagnosis.Reasons;
import halfwave.diagnosis.RepairAdvice;
import halfwave.diagnosis.Step;
import halfwave.display.Sentences;
import halfwave.message.Message;
import java.util.List;
import java.util.Map;

/** A diagnosis for programs. */
public final class DiagnosisJson {

  private DiagnosisJson() {}

  /** The text of it; sentences are in their language, all else in SI. */
  public static String text(Belief belief, Advice advice, Sentences sentences) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode steps = root.putArray("steps");
    belief.steps().forEach(s -> step(steps.addObject(), s, sentences));
    causes(root.putObject("now"), belief.now());
    causes(root.putObject("atFirst"), belief.atFirst());
    root.put("doubtBits", advice.doubtBits()).put("repairSeconds", advice.repairSeconds());
    ArrayNode checks = root.putArray("checks");
    advice.checks().forEach(c -> check(checks.addObject(), c));
    ArrayNode repairs = root.putArray("repairs");
    advice.repairs().forEach(r -> repair(repairs.addObject(), r));
    said(root.putArray("next"), Reasons.next(advice), sentences);
    root.put("customer", sentences.text(Reasons.customer(belief, advice)));
    return root.toPrettyString() + "\n";
  }

  private static void step(ObjectNode node, Step step, Sentences sentences) {
    node.put("entry", CallLogWords.text(step.entry()))
        .put("expectedProbability", step.expectedProbability())
        .put("surprising", step.surprising());
    said(node.putArray("reasons"), Reasons.of(step), sentences);
  }

  private static void said(ArrayNode node, List<Message> messages, Sentences sentences) {
    messages.forEach(m -> node.add(sentences.text(m)));
  }

  private static void causes(ObjectNode node, Map<Cause, Double> causes) {
    causes.forEach((cause, probability) -> node.put(cause.id(), probability));
  }

  private static void check(ObjectNode node, CheckAdvice c) {
    node.put("check", c.check().id())
        .put("gainBits", c.gainBits())
        .put("effortSeconds", c.effortSeconds())
        .put("worthSeconds", c.worthSeconds())
        .put("pays", c.pays());
  }

  private static void repair(ObjectNode node, RepairAdvice r) {
    node.put("repair", r.repair().id())
        .put("curesProbability", r.curesProbability())
        .put("effortSeconds", r.effortSeconds())
        .put("spoiltBits", r.spoiltBits());
  }
}
