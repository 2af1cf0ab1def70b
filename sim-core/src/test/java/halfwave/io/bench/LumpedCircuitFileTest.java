package halfwave.io.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import halfwave.circuit.LumpedCircuit;
import halfwave.circuit.SquareRootLaw;
import halfwave.circuit.SteadyState;
import halfwave.display.Sentences;
import halfwave.io.BadInputException;
import halfwave.io.JsonFile;
import halfwave.io.bench.CircuitFiles.Wrong;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Circuit files are read as documented, and what is wrong is refused by file, field and value. */
class LumpedCircuitFileTest {

  @TempDir Path folder;

  private static List<LumpedCircuitFile.Entry> read(String text) {
    return LumpedCircuitFile.of(JsonFile.parse("c.json", text.getBytes(StandardCharsets.UTF_8)));
  }

  private static String refusal(String text) {
    return line(catchThrowableOfType(BadInputException.class, () -> read(text)));
  }

  private static String line(BadInputException e) {
    assertThat(e).isNotNull();
    String line = e.line(Sentences.in(Locale.ENGLISH));
    assertThat(line).doesNotContain("\n");
    return line;
  }

  @Test
  void fieldsMeanWhatTheyAreCalled() {
    LumpedCircuit circuit = read(CircuitFiles.GOOD).get(0).circuit();

    assertThat(circuit)
        .isEqualTo(
            new LumpedCircuit(
                new LumpedCircuit.Source(120, 60, 1e5, null, null),
                new LumpedCircuit.Lead(0.5, null, null),
                null,
                new SquareRootLaw(2e-7, 2e-6, 5e5),
                new LumpedCircuit.Film(1e6, 0),
                new LumpedCircuit.Ground(0)));
  }

  @Test
  void openIsAnInfiniteResistance() {
    LumpedCircuit circuit =
        read(CircuitFiles.GOOD.replace(
                "\"ground\": {\"resistanceOhms\": 0}",
                "\"ground\": {\"resistanceOhms\": \"open\"}"))
            .get(0)
            .circuit();

    assertThat(circuit.ground().resistanceOhms()).isEqualTo(Double.POSITIVE_INFINITY);
  }

  @Test
  void listsAndRowsAreRead() {
    String row = "{\"expected\": {\"x\": [1]}, \"circuit\": " + CircuitFiles.GOOD + "}";

    assertThat(read(row)).hasSize(1);
    assertThat(read("[" + row + "," + CircuitFiles.GOOD + "," + row + "]"))
        .extracting(entry -> entry.where().path())
        .containsExactly("[0].circuit", "[1]", "[2].circuit");
  }

  static Stream<Wrong> wrong() {
    return Stream.concat(CircuitFiles.WRONG.stream(), CircuitFiles.UNREADABLE.stream());
  }

  @ParameterizedTest
  @MethodSource("wrong")
  void whatIsWrongIsRefusedByFieldAndValue(Wrong wrong) {
    String line = refusal(wrong.text());

    assertThat(line)
        .startsWith(
            "c.json: " + wrong.field() + " = " + wrong.value() + ": allowed is " + wrong.allowed());
  }

  @Test
  void fieldOfALaterRowIsNamed() {
    String bad = CircuitFiles.GOOD.replace("\"resistanceOhms\": 0.5", "\"resistanceOhms\": -2");

    assertThat(refusal("[" + CircuitFiles.GOOD + ", {\"circuit\": " + bad + "}]"))
        .startsWith("c.json: [1].circuit.lead.resistanceOhms = -2: allowed is ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "7", "null", "\"text\"", "[3]", "[[]]", "[{}]", "{}"})
  void othersThanCircuitsAreRefused(String text) {
    assertThat(refusal(text)).startsWith("c.json: ").contains("allowed is ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  \n", "nonsense", "{} {}", "{} x", "{\"a\": 1,}", "{'a': 1}"})
  void brokenJsonIsRefusedByLineAndColumn(String text) {
    assertThat(refusal(text)).startsWith("c.json").containsPattern("\\(line \\d+, column \\d+\\)");
  }

  /** A file may break off after any of its characters. */
  @Test
  void truncatedFileIsRefusedWhereverItEnds() {
    String whole = CircuitFiles.GOOD.strip();
    assertThat(IntStream.range(0, whole.length()))
        .allSatisfy(end -> assertThat(refusal(whole.substring(0, end))).contains("(line "));
  }

  @Test
  void truncatedFileNamesTheFieldItEndsIn() {
    String text = CircuitFiles.GOOD.substring(0, CircuitFiles.GOOD.indexOf("60") + 1);

    assertThat(refusal(text)).startsWith("c.json: source.frequencyHz = (broken off): ");
  }

  @Test
  void bytesThatAreNoTextAreRefused() {
    byte[] bytes = {'{', '"', (byte) 0xff, (byte) 0xfe, '"', ':', '1', '}'};

    assertThat(
            line(
                catchThrowableOfType(
                    BadInputException.class, () -> JsonFile.parse("c.json", bytes))))
        .contains("correct JSON");
  }

  @Test
  void depthHasALimit() {
    assertThat(refusal("[".repeat(100_000))).contains("correct JSON");
  }

  @Test
  void filesThatAreNoneAreRefused() throws IOException {
    Path missing = folder.resolve("missing.json");
    Path file = Files.writeString(folder.resolve("file"), "x");

    Map<Path, String> refusals =
        Map.of(
            folder,
            folder + ": allowed is a file, not a folder",
            missing,
            missing + ": allowed is a file that exists",
            file.resolve("below"),
            file.resolve("below") + ": allowed is a file that can be read");
    refusals.forEach(
        (path, said) ->
            assertThat(
                    line(
                        catchThrowableOfType(
                            BadInputException.class, () -> LumpedCircuitFile.read(path))))
                .isEqualTo(said));
  }

  @Test
  void shortedSourceIsRefusedByItsElement() {
    String text =
        CircuitFiles.GOOD
            .replace("\"resistanceOhms\": 1e5", "\"resistanceOhms\": 0")
            .replace("\"returnOhms\": null", "\"returnOhms\": 0");
    LumpedCircuitFile.Entry entry = read(text).get(0);
    SteadyState.Failed failed = (SteadyState.Failed) SteadyState.of(entry.circuit().circuit());

    assertThat(line(entry.unsolvable(failed)))
        .isEqualTo(
            "c.json: source.resistanceOhms = 0: allowed is a circuit that settles"
                + " (zero ohms across the ideal source; in trouble: source)");
  }

  @Test
  void linesSpeakSpanish() {
    BadInputException e =
        catchThrowableOfType(
            BadInputException.class,
            () -> read(CircuitFiles.GOOD.replace("\"frequencyHz\": 60", "\"frequencyHz\": 0")));

    assertThat(e.line(Sentences.in(Locale.forLanguageTag("es"))))
        .isEqualTo("c.json: source.frequencyHz = 0: se admite un número de 1 a 1000");
  }
}
