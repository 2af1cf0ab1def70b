package halfwave.paper;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import halfwave.picture.Picture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Documents as PDF files. */
final class PdfFile {

  private PdfFile() {}

  static byte[] bytes(Document document) {
    try (PDDocument pdf = new PDDocument();
        PdfFonts fonts = new PdfFonts(pdf)) {
      describe(pdf, document);
      for (Picture page : document.pages()) {
        add(pdf, page, fonts);
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      pdf.save(bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      // everything is in memory: nothing outside can be the reason
      throw new UncheckedIOException(e);
    }
  }

  private static void describe(PDDocument pdf, Document document) {
    pdf.getDocumentInformation().setTitle(document.title());
    pdf.getDocumentCatalog().setLanguage(document.reader().toLanguageTag());
    PDViewerPreferences shown = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
    shown.setDisplayDocTitle(true);
    pdf.getDocumentCatalog().setViewerPreferences(shown);
    // by default the number is made from the clock, and two files of one report would differ
    CRC32 number = new CRC32();
    number.update(document.title().getBytes(StandardCharsets.UTF_8));
    pdf.setDocumentId(number.getValue());
  }

  private static void add(PDDocument pdf, Picture picture, PdfFonts fonts) throws IOException {
    float width = (float) picture.width();
    float height = (float) picture.height();
    PDPage page = new PDPage(new PDRectangle(width, height));
    pdf.addPage(page);
    PdfBoxGraphics2D g = new PdfBoxGraphics2D(pdf, width, height);
    g.setFontTextDrawer(fonts);
    picture.paint(g);
    g.disposeDanglingChildGraphics();
    g.dispose();
    try (PDPageContentStream content = new PDPageContentStream(pdf, page)) {
      content.drawForm(g.getXFormObject());
    }
  }
}
