package halfwave.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.Sentences;
import halfwave.explain.Caution;
import halfwave.quiz.InventedClass;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Against the published models of IMS Question and Test Interoperability, version 2.1 (final
 * release, schema of 2012-05-31) and of its profile of IMS Content Packaging 1.2 (final release,
 * schema of 2014-01-31): names, order and number of elements, attributes, enumerations and
 * references, by {@link QtiModel}. The schemas themselves are not here, and no file was put before
 * a validator with them: see decision 0020.
 */
@Validated(Area.EXCHANGE)
class QtiPackageReferenceTest {

  private static final Reference MODEL =
      Reference.seen("IMS QTI 2.1 and Content Packaging 1.2, final releases, as QtiModel has them");
  private static final Map<String, byte[]> FILES = files(Locale.ENGLISH);

  private static byte[] made(Locale reader) {
    return QtiPackage.of(
        InventedClass.grader(), 1, InventedClass.appearances(), Sentences.in(reader), reader);
  }

  private static Map<String, byte[]> files(Locale reader) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(made(reader)))) {
      for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
        files.put(e.getName(), zip.readAllBytes());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  private static Document file(String name) throws IOException {
    return QtiModel.parsed(FILES.get(name));
  }

  private static List<Element> elements(Document document, String name) {
    List<Element> all = new ArrayList<>();
    var found = document.getElementsByTagNameNS("*", name);
    for (int k = 0; k < found.getLength(); k++) {
      all.add((Element) found.item(k));
    }
    return all;
  }

  private static List<Document> items() throws IOException {
    List<Document> items = new ArrayList<>();
    for (String name : FILES.keySet()) {
      if (name.startsWith("items/")) {
        items.add(file(name));
      }
    }
    return items;
  }

  @Test
  void everyFileFollowsItsModel() throws IOException {
    assertThat(FILES.keySet())
        .containsExactly(
            "imsmanifest.xml",
            "items/call-1.xml",
            "items/call-2.xml",
            "items/call-3.xml",
            "test.xml");
    for (Map.Entry<String, byte[]> file : FILES.entrySet()) {
      assertThat(QtiModel.faults(file.getValue())).as(file.getKey()).isEmpty();
      MODEL
          .check(
              "faults of a package's file by its model",
              Unit.COUNT,
              QtiModel.faults(file.getValue()).size())
          .at(file.getKey())
          .isCloseTo(
              0, 0, "names, order, number, attributes and references; no validator was asked");
    }
  }

  @Test
  void theModelBites() throws IOException {
    String item = new String(FILES.get("items/call-1.xml"), StandardCharsets.UTF_8);
    for (String spoiled :
        List.of(
            item.replace(" adaptive=\"false\"", ""),
            item.replace("<prompt>", "<question>").replace("</prompt>", "</question>"),
            item.replace(" shuffle=\"true\"", " shuffle=\"true\" colour=\"red\""),
            item.replace("<tbody>", "<tbody>words"),
            item.replaceFirst("(?s)(<itemBody>.*</itemBody>)(.*</responseProcessing>)", "$2$1"))) {
      assertThat(spoiled).isNotEqualTo(item);
      assertThat(QtiModel.faults(spoiled.getBytes(StandardCharsets.UTF_8))).isNotEmpty();
    }
  }

  @Test
  void theManifestNamesEveryFileOnceAndWhatItIs() throws IOException {
    Document manifest = file("imsmanifest.xml");
    assertThat(elements(manifest, "schema").get(0).getTextContent()).isEqualTo("QTIv2.1 Package");
    assertThat(elements(manifest, "schemaversion").get(0).getTextContent()).isEqualTo("1.0.0");
    Set<String> identifiers = new HashSet<>();
    List<String> named = new ArrayList<>();
    for (Element resource : elements(manifest, "resource")) {
      String identifier = resource.getAttribute("identifier");
      assertThat(identifier).matches("[A-Za-z_][A-Za-z0-9_.-]*");
      assertThat(identifiers.add(identifier)).as(identifier).isTrue();
      named.add(resource.getAttribute("href"));
      assertThat(resource.getAttribute("type")).isIn("imsqti_test_xmlv2p1", "imsqti_item_xmlv2p1");
    }
    for (Element dependency : elements(manifest, "dependency")) {
      assertThat(identifiers).contains(dependency.getAttribute("identifierref"));
    }
    named.add("imsmanifest.xml");
    assertThat(named).containsExactlyInAnyOrderElementsOf(FILES.keySet());
  }

  @Test
  void theTestRefersToEveryItemByItsIdentifierWithItsWeight() throws IOException {
    Document test = file("test.xml");
    assertThat(elements(test, "testPart").get(0).getAttribute("navigationMode"))
        .isIn("linear", "nonlinear");
    assertThat(elements(test, "testPart").get(0).getAttribute("submissionMode"))
        .isIn("individual", "simultaneous");
    List<Element> references = elements(test, "assessmentItemRef");
    List<Element> weights = elements(test, "weight");
    for (int k = 0; k < references.size(); k++) {
      Element item = file(references.get(k).getAttribute("href")).getDocumentElement();
      assertThat(references.get(k).getAttribute("identifier"))
          .isEqualTo(item.getAttribute("identifier"));
      var call = InventedClass.quiz().calls().get(k);
      assertThat(Double.parseDouble(weights.get(k).getAttribute("value")))
          .isEqualTo(InventedClass.quiz().weight(call));
      assertThat(item.getAttribute("title")).isEqualTo(call.title().in(Locale.ENGLISH));
    }
    assertThat(references).hasSize(InventedClass.quiz().calls().size());
    String caution = Sentences.in(Locale.ENGLISH).sentence(Caution.all().get(0));
    assertThat(elements(test, "rubricBlock").get(0).getTextContent()).contains(caution);
  }

  @Test
  void variablesThatAreUsedAreDeclaredAndFitTheirValues() throws IOException {
    for (Document item : items()) {
      Map<String, String> types = new LinkedHashMap<>();
      for (String declaration : List.of("responseDeclaration", "outcomeDeclaration")) {
        elements(item, declaration)
            .forEach(d -> types.put(d.getAttribute("identifier"), d.getAttribute("baseType")));
      }
      assertThat(types)
          .containsEntry("RESPONSE", "identifier")
          .containsEntry("SCORE", "float")
          .containsEntry("FEEDBACK", "identifier");
      for (Element set : elements(item, "setOutcomeValue")) {
        Element value = (Element) set.getFirstChild();
        assertThat(value.getAttribute("baseType"))
            .isEqualTo(types.get(set.getAttribute("identifier")));
      }
      Set<String> shown = new HashSet<>();
      elements(item, "modalFeedback").forEach(m -> shown.add(m.getAttribute("identifier")));
      assertThat(shown).containsExactlyInAnyOrder("right", "wrong");
    }
  }

  @Test
  void everyItemOffersItsKeyAmongOthers() throws IOException {
    for (Document item : items()) {
      List<String> choices = new ArrayList<>();
      elements(item, "simpleChoice").forEach(c -> choices.add(c.getAttribute("identifier")));
      assertThat(choices).doesNotHaveDuplicates().hasSizeBetween(5, 6);
      assertThat(choices).allMatch(c -> c.matches("[\\p{L}_][\\p{L}\\p{N}_.-]*"));
      assertThat(choices).contains(elements(item, "value").get(0).getTextContent());
      assertThat(elements(item, "tbody").get(0).getTextContent())
          .contains("µA DC")
          .doesNotContain("never came");
    }
  }

  @Test
  void theSameQuizIsTheSameFileAndAnotherLanguageIsAnother() {
    assertThat(made(Locale.ENGLISH)).isEqualTo(made(Locale.ENGLISH));
    String spanish =
        new String(
            files(Locale.forLanguageTag("es")).get("items/call-1.xml"), StandardCharsets.UTF_8);
    assertThat(spanish).contains("xml:lang=\"es\"", "¿Qué falla?");
  }
}
