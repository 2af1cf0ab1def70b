package halfwave.paper;

import halfwave.picture.Picture;
import java.util.List;
import java.util.Locale;

/**
 * Pages to be printed or written as a PDF file.
 *
 * @param title what it is called
 * @param reader language of its words
 * @param pages the pages, in points; one or more
 */
public record Document(String title, Locale reader, List<Picture> pages) {

  /** Checks that there is a page, and takes a copy. */
  public Document {
    pages = List.copyOf(pages);
    if (pages.isEmpty()) {
      throw new IllegalArgumentException("pages: at least one");
    }
  }

  /** As the bytes of a PDF file; the same document gives the same bytes. */
  public byte[] pdf() {
    return PdfFile.bytes(this);
  }
}
