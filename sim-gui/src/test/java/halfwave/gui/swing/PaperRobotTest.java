package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.io.lesson.DemonstrationText;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.picture.Palette;
import java.awt.Color;
import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import org.junit.jupiter.api.Test;

/** What leaves the window arrives as a file or on the clipboard. */
class PaperRobotTest extends WithWindow {

  private String written(String item, String name) throws IOException {
    Path file = folder.resolve(name);
    hand.menu(item);
    hand.choose(file);
    open.await("the file", () -> Files.exists(file));
    return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
  }

  @Test
  void whatIsSeenIsWrittenInTheKindOfTheEnding() throws IOException {
    assertThat(written("paper.drawing", "a.svg")).contains("<svg", "flame rod");
    assertThat(written("paper.chart", "b.pdf")).startsWith("%PDF-");
    assertThat(written("paper.chart", "c.png")).contains("PNG");
    assertThat(written("paper.report", "d.pdf")).startsWith("%PDF-");
  }

  @Test
  void theDataOfTheChartIsATable() throws IOException {
    OpenWindow.onScreen(
        () -> {
          Hand.look(javax.swing.JTabbedPane.class, t -> "charts".equals(t.getName()))
              .orElseThrow()
              .setSelectedIndex(2);
          return null;
        });
    open.settle();

    assertThat(written("paper.data", "a.csv").lines())
        .hasSizeGreaterThan(5)
        .allMatch(line -> line.contains(",") && !line.contains("\t"));
  }

  @Test
  void anEndingThatPromisesSomethingElseIsRefused() {
    hand.menu("paper.report");
    hand.choose(folder.resolve("a.json"));
    hand.answer("OK");
    open.settle();

    assertThat(folder.resolve("a.json")).doesNotExist();
  }

  @Test
  void aDemonstrationGoesOnPaper() throws IOException {
    hand.menu("paper.handout-key");
    hand.answer("OK");
    Path file = folder.resolve("a.pdf");
    hand.choose(file);
    open.await("the handout", () -> Files.exists(file));
  }

  @Test
  void aDemonstrationOfOnesOwnGoesOnPaper() throws IOException {
    Path own = folder.resolve("own.json");
    Files.writeString(
        own, DemonstrationText.of(ShippedDemonstrations.named("a-dirty-rod").orElseThrow()));
    hand.menu("paper.handout");
    JComboBox<?> list = hand.find(JComboBox.class, "paper.demonstrations");
    OpenWindow.onScreen(
        () -> {
          // any file comes last
          list.setSelectedIndex(list.getItemCount() - 1);
          return null;
        });
    hand.answer("OK");
    hand.choose(own);
    Path file = folder.resolve("own.pdf");
    hand.choose(file);
    open.await("the handout", () -> Files.exists(file));
  }

  @Test
  void whoGivesUpIsNotKeptWaiting() throws IOException {
    Path pictures = Files.createDirectory(folder.resolve("pictures"));
    hand.menu("paper.slides");
    hand.answer("OK");
    hand.choose(pictures);
    open.await(
        "the way out",
        () -> Hand.look(JButton.class, b -> "paper.cancel".equals(b.getName())).isPresent());
    hand.click("paper.cancel");
    open.await(
        "its end",
        () -> Hand.look(JButton.class, b -> "paper.cancel".equals(b.getName())).isEmpty());
    Notice notice = hand.now(Notice.class, "notice");
    open.await("the last word", () -> notice.getText().startsWith("Given up"));
    Color ink = OpenWindow.onScreen(notice::getForeground);
    assertThat(ink).as("nothing went wrong").isNotEqualTo(Palette.LIGHT.danger());

    try (Stream<Path> files = Files.list(pictures)) {
      assertThat(files.count()).isLessThan(10);
    }
  }

  @Test
  void theDrawingGoesOnTheClipboard() throws Exception {
    hand.menu("paper.copy-drawing");
    open.await(
        "the picture",
        () ->
            Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .isDataFlavorAvailable(DataFlavor.imageFlavor));
    Image image =
        (Image) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.imageFlavor);

    assertThat(image.getWidth(null)).isEqualTo(1920);
    assertThat(image.getHeight(null)).isEqualTo(1200);
  }
}
