package halfwave.display;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.board.Stage;
import halfwave.circuit.Failure;
import halfwave.circuit.Part;
import halfwave.instrument.ShippedMeters;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import halfwave.work.Handling;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every language has the same sentences and names, and the code has a use for each. */
class SentencesContractTest {

  private static Properties bundle(String suffix) throws IOException {
    Properties properties = new Properties();
    try (InputStream in =
            SentencesContractTest.class.getResourceAsStream("sentences" + suffix + ".properties");
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      properties.load(reader);
    }
    return properties;
  }

  private static Set<String> needed() {
    Stream<Enum<?>> named =
        Sentences.NAMED.stream().flatMap(type -> Arrays.stream(type.getEnumConstants()));
    Stream<String> shipped =
        Stream.of(
                ShippedBenches.all().stream().map(bench -> "bench." + bench.name()),
                ShippedBoards.all().stream().map(board -> "board." + board.name()),
                ShippedMeters.all().stream().map(meter -> "meter." + meter.name()))
            .flatMap(names -> names);
    return Stream.concat(
            Stream.concat(
                Stream.concat(
                    Sentences.WORDS.stream().map(word -> "word." + word),
                    Stream.concat(
                        Arrays.stream(Stage.values()).map(Sentences::briefKey),
                        Stream.concat(
                            Sentences.SPARK_NAMED.stream().map(Sentences::sparkKey),
                            Arrays.stream(Handling.values()).map(Sentences::rightKey)))),
                shipped),
            Stream.concat(Arrays.stream(MessageKey.values()), named).map(Sentences::bundleKey))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "_es"})
  void everyKeyHasItsSentenceAndNoneIsOver(String suffix) throws IOException {
    Properties bundle = bundle(suffix);

    Set<String> missing = needed();
    missing.removeAll(bundle.stringPropertyNames());
    Set<String> over = new TreeSet<>(bundle.stringPropertyNames());
    over.removeAll(needed());

    assertThat(missing).as("missing in sentences%s.properties", suffix).isEmpty();
    assertThat(over).as("over in sentences%s.properties", suffix).isEmpty();
    assertThat(bundle.values()).allSatisfy(text -> assertThat((String) text).isNotBlank());
  }

  @Test
  void placeholdersAgreeBetweenLanguages() throws IOException {
    Properties english = bundle("");
    Properties spanish = bundle("_es");

    assertThat(english.stringPropertyNames())
        .allSatisfy(
            key ->
                assertThat(placeholders(spanish.getProperty(key)))
                    .as(key)
                    .isEqualTo(placeholders(english.getProperty(key))));
  }

  /** No gap, or an argument would be said in no language. */
  @Test
  void placeholdersCountFromZero() throws IOException {
    Properties english = bundle("");

    assertThat(english.stringPropertyNames())
        .allSatisfy(
            key -> {
              List<Integer> found = new ArrayList<>(placeholders(english.getProperty(key)));
              for (int k = 0; k < found.size(); k++) {
                assertThat(found.get(k)).as(key).isEqualTo(k);
              }
            });
  }

  private static Set<Integer> placeholders(String text) {
    return Pattern.compile("\\{(\\d)}")
        .matcher(text)
        .results()
        .map(found -> Integer.valueOf(found.group(1)))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @EnumSource(Allowed.class)
  void everyKindOfRejectionIsSaid(Allowed allowed) {
    for (Locale language : Sentences.LANGUAGES) {
      String text =
          Sentences.in(language)
              .text(
                  Sentences.allowed(
                      new RejectedValueException("field", "value", allowed, 0.5, 20)));
      assertThat(text).isNotBlank().doesNotContain("{", "}");
    }
  }

  @Test
  void argumentsArePutIn() {
    Message failed =
        Message.of(
            MessageKey.SOLVE_FAILED,
            Argument.name(Failure.NOT_CONVERGED),
            Argument.name(Part.ROD_FILM),
            Argument.quantity(0.0041, Dimension.TIME),
            Argument.count(60));

    assertThat(Sentences.in(Locale.ENGLISH).text(failed))
        .isEqualTo(
            "the steady state was not reached; in trouble: film on the rod,"
                + " 4.10 ms into the period, after 60 iterations");
    assertThat(Sentences.in(Locale.forLanguageTag("es-MX")).text(failed))
        .contains("película de la varilla", " ms ");
  }

  @Test
  void whatArgumentsHoldIsNotLookedInto() {
    Message message =
        Message.of(
            MessageKey.BAD_FILE,
            Argument.text("{1} $1 \\"),
            Argument.nested(Message.of(MessageKey.ALLOWED_TEXT)));

    assertThat(Sentences.in(Locale.ENGLISH).text(message))
        .isEqualTo("{1} $1 \\: allowed is a text in quotes");
  }

  @Test
  void unknownLanguageIsEnglishWithItsDecimalPoint() {
    Sentences sentences = Sentences.in(Locale.forLanguageTag("zxx"));

    assertThat(sentences.name(Part.FLAME)).isEqualTo("flame");
    assertThat(sentences.text(Argument.quantity(1.5, Dimension.VOLTAGE))).isEqualTo("1.50 V");
  }

  @Test
  void openResistanceIsAWord() {
    Argument open = Argument.quantity(Double.POSITIVE_INFINITY, Dimension.RESISTANCE);

    assertThat(Sentences.in(Locale.ENGLISH).text(open)).isEqualTo("open");
  }
}
