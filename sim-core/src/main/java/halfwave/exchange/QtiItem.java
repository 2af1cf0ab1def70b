package halfwave.exchange;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.display.OutcomeText;
import halfwave.display.Sentences;
import halfwave.grading.MarkedMove;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Move;
import halfwave.quiz.Moves;
import halfwave.quiz.ServiceCall;
import halfwave.work.Repair;
import java.util.Locale;
import java.util.Map;

/** A service call as a single choice: the {@code assessmentItem} of QTI 2.1. */
final class QtiItem {

  private static final String RESPONSE = "RESPONSE";
  private static final String SCORE = "SCORE";
  private static final String FEEDBACK = "FEEDBACK";
  private static final String RIGHT = "right";
  private static final String WRONG = "wrong";

  private final QtiCase question;
  private final Sentences sentences;
  private final Locale reader;

  private QtiItem(QtiCase question, Sentences sentences, Locale reader) {
    this.question = question;
    this.sentences = sentences;
    this.reader = reader;
  }

  /** The file. */
  static byte[] file(String identifier, QtiCase question, Sentences sentences, Locale reader) {
    QtiItem item = new QtiItem(question, sentences, reader);
    return XmlText.file(
        "assessmentItem", QtiPackage.SPACE, QtiPackage.SCHEMA, x -> item.write(x, identifier));
  }

  private void write(XmlText x, String identifier) {
    ServiceCall call = question.variant().call();
    x.attribute("identifier", identifier)
        .attribute("title", call.title().in(reader))
        .language(reader.toLanguageTag())
        .attribute("adaptive", "false")
        .attribute("timeDependent", "false");
    declarations(x);
    x.element("itemBody", this::body);
    x.element("responseProcessing", this::processing);
    feedback(x, RIGHT, MessageKey.ITEM_RIGHT);
    feedback(x, WRONG, MessageKey.ITEM_WRONG);
  }

  private void declarations(XmlText x) {
    x.element(
        "responseDeclaration",
        d ->
            declared(d, RESPONSE, "identifier")
                .element(
                    "correctResponse",
                    c -> c.words("value", QtiCase.identifier(question.variant().cause()))));
    x.element(
        "outcomeDeclaration",
        d ->
            declared(d, SCORE, "float")
                .attribute("normalMaximum", "1")
                .element("defaultValue", v -> v.words("value", "0")));
    x.element("outcomeDeclaration", d -> declared(d, FEEDBACK, "identifier"));
  }

  private static XmlText declared(XmlText x, String identifier, String type) {
    return x.attribute("identifier", identifier)
        .attribute("cardinality", "single")
        .attribute("baseType", type);
  }

  private void body(XmlText x) {
    String complaint = question.variant().call().complaint().in(reader);
    x.words("p", said(MessageKey.ITEM_CUSTOMER, Argument.text(complaint)));
    x.element("table", this::table);
    x.element("choiceInteraction", this::choices);
  }

  private String said(MessageKey key, Argument... arguments) {
    return sentences.sentence(Message.of(key, arguments));
  }

  private void table(XmlText x) {
    x.element(
        "thead",
        head ->
            head.element(
                "tr",
                row ->
                    row.words("th", said(MessageKey.ITEM_TEST))
                        .words("th", said(MessageKey.ITEM_FOUND))));
    x.element("tbody", this::rows);
  }

  private void rows(XmlText x) {
    for (Map.Entry<Check, Outcome> e : question.found().entrySet()) {
      x.element(
          "tr",
          row ->
              row.words("td", sentences.sentence(Reasons.name(e.getKey())))
                  .words("td", OutcomeText.of(e.getValue(), sentences)));
    }
  }

  private void choices(XmlText x) {
    x.attribute("responseIdentifier", RESPONSE)
        .attribute("shuffle", "true")
        .attribute("maxChoices", "1")
        .words("prompt", said(MessageKey.ITEM_QUESTION));
    for (Cause cause : question.choices()) {
      x.element(
          "simpleChoice",
          c ->
              c.attribute("identifier", QtiCase.identifier(cause))
                  .words(sentences.sentence(Reasons.name(cause))));
    }
  }

  private void processing(XmlText x) {
    x.element(
        "responseCondition",
        condition -> {
          condition.element(
              "responseIf",
              hit -> {
                hit.element(
                    "match",
                    match ->
                        match
                            .element("variable", v -> v.attribute("identifier", RESPONSE))
                            .element("correct", v -> v.attribute("identifier", RESPONSE)));
                set(hit, SCORE, "float", "1");
                set(hit, FEEDBACK, "identifier", RIGHT);
              });
          condition.element(
              "responseElse",
              miss -> {
                set(miss, SCORE, "float", "0");
                set(miss, FEEDBACK, "identifier", WRONG);
              });
        });
  }

  private static void set(XmlText x, String outcome, String type, String value) {
    x.element(
        "setOutcomeValue",
        o ->
            o.attribute("identifier", outcome)
                .element("baseValue", v -> v.attribute("baseType", type).words(value)));
  }

  private void feedback(XmlText x, String which, MessageKey key) {
    x.element(
        "modalFeedback",
        m -> {
          m.attribute("outcomeIdentifier", FEEDBACK)
              .attribute("showHide", "show")
              .attribute("identifier", which);
          Cause cause = question.variant().cause();
          m.words("p", said(key, Argument.nested(Reasons.name(cause))));
          places(m);
          MarkedMove telling = question.telling();
          Outcome outcome = telling == null ? null : telling.done().outcome();
          if (telling != null && outcome != null) {
            m.words("p", toldBy(telling.done().move(), outcome));
          }
        });
  }

  private void places(XmlText x) {
    for (Repair repair : question.path().cures()) {
      x.words(
          "p", said(MessageKey.ITEM_PLACE, Argument.name(repair.part()), Argument.name(repair)));
    }
  }

  private String toldBy(Move move, Outcome outcome) {
    return said(
        MessageKey.ITEM_TOLD_BY,
        Argument.nested(Moves.said(move)),
        Argument.text(OutcomeText.of(outcome, sentences)));
  }
}
