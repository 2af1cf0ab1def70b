package halfwave.paper;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.Sentences;
import halfwave.picture.Palette;
import halfwave.picture.Picture;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.scene.DrawingStyle;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Every kind of picture file holds the same picture. */
class PictureFormatTest {

  private static Picture drawing(String language) {
    Sentences sentences = Sentences.in(Locale.forLanguageTag(language));
    return BenchDrawing.picture(
        new Dimension(720, 460),
        new DrawnMoments(sentences).of(Reported.healthy().answer().moment()),
        DrawingStyle.still(Palette.PAPER, sentences));
  }

  private static byte[] file(PictureFormat format, String language) {
    return format.bytes(drawing(language), "A <bench> & more", Locale.forLanguageTag(language));
  }

  @Test
  void pngHasTwoPixelsToAUnit() throws IOException {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(file(PictureFormat.PNG, "en")));

    assertThat(image.getWidth()).isEqualTo(1440);
    assertThat(image.getHeight()).isEqualTo(920);
  }

  @ParameterizedTest
  @CsvSource({"en, flame rod", "es, varilla de llama"})
  void svgIsWellFormedWithWordsAndTheirLetters(String language, String expected)
      throws IOException, SAXException, ParserConfigurationException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
    // nothing outside of the file is needed to read it
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    Document svg =
        factory
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(file(PictureFormat.SVG, language)));
    NodeList texts = svg.getElementsByTagNameNS("*", "text");
    Set<String> words =
        IntStream.range(0, texts.getLength())
            .mapToObj(k -> texts.item(k).getTextContent())
            .collect(Collectors.toSet());

    assertThat(svg.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 720 460");
    assertThat(svg.getElementsByTagNameNS("*", "title").item(0).getTextContent())
        .isEqualTo("A <bench> & more");
    assertThat(words).anyMatch(w -> w.startsWith(expected));
    assertThat(svg.getElementsByTagNameNS("*", "style").item(0).getTextContent())
        .contains("font-family:'Halfwave Sans'", "font-family:'Halfwave Sans Strong'");
    assertThat(svg.getElementsByTagNameNS("*", "image").getLength()).isPositive();
  }

  @ParameterizedTest
  @CsvSource({"en, flame rod", "es, varilla de llama"})
  void pdfCanBeSearched(String language, String expected) {
    assertThat(new PdfPages(file(PictureFormat.PDF, language)).text()).contains(expected);
  }

  @ParameterizedTest
  @EnumSource(PictureFormat.class)
  void theSamePictureIsTheSameFile(PictureFormat format) {
    assertThat(file(format, "en")).isEqualTo(file(format, "en"));
  }

  @ParameterizedTest
  @CsvSource({"a.png, PNG", "a.SVG, SVG", "b.c.pdf, PDF"})
  void theEndingDecides(String name, PictureFormat format) {
    assertThat(PictureFormat.of(Path.of("folder", name))).contains(format);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "png", "a.jpg", "a.pdf.txt", "a.png "})
  void otherEndingsMeanNothing(String name) {
    assertThat(PictureFormat.of(Path.of("folder", name))).isEmpty();
  }
}
