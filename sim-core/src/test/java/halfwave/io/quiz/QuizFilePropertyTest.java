package halfwave.io.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import halfwave.fault.FaultKind;
import halfwave.io.BadInputException;
import halfwave.io.JsonFile;
import halfwave.quiz.Quiz;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Quiz files come back as they were, and one that is handed out tells nothing by being opened. */
class QuizFilePropertyTest {

  private static final Quiz BANK = ShippedQuizzes.bank();

  private static QuizFile.Opened read(String text) {
    return QuizFile.of(JsonFile.parse("quiz", text.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void comesBackAsItWas() {
    QuizFile.Opened opened = read(QuizText.of(BANK));
    assertThat(opened.quiz()).isEqualTo(BANK);
    assertThat(opened.sealed()).isFalse();
  }

  @Test
  void sealedIsTheSameQuizWithTheSameHash() {
    QuizFile.Opened opened = read(QuizText.sealed(BANK));
    assertThat(opened.quiz()).isEqualTo(BANK);
    assertThat(opened.sealed()).isTrue();
    assertThat(QuizText.hash(opened.quiz())).isEqualTo(QuizText.hash(BANK));
  }

  @Test
  void sealedNamesNoFault() {
    String text = QuizText.sealed(BANK);
    for (FaultKind kind : FaultKind.values()) {
      assertThat(text).doesNotContain("\"" + kind.id() + "\"");
    }
    assertThat(text).doesNotContain("hidden").doesNotContain("severity");
  }

  @Test
  void aSealThatWasChangedOrMovedIsRefusedByTheNameOfItsField() {
    String text = QuizText.sealed(BANK);
    Matcher seal = Pattern.compile("\"sealed\" : \"(.)").matcher(text);
    assertThat(seal.find()).isTrue();
    String other = seal.group(1).equals("A") ? "B" : "A";
    String changed = text.substring(0, seal.start(1)) + other + text.substring(seal.end(1));
    assertThatThrownBy(() -> read(changed))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("calls[0].sealed");
    String renamed = text.replace("\"name\" : \"" + BANK.calls().get(1).name(), "\"name\" : \"x");
    assertThatThrownBy(() -> read(renamed))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("calls[1].sealed");
  }

  @Test
  void withoutCallsItIsRefused() {
    String none = QuizText.of(BANK).replaceFirst("(?s)\"calls\" : \\[.*\\]", "\"calls\" : []");
    assertThatThrownBy(() -> read(none))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("calls");
  }

  /** The version that answer sheets carry is that of the build. */
  @Test
  void theEngineIsTheOneOfTheBuild() throws Exception {
    String pom = Files.readString(Path.of("pom.xml"));
    assertThat(pom).contains("<version>" + Engine.VERSION + "-SNAPSHOT</version>");
  }
}
