package halfwave.paper;

import halfwave.picture.Picture;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SimpleImageHandler;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Pictures as SVG files. Words stay words, and the letters they are written with come along. */
final class SvgFile {

  static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private SvgFile() {}

  static byte[] bytes(Picture picture, String title, Locale reader) {
    Document document = document();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    // the usual comment names a program and says nothing about the picture
    context.setComment(null);
    context.setImageHandler(new SvgImages());
    context.setGenericImageHandler(new SimpleImageHandler(new SvgImages()));
    SVGGraphics2D g = new SVGGraphics2D(context, false);
    Picture.smooth(g);
    picture.paint(g);
    Element root = g.getRoot(document.getDocumentElement());
    root.setAttribute("width", number(picture.width()));
    root.setAttribute("height", number(picture.height()));
    root.setAttribute("viewBox", "0 0 " + number(picture.width()) + " " + number(picture.height()));
    root.setAttribute("xml:lang", reader.toLanguageTag());
    root.setAttribute("role", "img");
    Element named = document.createElementNS(NAMESPACE, "title");
    named.setTextContent(title);
    Element style = document.createElementNS(NAMESPACE, "style");
    style.setTextContent(SvgFonts.rules(root));
    root.insertBefore(style, root.getFirstChild());
    root.insertBefore(named, root.getFirstChild());
    return written(root);
  }

  /** Without a document type: whoever reads the file need not look for its definition. */
  private static byte[] written(Element root) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
      writer.setOutputProperty(OutputKeys.ENCODING, StandardCharsets.UTF_8.name());
      writer.transform(new DOMSource(root), new StreamResult(bytes));
    } catch (TransformerException e) {
      throw new IllegalStateException(e);
    }
    return bytes.toByteArray();
  }

  private static Document document() {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
      return factory
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(NAMESPACE, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String number(double units) {
    double rounded = Math.rint(units * 100) / 100;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
  }
}
