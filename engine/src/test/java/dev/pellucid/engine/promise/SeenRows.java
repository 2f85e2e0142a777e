package dev.pellucid.engine.promise;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import tools.jackson.databind.JsonNode;

/**
 * What stands in a file that has no schema of our own, as rows: what is used of a form that is
 * written down elsewhere.
 */
final class SeenRows {
  private final Map<String, Set<String>> words = new LinkedHashMap<>();

  private SeenRows() {}

  static List<Row> ofJson(String head, JsonNode tree) {
    SeenRows seen = new SeenRows();
    seen.json(head, tree);
    return seen.rows();
  }

  /** Elements, with their attributes after {@code @} and the elements within them. */
  static List<Row> ofXml(String xml) throws IOException {
    try {
      SeenRows seen = new SeenRows();
      seen.element(
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(xml)))
              .getDocumentElement());
      return seen.rows();
    } catch (ParserConfigurationException | SAXException broken) {
      throw new IOException(broken);
    }
  }

  private void json(String head, JsonNode node) {
    if (node.isArray()) {
      node.values().forEach(one -> json(head + "[]", one));
    }
    for (Map.Entry<String, JsonNode> key : node.properties()) {
      put(head, key.getKey());
      json(head + "." + key.getKey(), key.getValue());
    }
  }

  private void put(String head, String word) {
    words.computeIfAbsent(head, key -> new LinkedHashSet<>()).add(word);
  }

  private void element(Element element) {
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      put(element.getTagName(), "@" + element.getAttributes().item(i).getNodeName());
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child.getNodeType() == Node.ELEMENT_NODE) {
        put(element.getTagName(), child.getNodeName());
        element((Element) child);
      }
    }
  }

  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    words.forEach((head, all) -> rows.add(new Row(head, List.copyOf(all))));
    return Row.joined(rows);
  }
}
