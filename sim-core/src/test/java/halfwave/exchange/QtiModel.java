package halfwave.exchange;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * The content models of the elements that a package uses, and a check against them. The published
 * schemas are half a megabyte that may be passed on unchanged only; these few lines say the same of
 * the elements named here. A choice of blocks or words is narrowed to what is used.
 */
final class QtiModel {

  /**
   * What an element may hold.
   *
   * @param children its children in their order, each name followed by a space; a regular
   *     expression
   * @param needed attributes that have to be there
   * @param further attributes that may be there
   * @param mixed whether it may hold words
   */
  private record Model(String children, Set<String> needed, Set<String> further, boolean mixed) {}

  private static final Map<String, Model> ITEMS = items();
  private static final Map<String, Model> MANIFEST = manifest();

  private QtiModel() {}

  private static Model elements(String children, String... needed) {
    return new Model(children, Set.of(needed), Set.of(), false);
  }

  private static Model words(String... needed) {
    return new Model("", Set.of(needed), Set.of(), true);
  }

  private static Map<String, Model> items() {
    Map<String, Model> all = new TreeMap<>();
    all.put(
        "assessmentItem",
        new Model(
            "(responseDeclaration )*(outcomeDeclaration )*(itemBody )?(responseProcessing )?"
                + "(modalFeedback )*",
            Set.of("identifier", "title", "adaptive", "timeDependent"),
            Set.of("xml:lang"),
            false));
    all.put(
        "responseDeclaration",
        elements("(correctResponse )?", "identifier", "cardinality", "baseType"));
    all.put("correctResponse", elements("(value )+"));
    all.put("defaultValue", elements("(value )+"));
    all.put("value", words());
    all.put(
        "outcomeDeclaration",
        new Model(
            "(defaultValue )?",
            Set.of("identifier", "cardinality"),
            Set.of("baseType", "normalMaximum"),
            false));
    all.put("itemBody", elements("((p|table|choiceInteraction) )*"));
    all.put("p", words());
    all.put("table", elements("(thead )?(tbody )+"));
    all.put("thead", elements("(tr )+"));
    all.put("tbody", elements("(tr )+"));
    all.put("tr", elements("((td|th) )+"));
    all.put("td", words());
    all.put("th", words());
    all.put(
        "choiceInteraction",
        elements("(prompt )?(simpleChoice )+", "responseIdentifier", "shuffle", "maxChoices"));
    all.put("prompt", words());
    all.put("simpleChoice", words("identifier"));
    all.put("responseProcessing", elements("(responseCondition )*"));
    all.put("responseCondition", elements("responseIf (responseElse )?"));
    all.put("responseIf", elements("match (setOutcomeValue )*"));
    all.put("responseElse", elements("(setOutcomeValue )*"));
    all.put("match", elements("variable correct "));
    all.put("variable", elements("", "identifier"));
    all.put("correct", elements("", "identifier"));
    all.put("setOutcomeValue", elements("(baseValue|sum) ", "identifier"));
    all.put("baseValue", words("baseType"));
    all.put("sum", elements("(testVariables )+"));
    all.put("testVariables", elements("", "variableIdentifier", "weightIdentifier"));
    all.put(
        "modalFeedback",
        new Model("(p )*", Set.of("outcomeIdentifier", "showHide", "identifier"), Set.of(), true));
    all.put(
        "assessmentTest",
        elements(
            "(outcomeDeclaration )*(timeLimits )?(testPart )+(outcomeProcessing )?",
            "identifier",
            "title"));
    all.put("timeLimits", elements("", "maxTime"));
    all.put(
        "testPart",
        elements("(assessmentSection )+", "identifier", "navigationMode", "submissionMode"));
    all.put(
        "assessmentSection",
        elements("(rubricBlock )*(assessmentItemRef )*", "identifier", "title", "visible"));
    all.put("rubricBlock", new Model("(p )*", Set.of("view"), Set.of(), true));
    all.put("assessmentItemRef", elements("(weight )*", "identifier", "href"));
    all.put("weight", elements("", "identifier", "value"));
    all.put("outcomeProcessing", elements("(setOutcomeValue )*"));
    return all;
  }

  private static Map<String, Model> manifest() {
    return Map.of(
        "manifest", elements("metadata organizations resources ", "identifier"),
        "metadata", elements("schema schemaversion "),
        "schema", words(),
        "schemaversion", words(),
        "organizations", elements(""),
        "resources", elements("(resource )*"),
        "resource", elements("(file )*(dependency )*", "identifier", "type", "href"),
        "file", elements("", "href"),
        "dependency", elements("", "identifierref"));
  }

  /** A file as a tree. Nothing outside it is looked for. */
  static Document parsed(byte[] file) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      builder.setEntityResolver(
          (name, where) -> {
            throw new IOException("looked for " + where);
          });
      return builder.parse(new ByteArrayInputStream(file));
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException(e);
    }
  }

  /** What is wrong with a file; nothing where all is right. */
  static List<String> faults(byte[] file) throws IOException {
    Element root = parsed(file).getDocumentElement();
    boolean manifest = root.getLocalName().equals("manifest");
    String space =
        manifest
            ? "http://www.imsglobal.org/xsd/imscp_v1p1"
            : "http://www.imsglobal.org/xsd/imsqti_v2p1";
    List<String> faults = new ArrayList<>();
    check(root, manifest ? MANIFEST : ITEMS, space, faults);
    return faults;
  }

  private static void check(
      Element element, Map<String, Model> models, String space, List<String> faults) {
    String name = element.getLocalName();
    Model model = models.get(name);
    if (model == null || !space.equals(element.getNamespaceURI())) {
      faults.add(name + " is no element of " + space);
      return;
    }
    StringBuilder children = new StringBuilder();
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        children.append(child.getLocalName()).append(' ');
        check(child, models, space, faults);
      } else if (!model.mixed() && !n.getTextContent().isBlank()) {
        faults.add(name + " may hold no words: " + n.getTextContent());
      }
    }
    if (!children.toString().matches(model.children())) {
      faults.add(name + " may not hold " + children);
    }
    attributes(element, model, faults);
  }

  private static void attributes(Element element, Model model, List<String> faults) {
    List<String> there = new ArrayList<>();
    for (int k = 0; k < element.getAttributes().getLength(); k++) {
      there.add(element.getAttributes().item(k).getNodeName());
    }
    there.removeIf(a -> a.startsWith("xmlns") || a.equals("xsi:schemaLocation"));
    for (String needed : model.needed()) {
      if (!there.remove(needed)) {
        faults.add(element.getLocalName() + " lacks " + needed);
      }
    }
    there.removeAll(model.further());
    there.forEach(a -> faults.add(element.getLocalName() + " may not have " + a));
  }
}
