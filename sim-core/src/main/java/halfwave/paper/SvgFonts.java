package halfwave.paper;

import halfwave.picture.Typeface;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    return Stream.of(Typeface.values())
        .map(face -> rule(face, letters))
        .collect(Collectors.joining("\n", "\n", "\n"));
  }

  private static String rule(Typeface face, Set<Integer> letters) {
    return "@font-face{font-family:'%s';src:url(data:font/ttf;base64,%s)}"
        .formatted(face.family(), Base64.getEncoder().encodeToString(cut(face, letters)));
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
