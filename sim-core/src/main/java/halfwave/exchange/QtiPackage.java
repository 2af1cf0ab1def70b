package halfwave.exchange;

import halfwave.display.Sentences;
import halfwave.grading.Grader;
import halfwave.io.quiz.QuizText;
import halfwave.quiz.Appearances;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A quiz as a content package of QTI 2.1 (IMS Question and Test Interoperability, final release
 * 2012): a manifest, a test, and an item for each call. A learner there reads what there is to read
 * on a furnace and says what is wrong with it; he does not choose his tests, so it examines less
 * than the quiz does.
 */
public final class QtiPackage {

  static final String SPACE = "http://www.imsglobal.org/xsd/imsqti_v2p1";
  static final String SCHEMA = "http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1.xsd";

  /** Name of the test in the package. */
  static final String TEST = "test";

  private static final String MANIFEST_SPACE = "http://www.imsglobal.org/xsd/imscp_v1p1";
  private static final String MANIFEST_SCHEMA =
      "http://www.imsglobal.org/xsd/qti/qtiv2p1/qtiv2p1_imscpv1p2_v1p0.xsd";
  private static final String TEST_FILE = "test.xml";

  /** The first moment that such a file can tell; no clock is asked. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private QtiPackage() {}

  /**
   * The package; the same quiz gives the same bytes.
   *
   * @param grader of the quiz
   * @param number which furnace of each call, from zero up to {@link Variant#COUNT}
   * @param appearances what is remembered of benches
   * @param sentences language and units
   * @param reader the same language
   */
  public static byte[] of(
      Grader grader, int number, Appearances appearances, Sentences sentences, Locale reader) {
    Quiz quiz = grader.quiz();
    SortedMap<String, byte[]> files = new TreeMap<>();
    Map<String, String> items = new LinkedHashMap<>();
    for (ServiceCall call : quiz.calls()) {
      String identifier = "call-" + (items.size() + 1);
      String file = "items/" + identifier + ".xml";
      Variant variant = Variant.numbered(call, quiz.seed(), number);
      QtiCase question = QtiCase.of(grader.assessor(call), variant, appearances);
      items.put(identifier, file);
      files.put(file, QtiItem.file(identifier, question, sentences, reader));
    }
    files.put(TEST_FILE, QtiTest.file(quiz, items, sentences, reader));
    files.put("imsmanifest.xml", manifest("quiz-" + QuizText.hash(quiz), items));
    return zip(files);
  }

  private static byte[] manifest(String identifier, Map<String, String> items) {
    return XmlText.file(
        "manifest",
        MANIFEST_SPACE,
        MANIFEST_SCHEMA,
        x ->
            x.attribute("identifier", identifier)
                .element(
                    "metadata",
                    m -> m.words("schema", "QTIv2.1 Package").words("schemaversion", "1.0.0"))
                .element("organizations", o -> {})
                .element("resources", r -> resources(r, items)));
  }

  private static void resources(XmlText x, Map<String, String> items) {
    x.element(
        "resource",
        r -> {
          resource(r, "resource-" + TEST, "imsqti_test_xmlv2p1", TEST_FILE);
          for (String item : items.keySet()) {
            r.element("dependency", d -> d.attribute("identifierref", "resource-" + item));
          }
        });
    items.forEach(
        (item, file) ->
            x.element(
                "resource", r -> resource(r, "resource-" + item, "imsqti_item_xmlv2p1", file)));
  }

  private static void resource(XmlText x, String identifier, String type, String file) {
    x.attribute("identifier", identifier)
        .attribute("type", type)
        .attribute("href", file)
        .element("file", f -> f.attribute("href", file));
  }

  private static byte[] zip(SortedMap<String, byte[]> files) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        ZipEntry entry = new ZipEntry(file.getKey());
        entry.setTimeLocal(TIME);
        zip.putNextEntry(entry);
        zip.write(file.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      // everything is in memory: nothing outside can be the reason
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
