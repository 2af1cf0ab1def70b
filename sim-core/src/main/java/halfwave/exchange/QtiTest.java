package halfwave.exchange;

import halfwave.display.Sentences;
import halfwave.explain.Caution;
import halfwave.message.Message;
import halfwave.quiz.Quiz;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A quiz as the {@code assessmentTest} of QTI 2.1: its calls by their weights. */
final class QtiTest {

  private static final String SCORE = "SCORE";
  private static final String WEIGHT = "WEIGHT";
  private static final double SECONDS_PER_MINUTE = 60;

  private final Quiz quiz;
  private final Sentences sentences;
  private final Locale reader;

  private QtiTest(Quiz quiz, Sentences sentences, Locale reader) {
    this.quiz = quiz;
    this.sentences = sentences;
    this.reader = reader;
  }

  /**
   * The file.
   *
   * @param quiz the quiz
   * @param items file of each item by its identifier, in the order of the calls
   * @param sentences language
   * @param reader the same language
   */
  static byte[] file(Quiz quiz, Map<String, String> items, Sentences sentences, Locale reader) {
    QtiTest test = new QtiTest(quiz, sentences, reader);
    return XmlText.file(
        "assessmentTest", QtiPackage.SPACE, QtiPackage.SCHEMA, x -> test.write(x, items));
  }

  private void write(XmlText x, Map<String, String> items) {
    String title = quiz.title().in(reader);
    x.attribute("identifier", QtiPackage.TEST).attribute("title", title);
    x.element(
        "outcomeDeclaration",
        d ->
            d.attribute("identifier", SCORE)
                .attribute("cardinality", "single")
                .attribute("baseType", "float"));
    if (quiz.rules().wallMinutes() > 0) {
      double seconds = SECONDS_PER_MINUTE * quiz.rules().wallMinutes();
      x.element("timeLimits", t -> t.attribute("maxTime", Double.toString(seconds)));
    }
    x.element(
        "testPart",
        part ->
            part.attribute("identifier", "part-1")
                .attribute("navigationMode", "nonlinear")
                .attribute("submissionMode", "individual")
                .element("assessmentSection", s -> section(s, title, items)));
    x.element("outcomeProcessing", QtiTest::processing);
  }

  private void section(XmlText x, String title, Map<String, String> items) {
    x.attribute("identifier", "section-1")
        .attribute("title", title)
        .attribute("visible", "true")
        .element("rubricBlock", this::rubric);
    List<String> identifiers = List.copyOf(items.keySet());
    for (int k = 0; k < identifiers.size(); k++) {
      String identifier = identifiers.get(k);
      double weight = quiz.weight(quiz.calls().get(k));
      x.element(
          "assessmentItemRef",
          ref ->
              ref.attribute("identifier", identifier)
                  .attribute("href", items.getOrDefault(identifier, ""))
                  .element(
                      "weight",
                      w ->
                          w.attribute("identifier", WEIGHT)
                              .attribute("value", Double.toString(weight))));
    }
  }

  private void rubric(XmlText x) {
    x.attribute("view", "candidate").words("p", quiz.about().in(reader));
    for (Message caution : Caution.all()) {
      x.words("p", sentences.sentence(caution));
    }
  }

  /** The weights of the items that were right, together. */
  private static void processing(XmlText x) {
    x.element(
        "setOutcomeValue",
        set ->
            set.attribute("identifier", SCORE)
                .element(
                    "sum",
                    sum ->
                        sum.element(
                            "testVariables",
                            v ->
                                v.attribute("variableIdentifier", SCORE)
                                    .attribute("weightIdentifier", WEIGHT))));
  }
}
