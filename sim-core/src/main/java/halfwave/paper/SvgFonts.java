package halfwave.paper;

import halfwave.picture.Typeface;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Set;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * The letters of an SVG file, put into it: with those of another machine words would be wider or
 * narrower than the room that was made for them.
 */
final class SvgFonts {

  private SvgFonts() {}

  /** The rules that bring the letters of all words below an element. */
  static String rules(Element root) {
    Set<Integer> letters = new TreeSet<>();
    NodeList texts = root.getElementsByTagNameNS(SvgFile.NAMESPACE, "text");
    for (int k = 0; k < texts.getLength(); k++) {
      texts.item(k).getTextContent().codePoints().forEach(letters::add);
    }
    String plain = rule(Typeface.PLAIN, letters, Typeface.PLAIN.family(), "normal");
    String strong = rule(Typeface.STRONG, letters, Typeface.STRONG.family(), "normal");
    String bold =
        replaced(root)
            ? rule(Typeface.STRONG, letters, Typeface.PLAIN.family(), "bold") + "\n"
            : "";
    return "\n" + plain + "\n" + strong + "\n" + bold;
  }

  /** The window's charts are set in the type we cut ours from: ours takes its place. */
  private static boolean replaced(Element root) {
    boolean bold = false;
    NodeList all = root.getElementsByTagName("*");
    for (int k = 0; k < all.getLength(); k++) {
      Element element = (Element) all.item(k);
      String family = element.getAttribute("font-family");
      if (!family.isEmpty() && !family.contains(Typeface.PLAIN.family())) {
        element.setAttribute("font-family", "'" + Typeface.PLAIN.family() + "'");
      }
      bold |= element.getAttribute("font-weight").equals("bold");
    }
    return bold;
  }

  private static String rule(Typeface face, Set<Integer> letters, String family, String weight) {
    return "@font-face{font-family:'%s';font-weight:%s;src:url(data:font/ttf;base64,%s)}"
        .formatted(family, weight, Base64.getEncoder().encodeToString(cut(face, letters)));
  }

  private static byte[] cut(Typeface face, Set<Integer> letters) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (InputStream in = face.file();
        TrueTypeFont whole = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
      TTFSubsetter subset = new TTFSubsetter(whole);
      subset.addAll(letters);
      subset.writeToStream(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
