package halfwave.notebook;

import halfwave.paper.PictureFormat;
import halfwave.picture.Picture;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * A drawing of lines and letters that stays crisp in any size. Other pictures reach the page as
 * pixels.
 *
 * @param markup the SVG element
 */
public record Svg(String markup) {

  /** A picture as such a drawing. */
  public static Svg of(Picture picture, String title) {
    byte[] bytes = PictureFormat.SVG.bytes(picture, title, Locale.ENGLISH);
    String document = new String(bytes, StandardCharsets.UTF_8);
    // within a page the declaration of a document is an error to some readers
    return new Svg(document.substring(document.indexOf("<svg")));
  }
}
