package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.maven.GoalPages.Goal;
import dev.pellucid.maven.GoalPages.Parameter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The pages of the goals. Their upper part says what the descriptor of the plugin says, which Maven
 * makes of the classes; each has a part that is written by hand, and that stays.
 */
class GoalPagesTest {
  private static final Path DESCRIPTOR =
      Path.of("target", "classes", "META-INF", "maven", "plugin.xml");
  private static final Path PAGES = Path.of("docs", "goals");
  private static final Path EXPECTED = Path.of("target", "docs", "goals");
  private static final String WRITES = "## What it writes";
  private static final String TO_WRITE =
      "\nTO BE WRITTEN: what a person must know of this goal, and examples.\n\n"
          + WRITES
          + "\n\nTO BE WRITTEN: every file and folder, or nothing.\n";
  private static final Pattern SENTENCES = Pattern.compile("[A-Z].*\\.");

  private static List<Goal> goals() throws IOException {
    assertTrue(
        Files.exists(DESCRIPTOR),
        DESCRIPTOR + " is not there: Maven makes it in the phase process-classes");
    try (InputStream descriptor = Files.newInputStream(DESCRIPTOR)) {
      return GoalPages.goals(descriptor);
    }
  }

  /** Every page by the name of its file, as it should be, with the part that is written by hand. */
  private static Map<String, String> expected(List<Goal> goals) throws IOException {
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("README.md", GoalPages.index(goals));
    goals.forEach(goal -> pages.put(goal.name() + ".md", GoalPages.page(goal)));
    for (Map.Entry<String, String> page : pages.entrySet()) {
      page.setValue(page.getValue() + GoalPages.MARK + "\n" + byHand(page.getKey()));
    }
    return pages;
  }

  private static String byHand(String name) throws IOException {
    Path page = PAGES.resolve(name);
    String text = Files.exists(page) ? Files.readString(page) : "";
    int mark = text.indexOf(GoalPages.MARK);
    return mark < 0 ? TO_WRITE : text.substring(mark + GoalPages.MARK.length() + 1);
  }

  @Test
  void eachGoalHasItsPage() throws IOException {
    Map<String, String> expected = expected(goals());
    Files.createDirectories(EXPECTED);
    for (Map.Entry<String, String> page : expected.entrySet()) {
      Files.writeString(EXPECTED.resolve(page.getKey()), page.getValue());
    }
    for (Map.Entry<String, String> page : expected.entrySet()) {
      Path file = PAGES.resolve(page.getKey());
      assertEquals(
          page.getValue(),
          Files.exists(file) ? Files.readString(file) : "",
          () ->
              "maven-plugin/docs/goals/"
                  + page.getKey()
                  + " is not what its goal says. What it should be lies in maven-plugin/target/docs/goals:"
                  + " copy it, and of a new goal write the part below the mark by hand");
    }
  }

  @Test
  void noPageIsOfAGoalThatIsGone() throws IOException {
    try (Stream<Path> files = Files.list(PAGES)) {
      assertEquals(
          new TreeSet<>(expected(goals()).keySet()),
          files
              .map(it -> PAGES.relativize(it).toString())
              .collect(Collectors.toCollection(TreeSet::new)));
    }
  }

  @Test
  void eachPageSaysByHandWhatItsGoalWrites() throws IOException {
    for (String name : expected(goals()).keySet()) {
      String byHand = byHand(name);
      assertFalse(byHand.contains("TO BE WRITTEN"), "maven-plugin/docs/goals/" + name);
      assertTrue(
          name.equals("README.md") || byHand.contains("\n" + WRITES + "\n"),
          "maven-plugin/docs/goals/" + name + " has no " + WRITES);
    }
  }

  /** Of help, Maven's own tool writes the words. */
  @Test
  void whatAGoalAndAParameterAreIsSaidInSentences() throws IOException {
    int parameters = 0;
    for (Goal goal : goals()) {
      if (!goal.name().equals("help")) {
        assertTrue(SENTENCES.matcher(goal.does()).matches(), goal.name());
        assertFalse(goal.since().isEmpty(), goal.name() + " has no @since");
        for (Parameter one : goal.parameters()) {
          parameters++;
          String name = goal.name() + " " + one.property();
          assertTrue(one.property().matches("pellucid\\.[a-zA-Z]+"), name);
          assertTrue(SENTENCES.matcher(one.is()).matches(), name + ": " + one.is());
          assertFalse(one.since().isEmpty(), name + " has no @since");
        }
      }
    }
    assertTrue(parameters > 50, "parameters read: " + parameters);
  }

  private static final String SMALL =
      """
      <plugin><mojos><mojo>
        <goal>weigh</goal>
        <description>Weighs it. Then it
        rests &lt;always>.</description>
        <since>0.2.0</since>
        <requiresProject>false</requiresProject>
        <parameters>
          <parameter><name>to</name><type>java.io.File</type><since>0.2.0</since>
            <editable>true</editable><description>Where it goes.</description></parameter>
          <parameter><name>offered</name><type>java.lang.String</type><since>0.3.0</since>
            <editable>true</editable><description>One | other.</description></parameter>
          <parameter><name>inside</name><type>java.io.File</type>
            <editable>false</editable><description>Not shown.</description></parameter>
        </parameters>
        <configuration>
          <to default-value="${project.build.directory}/weights">${pellucid.to}</to>
          <offered>${pellucid.try}</offered>
        </configuration>
      </mojo></mojos></plugin>
      """;

  @Test
  void aPageIsMadeOfTheDescriptor() throws IOException {
    List<Goal> goals =
        GoalPages.goals(new ByteArrayInputStream(SMALL.getBytes(StandardCharsets.UTF_8)));
    assertEquals(
        """
        # weigh

        Weighs it. Then it rests \\<always>.

            mvn dev.pellucid:pellucid-maven-plugin:VERSION:weigh

        | | |
        |---|---|
        | runs in the phase | none by itself: it is called by name |
        | needs a project | no |
        | since | 0.2.0 |
        | writes to | `target/weights`, or where `pellucid.to` says |

        ## Parameters

        On the command line each stands behind `-D`; in a POM below `configuration`, by its name\
         without `pellucid.`, `pellucid.try` as `offered`.

        | parameter | default | is | since |
        |---|---|---|---|
        | `pellucid.to` | `target/weights` | Where it goes. | 0.2.0 |
        | `pellucid.try` | none | One \\| other. | 0.3.0 |

        """,
        GoalPages.page(goals.get(0)));
    assertTrue(GoalPages.index(goals).contains("| [`weigh`](weigh.md) | Weighs it. | |\n"));
    assertEquals(Set.of("README.md", "weigh.md"), expected(goals).keySet());
    assertTrue(
        Objects.requireNonNull(expected(goals).get("weigh.md"))
            .endsWith(GoalPages.MARK + "\n" + TO_WRITE));
  }
}
