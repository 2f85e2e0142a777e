package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.PrintedPaths;
import java.io.StringWriter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Limits as JUnit XML, the form that build servers read: a suite for each recipe, a case for each
 * of its limits, those that are kept too. A broken limit is a failure; one that cannot be judged,
 * and a recipe that could not be checked, is an error; one that is kept only as far as it is told
 * is skipped. Whatever else is wrong with a recipe is not told here.
 *
 * <p>There is no published standard of this form. Elements and attributes are those that the report
 * of Maven's own test runner has.
 */
final class LimitsJunit {
  private static final String UNCHECKED = "its limits can be judged";
  private static final String NOT_JUDGED =
      "it cannot be judged, and what is not told may break it; the findings of the recipe say more";
  private static final String AS_TOLD =
      "kept as far as it is told; the findings of the recipe say what is not";

  private final XMLStreamWriter xml;
  private final PrintedPaths paths;

  private LimitsJunit(XMLStreamWriter xml, PrintedPaths paths) {
    this.xml = xml;
    this.paths = paths;
  }

  static String of(CheckOutcome outcome, PrintedPaths paths) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      new LimitsJunit(xml, paths).suites(outcome.recipes());
      xml.close();
    } catch (XMLStreamException broken) {
      throw new IllegalStateException(broken);
    }
    return text.toString();
  }

  private void suites(List<RecipeOutcome> recipes) throws XMLStreamException {
    xml.writeStartDocument("UTF-8", "1.0");
    line(0);
    xml.writeStartElement("testsuites");
    attribute("name", "limits");
    counts(recipes);
    for (RecipeOutcome recipe : recipes) {
      line(1);
      suite(recipe);
    }
    line(0);
    xml.writeEndElement();
    xml.writeEndDocument();
    line(0);
  }

  private void suite(RecipeOutcome recipe) throws XMLStreamException {
    xml.writeStartElement("testsuite");
    attribute("name", recipe.code());
    counts(List.of(recipe));
    attribute("skipped", recipe.count(LimitOutcome.State.KEPT_AS_TOLD));
    attribute("time", "0");
    if (!recipe.checked()) {
      unchecked(recipe);
    }
    Map<String, Integer> names = new HashMap<>();
    for (LimitOutcome limit : recipe.limits()) {
      int number = names.merge(limit.name(), 1, Integer::sum);
      limit(recipe, limit, number == 1 ? limit.name() : limit.name() + " " + number);
    }
    line(1);
    xml.writeEndElement();
  }

  private void counts(List<RecipeOutcome> recipes) throws XMLStreamException {
    long unchecked = recipes.stream().filter(recipe -> !recipe.checked()).count();
    long limits = recipes.stream().mapToLong(recipe -> recipe.limits().size()).sum();
    attribute("tests", limits + unchecked);
    attribute("failures", count(recipes, LimitOutcome.State.BROKEN));
    attribute("errors", count(recipes, LimitOutcome.State.NOT_JUDGED) + unchecked);
  }

  private static long count(List<RecipeOutcome> recipes, LimitOutcome.State state) {
    return recipes.stream().mapToLong(recipe -> recipe.count(state)).sum();
  }

  private void unchecked(RecipeOutcome recipe) throws XMLStreamException {
    startCase(recipe, UNCHECKED);
    List<Finding> obstacles = recipe.obstacles();
    String mend = "mend " + String.join(", ", recipe.mendFirst()) + " first";
    String why = obstacles.isEmpty() ? mend : obstacles.get(0).headline();
    String type = obstacles.isEmpty() ? "not-checked" : obstacles.get(0).code().text();
    told("error", type, why, recipe.mendFirst().isEmpty() ? "" : mend + "\n", obstacles);
    endCase();
  }

  private void limit(RecipeOutcome recipe, LimitOutcome limit, String name)
      throws XMLStreamException {
    if (limit.state() == LimitOutcome.State.KEPT) {
      line(2);
      xml.writeEmptyElement("testcase");
      named(recipe, name);
    } else {
      startCase(recipe, name);
      why(limit);
      endCase();
    }
  }

  private void why(LimitOutcome limit) throws XMLStreamException {
    switch (limit.state()) {
      case KEPT -> {}
      case BROKEN -> broken(limit.finding().orElseThrow());
      case NOT_JUDGED -> told("error", "not-judged", NOT_JUDGED, "", List.of());
      case KEPT_AS_TOLD -> skipped();
    }
  }

  private void broken(Finding finding) throws XMLStreamException {
    told("failure", finding.code().text(), finding.headline(), "", List.of(finding));
  }

  private void skipped() throws XMLStreamException {
    line(3);
    xml.writeEmptyElement("skipped");
    attribute("message", AS_TOLD);
  }

  private void told(String element, String type, String message, String first, List<Finding> said)
      throws XMLStreamException {
    line(3);
    xml.writeStartElement(element);
    attribute("type", type);
    attribute("message", message);
    xml.writeCharacters(clean("\n" + first + FindingText.of(said, paths)));
    xml.writeEndElement();
  }

  private void startCase(RecipeOutcome recipe, String name) throws XMLStreamException {
    line(2);
    xml.writeStartElement("testcase");
    named(recipe, name);
  }

  private void named(RecipeOutcome recipe, String name) throws XMLStreamException {
    attribute("classname", recipe.code());
    attribute("name", name);
    attribute("time", "0");
  }

  private void endCase() throws XMLStreamException {
    line(2);
    xml.writeEndElement();
  }

  private void attribute(String name, long number) throws XMLStreamException {
    attribute(name, Long.toString(number));
  }

  private void attribute(String name, String value) throws XMLStreamException {
    xml.writeAttribute(name, clean(value));
  }

  private void line(int depth) throws XMLStreamException {
    xml.writeCharacters("\n" + "  ".repeat(depth));
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
