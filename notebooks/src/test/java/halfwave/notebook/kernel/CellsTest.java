package halfwave.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import halfwave.notebook.Table;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells without any notebook program: values, pictures, and what is said of mistakes. */
class CellsTest {
  private static Cells cells;

  @BeforeAll
  static void begin() {
    cells = new Cells();
  }

  @AfterAll
  static void end() {
    cells.close();
  }

  @Test
  void theModelIsThereWithoutImports() {
    assertThat(cells.evaluate("Bench bench = ShippedBenches.standard();\ndcMicroamps(bench)"))
        .isInstanceOf(Double.class);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 + 1 | 2",
        "int a = 3; a | 3",
        "int b = 3; | ",
        "2 * 3; | ",
        "List.of(1, 2) | [1, 2]",
        "// nothing | ",
        "int later() { return given; } int given = 5; later() | 5",
      })
  void theLastExpressionIsTheResult(String source, String shown) {
    Object result = cells.evaluate(source);
    assertThat(result == null ? null : result.toString()).isEqualTo(shown);
  }

  @Test
  void aCompileErrorNamesLineAndText() {
    assertThatThrownBy(() -> cells.evaluate("int whole = 1;\n\n  int text = \"a\";\nint more = 2;"))
        .isInstanceOf(CellFailure.class)
        .hasMessageContaining("line 3: incompatible types")
        .hasMessageContaining("int text = \"a\";");
  }

  @Test
  void anUnknownNameIsNamed() {
    assertThatThrownBy(() -> cells.evaluate("double f() { return missing(); }"))
        .hasMessageContaining("f needs what is not there")
        .hasMessageContaining("missing()");
  }

  @Test
  void anExceptionNamesLineAndCauseAndNothingOfTheKernel() {
    assertThatThrownBy(
            () ->
                cells.evaluate(
                    "int fine = 1;\nthrow new IllegalStateException(\"bad\", new"
                        + " RuntimeException(\"why\"));"))
        .hasMessage("line 2: IllegalStateException: bad\nbecause of RuntimeException: why")
        .satisfies(thrown -> assertThat(thrown.getStackTrace()).isEmpty());
  }

  @Test
  void aClaimThatFailsEndsTheCell() {
    assertThatThrownBy(() -> cells.evaluate("check(\"all is well\", 1 > 2);"))
        .hasMessageContaining("all is well");
  }

  @Test
  void aPictureReachesThePageWhole() throws IOException {
    Object result =
        cells.evaluate(
            "Plot.of(\"t\", \"x (mm)\", \"y (µA)\").line(\"a\", List.of(0.0, 1.0), List.of(1.0,"
                + " 2.0))");
    Shown shown = Shown.of(Objects.requireNonNull(result));
    byte[] bytes = Base64.getDecoder().decode(shown.data().get(Shown.PNG));
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
    assertThat(image.getWidth()).isEqualTo(1080);
    // a PNG file ends with this chunk; one that is cut short is refused by some readers
    assertThat(new String(bytes, bytes.length - 8, 4, StandardCharsets.US_ASCII)).isEqualTo("IEND");
    assertThat(shown.data().get(Shown.PLAIN)).isEqualTo("PNG 1080 × 630");
  }

  @Test
  void aDrawingOfLinesStaysOne() {
    Object result = cells.evaluate("Svg.of(Bars.of(\"t\", \"µA\", 1).bar(\"a\", 2), \"t\")");
    assertThat(Shown.of(Objects.requireNonNull(result)).data().get(Shown.SVG)).startsWith("<svg");
  }

  @Test
  void aTableIsMarkdownAndText() {
    var data = Shown.of(Table.of("a (V)", "b").row(1, "x|y")).data();
    assertThat(data.get(Shown.MARKDOWN)).isEqualTo("| a (V) | b |\n| --- | --- |\n| 1 | x\\|y |");
    assertThat(data.get(Shown.PLAIN)).isEqualTo("a (V)  b\n1      x|y");
  }

  @Test
  void aCellThatRunsForeverCanBeStopped() throws InterruptedException {
    Cells own = new Cells();
    Handover.take();
    Thread stopper =
        new Thread(
            () -> {
              // the loop says that it has begun by what it leaves
              while (Handover.take() == null) {
                Thread.onSpinWait();
              }
              own.stop();
            });
    stopper.start();
    String forever = "while (true) { " + Handover.class.getName() + ".leave(1); }";
    assertThatThrownBy(() -> own.evaluate(forever)).hasMessage("stopped");
    stopper.join();
    assertThat(own.evaluate("1")).isEqualTo(1);
    own.close();
  }

  @Test
  void whatMayFollowIsOffered() {
    int[] anchor = new int[1];
    assertThat(cells.completions("ShippedBenches.sta", 18, anchor)).contains("standard()");
    assertThat(anchor[0]).isEqualTo(15);
    assertThat(cells.signature("dcMicroamps(", 12)).contains("dcMicroamps(Bench bench)");
    assertThat(cells.unfinished("for (;;) {")).isTrue();
    assertThat(cells.unfinished("int done = 1;")).isFalse();
  }
}
