package halfwave.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.grading.SheetMarks;
import halfwave.quiz.InventedClass;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.io.IOException;
import java.net.URI;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * Against the rules of the Experience API, version 1.0.3, part two (Experience API Data), Advanced
 * Distributed Learning Initiative, 2016; each by the number of its section. There is no schema of
 * the standard itself: its text is the judge.
 */
@Validated(Area.EXCHANGE)
class XapiStatementsReferenceTest {

  private static final Reference STANDARD =
      Reference.seen("Experience API 1.0.3, part two, section 2.4.5.1");
  private static final URI HOME = URI.create("https://school.example/");
  private static final Instant TIME = Instant.parse("2026-01-31T12:00:00Z");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Section 2.4: the properties that a provider may give. */
  private static final Set<String> PROPERTIES =
      Set.of(
          "id",
          "actor",
          "verb",
          "object",
          "result",
          "context",
          "timestamp",
          "authority",
          "version",
          "attachments");

  /** Verbs of the vocabulary that the standard's own examples use (appendix A). */
  private static final Set<String> VERBS =
      Set.of(
          "http://adlnet.gov/expapi/verbs/attempted",
          "http://adlnet.gov/expapi/verbs/completed",
          "http://adlnet.gov/expapi/verbs/passed",
          "http://adlnet.gov/expapi/verbs/failed");

  private static final String TEXT =
      new XapiStatements(InventedClass.quiz(), HOME, TIME).of(InventedClass.marks());

  private static List<JsonNode> statements() throws IOException {
    List<JsonNode> all = new ArrayList<>();
    for (String line : TEXT.split("\n")) {
      all.add(MAPPER.readTree(line));
    }
    return all;
  }

  private static List<String> names(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static void iri(JsonNode value) {
    URI iri = URI.create(value.textValue());
    assertThat(iri.isAbsolute()).as(value.toString()).isTrue();
  }

  private static void languages(JsonNode map) {
    assertThat(map.size()).isPositive();
    for (String tag : names(map)) {
      assertThat(Locale.forLanguageTag(tag).toLanguageTag()).isEqualTo(tag);
      assertThat(map.get(tag).isTextual()).isTrue();
    }
  }

  private static void noNull(JsonNode node) {
    assertThat(node.isNull()).isFalse();
    node.forEach(XapiStatementsReferenceTest::noNull);
  }

  @Test
  void statementsHaveWhatTheyNeedAndNothingElse() throws IOException {
    Set<String> ids = new HashSet<>();
    for (JsonNode statement : statements()) {
      assertThat(PROPERTIES).as("2.4").containsAll(names(statement));
      assertThat(names(statement)).as("2.4").contains("id", "actor", "verb", "object");
      noNull(statement);
      String id = statement.get("id").textValue();
      assertThat(UUID.fromString(id)).as("2.4.1").hasToString(id);
      assertThat(UUID.fromString(id).variant()).as("2.4.1: variant 2").isEqualTo(2);
      assertThat(ids.add(id)).as("2.4.1: " + id).isTrue();
    }
  }

  @Test
  void actorsAreAgentsWithOneAccount() throws IOException {
    for (JsonNode statement : statements()) {
      JsonNode actor = statement.get("actor");
      assertThat(names(actor)).as("2.4.2.1").containsExactly("objectType", "account");
      assertThat(actor.get("objectType").textValue()).isEqualTo("Agent");
      assertThat(names(actor.get("account"))).as("2.4.2.4").containsExactly("homePage", "name");
      iri(actor.at("/account/homePage"));
      assertThat(actor.at("/account/name").textValue()).isNotBlank();
    }
  }

  @Test
  void verbsAndActivitiesAreNamedByIriAndShownInWords() throws IOException {
    for (JsonNode statement : statements()) {
      assertThat(VERBS).as("2.4.3").contains(statement.at("/verb/id").textValue());
      languages(statement.at("/verb/display"));
      JsonNode object = statement.get("object");
      assertThat(object.get("objectType").textValue()).as("2.4.4.1").isEqualTo("Activity");
      iri(object.get("id"));
      languages(object.at("/definition/name"));
      languages(object.at("/definition/description"));
      iri(object.at("/definition/type"));
    }
  }

  @Test
  void resultsAreScaledTimedAndComplete() throws IOException {
    for (JsonNode statement : statements()) {
      JsonNode result = statement.get("result");
      // 2.4.5.1 allows minus one to one; marks are never negative
      STANDARD
          .check(
              "scaled score of a statement", Unit.RATIO, result.at("/score/scaled").doubleValue())
          .isBetween(0, 1, "the standard's minus one to one; marks are never negative");
      assertThat(result.get("success").isBoolean()).as("2.4.5").isTrue();
      assertThat(result.get("completion").isBoolean()).as("2.4.5").isTrue();
      String duration = result.get("duration").textValue();
      assertThat(Duration.parse(duration).isNegative()).as("4.6").isFalse();
      for (String extension : names(result.path("extensions"))) {
        assertThat(URI.create(extension).isAbsolute()).as("4.1").isTrue();
      }
      String time = statement.get("timestamp").textValue();
      assertThat(time).as("4.5: to the millisecond").matches(".*T.*\\.\\d{3}Z");
      assertThat(Instant.parse(time)).isEqualTo(TIME);
    }
  }

  @Test
  void contextsNameTheQuizAsParent() throws IOException {
    for (JsonNode statement : statements()) {
      JsonNode context = statement.get("context");
      UUID.fromString(context.get("registration").textValue());
      boolean call = statement.at("/object/id").textValue().contains("/calls/");
      JsonNode parent = context.at("/contextActivities/parent");
      assertThat(parent.isArray()).as("2.4.6.2: an array").isEqualTo(call);
      parent.forEach(p -> iri(p.get("id")));
    }
  }

  @Test
  void everyCallThatWasHandedInAndEveryQuizHasOne() throws IOException {
    long handed =
        InventedClass.marks().stream()
            .flatMap(s -> s.calls().stream())
            .filter(c -> c.facts().done())
            .count();
    List<String> verbs = new ArrayList<>();
    for (JsonNode statement : statements()) {
      verbs.add(statement.at("/verb/id").textValue().replaceAll(".*/", ""));
    }
    assertThat(verbs).hasSize((int) handed + InventedClass.marks().size());
    long passed = InventedClass.marks().stream().filter(SheetMarks::passed).count();
    assertThat(verbs.stream().filter("passed"::equals)).hasSize((int) passed);
    // one was stopped by danger before a conclusion
    assertThat(verbs.stream().filter("attempted"::equals)).hasSize(1);
  }

  @Test
  void theSameMarksGiveTheSameLinesAndAnotherTimeOthers() {
    XapiStatements again = new XapiStatements(InventedClass.quiz(), HOME, TIME);
    assertThat(again.of(InventedClass.marks())).isEqualTo(TEXT);
    XapiStatements later = new XapiStatements(InventedClass.quiz(), HOME, TIME.plusMillis(1));
    assertThat(later.of(InventedClass.marks()).substring(0, 50))
        .isNotEqualTo(TEXT.substring(0, 50));
    assertThatThrownBy(() -> new XapiStatements(InventedClass.quiz(), URI.create("school"), TIME))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("school");
  }
}
