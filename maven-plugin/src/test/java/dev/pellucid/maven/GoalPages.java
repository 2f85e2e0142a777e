package dev.pellucid.maven;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * The descriptor of the plugin as pages of Markdown: one for each goal and one that lists them. It
 * makes their upper part; what stands below {@link #MARK} is written by hand.
 */
final class GoalPages {
  static final String MARK =
      "<!-- What stands above comes from the class of the goal; what follows is written by hand. -->";

  private static final String OURS = "pellucid.";
  private static final String BUILD = "${project.build.directory}";
  private static final String CURRENT = "${session.executionRootDirectory}";
  private static final String PROJECT = "${project.basedir}";

  private GoalPages() {}

  /**
   * A goal.
   *
   * @param phase to which it is bound where a build names none
   */
  record Goal(
      String name,
      String does,
      String since,
      Optional<String> phase,
      boolean needsProject,
      List<Parameter> parameters) {
    Goal {
      parameters = List.copyOf(parameters);
    }
  }

  /**
   * A parameter that a person may set.
   *
   * @param key as it stands in a POM
   * @param property as it is given on the command line
   * @param otherwise what counts where it is not given; empty for none
   */
  record Parameter(
      String key, String property, String otherwise, String since, String type, String is) {
    boolean isOurs() {
      return property.startsWith(OURS);
    }

    boolean isWrittenTo() {
      return type.equals("java.io.File") && otherwise.startsWith(BUILD);
    }
  }

  /** All goals of a descriptor, by name. */
  static List<Goal> goals(InputStream descriptor) throws IOException {
    List<Goal> goals = new ArrayList<>();
    for (Element mojo : below(parsed(descriptor).getDocumentElement(), "mojo")) {
      goals.add(goal(mojo));
    }
    goals.sort((one, other) -> one.name().compareTo(other.name()));
    return goals;
  }

  private static Document parsed(InputStream descriptor) throws IOException {
    try {
      return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(descriptor);
    } catch (ParserConfigurationException | SAXException broken) {
      throw new IOException(broken);
    }
  }

  private static Goal goal(Element mojo) {
    List<Parameter> parameters = new ArrayList<>();
    for (Element parameter : below(mojo, "parameter")) {
      if (text(parameter, "editable").equals("true")) {
        parameters.add(parameter(parameter, below(mojo, "configuration").get(0)));
      }
    }
    parameters.sort((one, other) -> one.property().compareTo(other.property()));
    String phase = text(mojo, "phase");
    return new Goal(
        text(mojo, "goal"),
        text(mojo, "description"),
        text(mojo, "since"),
        phase.isEmpty() ? Optional.empty() : Optional.of(phase),
        text(mojo, "requiresProject").equals("true"),
        parameters);
  }

  private static Parameter parameter(Element parameter, Element configuration) {
    String key = text(parameter, "name");
    List<Element> set = below(configuration, key);
    String property = set.isEmpty() ? "" : set.get(0).getTextContent().strip();
    return new Parameter(
        key,
        property.startsWith("${") ? property.substring(2, property.length() - 1) : key,
        set.isEmpty() ? "" : set.get(0).getAttribute("default-value"),
        text(parameter, "since"),
        text(parameter, "type"),
        text(parameter, "description"));
  }

  private static List<Element> below(Element element, String name) {
    List<Element> found = new ArrayList<>();
    NodeList all = element.getElementsByTagName(name);
    for (int i = 0; i < all.getLength(); i++) {
      found.add((Element) all.item(i));
    }
    return found;
  }

  /** Of the child itself, in one line; what is further down is another's. */
  private static String text(Element element, String child) {
    for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node.getNodeName().equals(child)) {
        String words = node.getTextContent().replaceAll("</?code>", "`").replace("<", "\\<");
        return words.replaceAll("\\s+", " ").strip();
      }
    }
    return "";
  }

  /** The upper part of the page of a goal. */
  static String page(Goal goal) {
    StringBuilder page = new StringBuilder("# " + goal.name() + "\n\n" + goal.does() + "\n\n");
    // Without a project Maven does not know what pellucid is short for.
    String prefix =
        goal.needsProject() ? "pellucid:" : "dev.pellucid:pellucid-maven-plugin:VERSION:";
    page.append("    mvn ").append(prefix).append(goal.name()).append("\n\n");
    page.append("| | |\n|---|---|\n");
    row(
        page,
        "runs in the phase",
        goal.phase()
            .map(phase -> "`" + phase + "`, where a POM binds it and names no other")
            .orElse("none by itself: it is called by name"));
    row(page, "needs a project", goal.needsProject() ? "yes, a `pom.xml`" : "no");
    if (!goal.since().isEmpty()) {
      row(page, "since", goal.since());
    }
    for (Parameter one : goal.parameters()) {
      if (one.isWrittenTo()) {
        row(page, "writes to", otherwise(one) + ", or where `" + one.property() + "` says");
      }
    }
    page.append("\n## Parameters\n\n");
    page.append("On the command line each stands behind `-D`").append(inPom(goal)).append(".\n\n");
    page.append("| parameter | default | is | since |\n|---|---|---|---|\n");
    for (Parameter one : goal.parameters()) {
      row(page, "`" + one.property() + "`", otherwise(one), one.is(), one.since());
    }
    return page.append('\n').toString();
  }

  /** How its parameters are called in a POM; nothing where they are called as elsewhere. */
  private static String inPom(Goal goal) {
    if (goal.parameters().stream().noneMatch(Parameter::isOurs)) {
      return "";
    }
    StringBuilder words =
        new StringBuilder("; in a POM below `configuration`, by its name without `pellucid.`");
    for (Parameter one : goal.parameters()) {
      if (!one.property().equals(OURS + one.key())) {
        words.append(", `").append(one.property()).append("` as `").append(one.key()).append('`');
      }
    }
    return words.toString();
  }

  private static String otherwise(Parameter parameter) {
    String otherwise = parameter.otherwise();
    if (otherwise.isEmpty()) {
      return "none";
    }
    return switch (otherwise) {
      case PROJECT -> "the project's folder";
      case CURRENT -> "the current folder";
      default -> "`" + otherwise.replace(BUILD, "target") + "`";
    };
  }

  /** The upper part of the page that lists all goals. */
  static String index(List<Goal> goals) {
    StringBuilder page =
        new StringBuilder(
            """
            # Goals

            Each goal of the plugin, and its own page.

            | goal | does | runs in the phase |
            |---|---|---|
            """);
    for (Goal goal : goals) {
      String link = "[`" + goal.name() + "`](" + goal.name() + ".md)";
      row(
          page,
          link,
          firstSentence(goal.does()),
          goal.phase().map(it -> "`" + it + "`").orElse(""));
    }
    return page.append('\n').toString();
  }

  private static String firstSentence(String text) {
    int end = text.indexOf(". ");
    return end < 0 ? text : text.substring(0, end + 1);
  }

  private static void row(StringBuilder page, String... cells) {
    for (String cell : cells) {
      page.append("| ").append(cell.replace("|", "\\|")).append(cell.isEmpty() ? "" : " ");
    }
    page.append("|\n");
  }
}
