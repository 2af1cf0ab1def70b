package halfwave.paper;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import halfwave.picture.Typeface;
import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Writes the words of one PDF file as letters, not as outlines: they can be searched, copied and
 * read aloud. Only the letters that occur are put into the file.
 */
final class PdfFonts extends PdfBoxGraphics2DFontTextDrawer {

  private final PDDocument document;
  private final Map<Typeface, PDFont> fonts = new EnumMap<>(Typeface.class);

  PdfFonts(PDDocument document) {
    this.document = document;
  }

  /** Which of ours stands for a font; the window's own weights are cut from the same type. */
  static Typeface typeface(Font font) {
    boolean strong = font.isBold() || font.getFontName(java.util.Locale.ROOT).contains("Strong");
    return strong ? Typeface.STRONG : Typeface.PLAIN;
  }

  @Override
  protected PDFont mapFont(Font font, IFontTextDrawerEnv env) throws IOException {
    Typeface face = typeface(font);
    PDFont known = fonts.get(face);
    if (known == null) {
      try (InputStream in = face.file()) {
        known = PDType0Font.load(document, in, true);
      }
      fonts.put(face, known);
    }
    return known;
  }
}
