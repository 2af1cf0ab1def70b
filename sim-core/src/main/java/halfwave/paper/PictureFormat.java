package halfwave.paper;

import halfwave.picture.Picture;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of picture files; the ending of a file's name says which one is meant. */
public enum PictureFormat {
  /** Pixels: for slides and the web. */
  PNG,
  /** Lines and letters that stay crisp in any size: for web pages and drawing programs. */
  SVG,
  /** The same as a page: for print. */
  PDF;

  /** The ending of such files, with its dot. */
  public String ending() {
    return "." + name().toLowerCase(Locale.ROOT);
  }

  /** The endings of all of them, as a person reads them. */
  public static String endings() {
    return Arrays.stream(values()).map(PictureFormat::ending).collect(Collectors.joining(", "));
  }

  /** What the ending of a file's name means; nothing where it means no picture. */
  public static Optional<PictureFormat> of(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(f -> name.endsWith(f.ending())).findFirst();
  }

  /**
   * The picture as the bytes of such a file; the same picture gives the same bytes.
   *
   * @param picture the picture
   * @param title what the file calls it
   * @param reader language of its words
   */
  public byte[] bytes(Picture picture, String title, Locale reader) {
    return switch (this) {
      case PNG -> Pixels.png(Pixels.image(picture, Pixels.USUAL));
      case SVG -> SvgFile.bytes(picture, title, reader);
      case PDF -> PdfFile.bytes(new Document(title, reader, List.of(picture)));
    };
  }
}
