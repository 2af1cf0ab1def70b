package halfwave.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import halfwave.board.StatusCode;
import halfwave.display.Sentences;
import halfwave.io.BadInputException;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A demonstration as pictures: what is on them, and that the last row can read it. */
class LessonSlidesTest {

  private static final Demonstration SHOWN =
      ShippedDemonstrations.named("a-dirty-rod").orElseThrow();

  /** Height of capitals over the size of the type, measured on the letter H. */
  private static final double CAPITAL_RATIO = Lines.capital(SlideText.BODY.deriveFont(100f)) / 100;

  @TempDir Path folder;

  /** Playing takes seconds, so each language is played once. */
  private static final Map<String, List<Slide>> SLIDES =
      Stream.of("en", "es")
          .collect(
              Collectors.toMap(
                  language -> language,
                  language -> {
                    Locale reader = Locale.forLanguageTag(language);
                    return LessonSlides.of(SHOWN, Sentences.in(reader), reader);
                  }));

  private static List<Slide> slides(String language) {
    return SLIDES.get(language);
  }

  private static PdfPages pdf(Slide slide) {
    return new PdfPages(new Document("slide", Locale.ENGLISH, List.of(slide.picture())).pdf());
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyWordOfEveryStepIsOnASlide(String language) {
    Locale reader = Locale.forLanguageTag(language);
    StringBuilder all = new StringBuilder();
    slides(language).forEach(s -> all.append(pdf(s).text()).append(' '));
    Set<String> words = new HashSet<>(List.of(all.toString().split("\\s+")));

    SHOWN
        .steps()
        .forEach(
            step -> {
              assertThat(words).contains(step.say().in(reader).split("\\s+"));
              if (step.explanation() != null) {
                assertThat(words).contains(step.explanation().in(reader).split("\\s+"));
              }
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void theLastRowCanReadIt(String language) {
    for (Slide slide : slides(language)) {
      PdfPages pdf = pdf(slide);

      assertThat(pdf.letters())
          .as(slide.name())
          .hasSizeGreaterThan(100)
          .allSatisfy(
              l -> {
                assertThat(l.xRatio()).as(l.toString()).isBetween(0.01, 0.99);
                assertThat(l.yRatio()).as(l.toString()).isBetween(0.01, 0.99);
                assertThat(l.sizeRatio() * CAPITAL_RATIO)
                    .as(l.toString())
                    .isGreaterThanOrEqualTo(1.0 / 40);
              });
      assertThat(pdf.lines())
          .as(slide.name())
          // a line has four bytes for its width
          .allSatisfy(w -> assertThat(w).isGreaterThan(1.0 / 300 - 1e-6));
    }
  }

  @Test
  void theAnswerIsNotGivenAwayByTheQuestion() {
    List<Slide> asked = slides("en").stream().filter(s -> s.name().endsWith("asked")).toList();

    assertThat(asked)
        .hasSize((int) SHOWN.steps().stream().filter(s -> s.question() != null).count())
        .allSatisfy(s -> assertThat(pdf(s).text()).doesNotContain("is right"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyStatusOfALightHasRoom(String language) {
    Locale reader = Locale.forLanguageTag(language);
    PaperWords words = new PaperWords(Sentences.in(reader), reader);

    for (StatusCode code : StatusCode.values()) {
      assertThat(SlidePainter.light(code, words)).as(code.name()).hasSizeLessThanOrEqualTo(2);
    }
  }

  @Test
  void namesSortInTheOrderOfShowing() {
    List<String> names = slides("en").stream().map(Slide::name).toList();

    assertThat(names).isSorted().doesNotHaveDuplicates();
  }

  @Test
  void filesAreWrittenInTheirSize() throws IOException {
    List<Slide> few = slides("en").subList(0, 2);
    Path fresh = folder.resolve("new");

    List<Path> files = SlideFiles.write(fresh, few, Watch.PATIENT).orElseThrow();

    assertThat(files).hasSize(2);
    for (Path file : files) {
      BufferedImage image = ImageIO.read(file.toFile());
      assertThat(image.getWidth()).isEqualTo(1920);
      assertThat(image.getHeight()).isEqualTo(1080);
    }
  }

  @Test
  void theAnimationHasEverySlideForItsTime() throws IOException {
    List<Slide> few = slides("es").subList(0, 3);
    Path file = folder.resolve("a.gif");

    assertThat(SlideFiles.animation(file, few, Watch.PATIENT)).isTrue();

    ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      reader.setInput(in);
      assertThat(reader.getNumImages(true)).isEqualTo(3);
      for (int k = 0; k < 3; k++) {
        assertThat(reader.read(k).getWidth()).isEqualTo(1280);
        assertThat(reader.read(k).getHeight()).isEqualTo(720);
        IIOMetadataNode root =
            (IIOMetadataNode) reader.getImageMetadata(k).getAsTree("javax_imageio_gif_image_1.0");
        IIOMetadataNode control =
            (IIOMetadataNode) root.getElementsByTagName("GraphicControlExtension").item(0);
        assertThat(control.getAttribute("delayTime"))
            .isEqualTo(Long.toString(Math.round(100 * few.get(k).shownSeconds())));
      }
    }
  }

  @Test
  void whoGivesUpHasNoHalfOfAnAnimation() {
    List<Slide> few = slides("en").subList(0, 3);
    Path file = folder.resolve("a.gif");

    assertThat(SlideFiles.animation(file, few, (done, all) -> done < 2)).isFalse();
    assertThat(SlideFiles.write(folder, few, (done, all) -> false)).isEmpty();

    assertThat(folder).isDirectoryNotContaining(f -> !f.toString().endsWith(".png"));
  }

  @Test
  void aFolderThatCannotBeIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");

    assertThatThrownBy(() -> SlideFiles.prepare(folder.resolve("none/deeper")))
        .isInstanceOf(BadInputException.class);
    assertThatThrownBy(() -> SlideFiles.prepare(file)).isInstanceOf(BadInputException.class);
  }
}
