package halfwave.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The report that is there belongs to the tests that are there. Its numbers are compared by the
 * reference tests themselves, see {@link Recorded}.
 */
class ValidationPageTest {

  private static final Path TESTS = Path.of("src", "test", "java");

  private static List<Path> referenceTests() throws IOException {
    try (Stream<Path> files = Files.walk(TESTS)) {
      return files.filter(f -> f.toString().endsWith("ReferenceTest.java")).toList();
    }
  }

  @Test
  void pageSaysWhatItsDataSay() throws IOException {
    assertThat(Files.readString(RowFile.DOCUMENTS.resolve("validation.md")))
        .as("docs/validation.md; write it anew: %s", Page.MAKE)
        .isEqualTo(new Page(RowFile.read()).text());
    for (Plot plot : Plot.values()) {
      assertThat(RowFile.FOLDER.resolve(plot.file())).exists();
    }
  }

  @Test
  void everyReferenceTestIsInIt() throws IOException {
    for (Path file : referenceTests()) {
      assertThat(Files.readString(file)).as("%s", file).contains("@Validated(Area.");
    }
  }

  @Test
  void nothingIsLeftOfTestsThatAreGone() throws IOException {
    List<String> there =
        referenceTests().stream()
            .map(f -> TESTS.resolve("halfwave").relativize(f).toString())
            .map(f -> f.replace(".java", "").replace(File.separatorChar, '.'))
            .toList();
    assertThat(RowFile.read()).extracting(Row::test).isSubsetOf(there);
  }

  @Test
  void numbersKeepTheirUnitsAndDigits() {
    assertThat(Unit.MICROAMPS.text(2.431_4e-6, 0.01e-6)).isEqualTo("2.43 µA");
    assertThat(Unit.MICROAMPS.text(-3.1e-13, 0)).isEqualTo("−3.1e−7 µA");
    assertThat(Unit.MICROAMPS.text(3e-22, 1e-17)).isEqualTo("0 µA");
    assertThat(Unit.OHMS.text(2.2e6, 1)).isEqualTo("2200000 Ω");
    assertThat(Unit.RATIO.text(0.5, 0)).isEqualTo("0.5");
  }

  @Test
  void aFailureNamesSourceSubjectAndNumbers() {
    Check check = Reference.memory("a textbook").check("rod", Unit.KELVIN, 431).at("after 3 s");
    assertThat(catchThrowable(() -> check.isCloseTo(425, 2, "why")))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("rod (after 3 s): expected 425 K ± 2 K, computed 431 K")
        .hasMessageContaining("source: a textbook (memory)")
        .hasMessageContaining("tolerance: why");
  }

  @Test
  void aKnownDisagreementIsMissedWhenItIsGoneOrGrown() {
    Reference practice = Reference.practice("practice");
    assertThat(
            catchThrowable(
                () -> practice.check("gone", Unit.RATIO, 1).isKnownToDiffer(0, 1, 2, 0.5, "")))
        .hasMessageContaining("is gone");
    assertThat(
            catchThrowable(
                () -> practice.check("grown", Unit.RATIO, 3).isKnownToDiffer(0, 1, 2, 0.5, "")))
        .hasMessageContaining("model so far 2 ± 0.5, computed 3");
  }
}
