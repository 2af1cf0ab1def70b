package halfwave.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.display.Sentences;
import java.awt.image.BufferedImage;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What every document on paper keeps, in both languages and on both sheets. */
abstract class PagesContract {

  /** No printer reaches the last quarter of an inch of a sheet. */
  private static final double EDGE_POINTS = 18;

  abstract Document document(PaperSize size, Sentences sentences, Locale reader);

  /** A word that stands on the first page in that language. */
  abstract String expected(Locale reader);

  @ParameterizedTest
  @CsvSource({"en, A4", "en, LETTER", "es, A4", "es, LETTER"})
  void pagesAreFilledWithinTheirEdges(String language, PaperSize size) {
    Locale reader = Locale.forLanguageTag(language);
    Document document = document(size, Sentences.in(reader), reader);
    PdfPages pdf = new PdfPages(document.pdf());

    assertThat(pdf.count()).isEqualTo(document.pages().size()).isBetween(1, 12);
    // the file keeps four bytes of a number
    assertThat(pdf.widthPoints()).isCloseTo(size.widthPoints(), within(1e-3));
    assertThat(pdf.heightPoints()).isCloseTo(size.heightPoints(), within(1e-3));
    assertThat(pdf.title()).isEqualTo(document.title()).isNotBlank();
    assertThat(pdf.language()).isEqualTo(language);
    assertThat(pdf.text(0)).contains(expected(reader));
    double x = EDGE_POINTS / size.widthPoints();
    double y = EDGE_POINTS / size.heightPoints();
    assertThat(pdf.letters())
        .hasSizeGreaterThan(1000)
        .allSatisfy(
            letter -> {
              assertThat(letter.xRatio()).as(letter.toString()).isBetween(x, 1 - x);
              assertThat(letter.yRatio()).as(letter.toString()).isBetween(y, 1 - y);
            });
    for (int k = 0; k < pdf.count(); k++) {
      assertThat(inked(pdf.image(k))).as("page " + k).isGreaterThan(0.005);
      assertThat(pdf.text(k)).contains((k + 1) + (language.equals("es") ? " de " : " of "));
    }
  }

  @ParameterizedTest
  @CsvSource({"en", "es"})
  void theSameDocumentIsTheSameFile(String language) {
    Locale reader = Locale.forLanguageTag(language);
    Document document = document(PaperSize.A4, Sentences.in(reader), reader);

    assertThat(document.pdf()).isEqualTo(document.pdf());
  }

  /** Nothing is left between braces, and no key stands for its words. */
  @ParameterizedTest
  @CsvSource({"en", "es"})
  void allWordsAreWords(String language) {
    Locale reader = Locale.forLanguageTag(language);
    String text = new PdfPages(document(PaperSize.A4, Sentences.in(reader), reader).pdf()).text();

    assertThat(text).doesNotContain("{", "}", "null").doesNotContainPattern("\\b[a-z]+\\.[a-z]+-");
  }

  private static double inked(BufferedImage page) {
    int inked = 0;
    for (int x = 0; x < page.getWidth(); x++) {
      for (int y = 0; y < page.getHeight(); y++) {
        inked += (page.getRGB(x, y) & 0xFF) < 0xC0 ? 1 : 0;
      }
    }
    return (double) inked / (page.getWidth() * page.getHeight());
  }
}
