package halfwave.exchange;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes an XML file, element by element; the same calls give the same bytes. */
final class XmlText {

  private static final String XSI = "http://www.w3.org/2001/XMLSchema-instance";

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final XMLStreamWriter writer;

  private XmlText() throws XMLStreamException {
    // that of the JDK: another on the class path might write the same otherwise
    writer =
        XMLOutputFactory.newDefaultFactory()
            .createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
  }

  /** What may fail while it is written. */
  private interface Writing {
    void run() throws XMLStreamException;
  }

  private static void write(Writing writing) {
    try {
      writing.run();
    } catch (XMLStreamException e) {
      // everything is in memory: nothing outside can be the reason
      throw new IllegalStateException(e);
    }
  }

  /**
   * The file.
   *
   * @param root its element
   * @param space name space of all of it
   * @param schema where the schema of that name space is published
   * @param content writes attributes and what is inside
   */
  static byte[] file(String root, String space, String schema, Consumer<XmlText> content) {
    try {
      XmlText text = new XmlText();
      text.writer.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
      text.writer.writeStartElement(root);
      text.writer.writeDefaultNamespace(space);
      text.writer.writeNamespace("xsi", XSI);
      text.writer.writeAttribute("xsi", XSI, "schemaLocation", space + " " + schema);
      content.accept(text);
      text.writer.writeEndElement();
      text.writer.writeEndDocument();
      text.writer.close();
      return text.bytes.toByteArray();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** An attribute of the element that was begun last. */
  XmlText attribute(String name, String value) {
    write(() -> writer.writeAttribute(name, legal(value)));
    return this;
  }

  /** The language of the element that was begun last. */
  XmlText language(String tag) {
    write(() -> writer.writeAttribute("xml:lang", tag));
    return this;
  }

  /** An element with attributes and elements inside. */
  XmlText element(String name, Consumer<XmlText> content) {
    write(() -> writer.writeStartElement(name));
    content.accept(this);
    write(writer::writeEndElement);
    return this;
  }

  /** An element with nothing but words. */
  XmlText words(String name, String words) {
    return element(name, inside -> inside.words(words));
  }

  /** Words in the element that was begun last. */
  XmlText words(String words) {
    write(() -> writer.writeCharacters(legal(words)));
    return this;
  }

  /** Without the characters that no XML file may hold (XML 1.0, production 2). */
  private static String legal(String words) {
    return words
        .codePoints()
        .filter(c -> c == '\t' || c == '\n' || c >= ' ')
        .filter(c -> !(c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE))
        .filter(c -> c != 0xFFFE && c != 0xFFFF)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }
}
