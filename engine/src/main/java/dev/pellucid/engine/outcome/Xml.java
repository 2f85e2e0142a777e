package dev.pellucid.engine.outcome;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Elements of XML as text. Most words have no character that must be escaped and stand as they are;
 * all others go through the writer of the JDK, which takes many times as long to put down an
 * attribute.
 */
final class Xml {
  private static final int USUAL = 4096;

  private final StringBuilder out = new StringBuilder(USUAL);

  /** Begins a line. */
  void line(int depth) {
    out.append('\n');
    for (int i = 0; i < depth; i++) {
      out.append("  ");
    }
  }

  /** The beginning of an element, to which attributes may be added. */
  void start(String element) {
    out.append('<').append(element);
  }

  void attribute(String name, String value) {
    markedAttribute(name, inAttribute(value));
  }

  void attribute(String name, int number) {
    out.append(' ').append(name).append("=\"").append(number).append('"');
  }

  /** An attribute whose value has been through {@link #inAttribute}. */
  void markedAttribute(String name, String escaped) {
    out.append(' ').append(name).append("=\"").append(escaped).append('"');
  }

  /** Behind the attributes of an element that holds something. */
  void open() {
    out.append('>');
  }

  /** Behind the attributes of an element that holds nothing. */
  void closeEmpty() {
    out.append("/>");
  }

  void text(String text) {
    out.append(isPlain(text) ? text : escaped(clean(text), false));
  }

  void end(String element) {
    out.append("</").append(element).append('>');
  }

  @Override
  public String toString() {
    return out.toString();
  }

  /** A value as it stands in an attribute. */
  static String inAttribute(String value) {
    return isPlain(value) ? value : escaped(clean(value), true);
  }

  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = c >= ' ' && c < Character.MIN_SURROGATE || c == '\n';
      if (!plain || c == '&' || c == '<' || c == '>' || c == '"') {
        return false;
      }
    }
    return true;
  }

  /** Put down by the JDK as the only thing there is, of which the text itself is taken. */
  private static String escaped(String text, boolean inAttribute) {
    StringWriter written = new StringWriter();
    try {
      XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(written);
      if (inAttribute) {
        xml.writeEmptyElement("a");
        xml.writeAttribute("a", text);
        xml.writeEndDocument();
      } else {
        xml.writeCharacters(text);
      }
      xml.close();
    } catch (XMLStreamException broken) {
      throw new IllegalStateException(broken);
    }
    String all = written.toString();
    return inAttribute ? all.substring(all.indexOf('"') + 1, all.lastIndexOf('"')) : all;
  }

  /** What XML 1.0 cannot hold becomes U+FFFD. */
  private static String clean(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> out.appendCodePoint(isXml(c) ? c : 0xFFFD));
    return out.toString();
  }

  /** Char of XML 1.0, section 2.2; a lone carriage return is none that a reader keeps. */
  private static boolean isXml(int c) {
    return c == '\t'
        || c == '\n'
        || c >= 0x20 && c <= 0xD7FF
        || c >= 0xE000 && c <= 0xFFFD
        || c >= 0x10000;
  }
}
