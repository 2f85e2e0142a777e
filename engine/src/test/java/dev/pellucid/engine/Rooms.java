package dev.pellucid.engine;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.pellucid.engine.data.Ordering;
import dev.pellucid.engine.data.Schemas;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.resolve.Demand;
import dev.pellucid.measure.Calendar;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The table of rooms of grammar and engine: what each may see of the others, and of libraries. */
final class Rooms {
  static final String ROOT = "dev.pellucid.";

  /** All classes of grammar and engine, tests left out. */
  static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("dev.pellucid");

  private Rooms() {}

  /**
   * A room.
   *
   * @param sees the other rooms that it may see
   * @param words single classes that it may see of rooms that are otherwise closed to it
   * @param outside packages of libraries
   * @param classes how many classes it holds at least, so that no rule passes on nothing
   */
  record Room(
      String name, int classes, List<String> sees, Set<Class<?>> words, List<String> outside) {
    static Room of(String name, int classes, String... sees) {
      return new Room(name, classes, List.of(sees), Set.of(), List.of());
    }

    /** Words of the language, which are no part of a tree. */
    Room knowing(Class<?>... words) {
      return new Room(name, classes, sees, Set.of(words), outside);
    }

    Room using(String... packages) {
      return new Room(name, classes, sees, words, List.of(packages));
    }

    boolean holds(JavaClass type) {
      return type.getPackageName().equals(ROOT + name);
    }

    boolean maySee(JavaClass type) {
      return holds(type)
          || sees.stream().anyMatch(room -> type.getPackageName().equals(ROOT + room))
          || words.stream().anyMatch(word -> isPartOf(type, word.getName()));
    }

    /** What it is permitted to see and does not, so that nothing is open longer than it need be. */
    List<String> unused(JavaClasses house) {
      Set<JavaClass> seen =
          house.stream()
              .filter(this::holds)
              .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
              .map(dependency -> dependency.getTargetClass().getBaseComponentType())
              .collect(Collectors.toSet());
      List<String> unused = new ArrayList<>();
      sees.stream()
          .filter(room -> seen.stream().noneMatch(resideInAPackage(ROOT + room)))
          .forEach(unused::add);
      words.stream()
          .map(Class::getName)
          .filter(word -> seen.stream().noneMatch(type -> isPartOf(type, word)))
          .forEach(unused::add);
      outside.stream()
          .filter(library -> seen.stream().noneMatch(resideInAPackage(library)))
          .forEach(unused::add);
      return unused;
    }

    private static boolean isPartOf(JavaClass type, String word) {
      return (type.getName() + "$").startsWith(word + "$");
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Room> all() {
    return List.of(
        Room.of("text", 6),
        Room.of("measure", 2),
        Room.of("finding", 5, "text"),
        Room.of("syntax", 20, "text", "measure"),
        Room.of("slip", 40, "text", "measure", "finding", "syntax"),
        Room.of(
                "parse",
                25,
                "text",
                "measure",
                "finding",
                "syntax",
                "slip",
                // The room above is the only one that sees it.
                "parse.generated")
            .using("org.antlr.v4.runtime.."),
        Room.of("parse.generated", 2).using("org.antlr.v4.runtime.."),
        // It works on lexemes; which words open a section is all it needs of the tree's room.
        Room.of("format", 3, "text").knowing(Lexeme.class, SectionWord.class),
        Room.of("show", 1, "text", "finding"),
        Room.of("engine.quantity", 3, "measure"),
        Room.of("engine.yaml", 8, "text", "finding")
            // Jackson hands the parser's own exceptions through, their marks say where.
            .using("tools.jackson..", "org.snakeyaml.engine.v2.."),
        // Retention and bounds are told by step of the process: the word, not the tree.
        Room.of(
                "engine.data",
                45,
                "text",
                "measure",
                "finding",
                "engine.quantity",
                "engine.quality",
                "engine.yaml")
            .knowing(Step.class),
        Room.of(
            "engine.resolve",
            25,
            "text",
            "measure",
            "finding",
            "syntax",
            "engine.quantity",
            "engine.data"),
        Room.of(
            "engine.compute",
            14,
            "text",
            "measure",
            "syntax",
            "engine.quantity",
            "engine.data",
            "engine.resolve"),
        // What it decides is told by others: no finding, and no words.
        Room.of(
            "engine.judge",
            9,
            "measure",
            "syntax",
            "engine.quantity",
            "engine.data",
            "engine.resolve",
            "engine.compute"),
        Room.of(
            "engine.account",
            3,
            "measure",
            "syntax",
            "engine.quantity",
            "engine.data",
            "engine.resolve",
            "engine.compute",
            "engine.judge"),
        Room.of(
            "engine.check",
            30,
            "text",
            "measure",
            "finding",
            "syntax",
            "engine.quantity",
            "engine.quality",
            "engine.data",
            "engine.resolve",
            "engine.compute",
            "engine.judge",
            "engine.account",
            "engine.linear",
            "engine.optimise",
            "engine.weighing"),
        Room.of(
            "engine.carryover",
            1,
            "measure",
            "engine.quantity",
            "engine.data",
            "engine.resolve",
            "engine.compute"),
        Room.of(
            "engine.explain",
            2,
            "text",
            "measure",
            "syntax",
            "engine.quantity",
            "engine.data",
            "engine.resolve",
            "engine.compute",
            "engine.judge",
            "engine.account"),
        Room.of(
                "engine.compare",
                9,
                "engine.account",
                "text",
                "measure",
                "finding",
                "engine.quantity",
                "engine.data",
                "engine.resolve",
                "engine.compute",
                "engine.check",
                "engine.judge",
                "engine.weighing",
                "engine.label")
            .using("com.github.difflib.."),
        Room.of(
            "engine.figures",
            5,
            "engine.account",
            "text",
            "measure",
            "finding",
            "syntax",
            "engine.quantity",
            "engine.data",
            "engine.resolve",
            "engine.judge"),
        Room.of("engine.quality", 5, "measure"),
        // Figures of batches as plain values: who computed them, and who shows them, it does not
        // see.
        Room.of("engine.trend", 8, "text", "measure"),
        // It knows no room of ours, and is the only one that sees a library that solves.
        Room.of("engine.linear", 25).using("org.ojalgo.."),
        Room.of(
            "engine.optimise",
            8,
            "syntax",
            "engine.quantity",
            "engine.data",
            "engine.resolve",
            "engine.compute",
            "engine.judge",
            "engine.weighing",
            "engine.linear"),
        // It tells why in plain values, and prints nothing.
        Room.of(
            "engine.leastcost",
            15,
            "text",
            "measure",
            "finding",
            "syntax",
            "engine.account",
            "engine.quantity",
            "engine.data",
            "engine.resolve",
            "engine.compute",
            "engine.judge",
            "engine.weighing",
            "engine.check",
            "engine.records",
            "engine.label",
            "engine.linear",
            "engine.optimise",
            "engine.weighing",
            "engine.label",
            "engine.records"),
        // It tells why in plain values, and prints nothing.
        Room.of(
            "engine.rebalance",
            7,
            "text",
            "syntax",
            "engine.account",
            "engine.quantity",
            "engine.data",
            "engine.resolve",
            "engine.compute",
            "engine.judge",
            "engine.check",
            "engine.optimise",
            "engine.leastcost"),
        Room.of(
            "engine.sharing",
            10,
            "text",
            "engine.data",
            "engine.records",
            "engine.weighing",
            "engine.resolve",
            "engine.compute",
            "engine.check",
            "engine.linear",
            "engine.optimise",
            "engine.leastcost"),
        Room.of(
                "engine.weighing",
                9,
                "measure",
                "engine.quantity",
                "engine.data",
                "engine.resolve",
                "engine.compute")
            .knowing(Step.class, Property.class),
        Room.of(
                "engine.records",
                25,
                "text",
                "measure",
                "finding",
                "engine.quantity",
                "engine.quality",
                "engine.data",
                "engine.resolve",
                "engine.compute",
                "engine.check",
                "engine.judge",
                "engine.weighing",
                "engine.carryover",
                "engine.trend")
            .knowing(Step.class, Property.class, Range.class, Amount.class, Bound.class),
        // It tells in plain values what went where, and judges nothing.
        Room.of(
            "engine.trace",
            12,
            "text",
            "measure",
            "finding",
            "engine.quantity",
            "engine.data",
            "engine.records"),
        // A plan prints how limits stand beside the analysis it expects; it makes no finding.
        Room.of(
            "engine.plan",
            15,
            "engine.account",
            "measure",
            "syntax",
            "engine.quantity",
            "engine.data",
            "engine.resolve",
            "engine.compute",
            "engine.judge",
            "engine.weighing",
            "engine.carryover"),
        Room.of(
            "engine.label",
            3,
            "measure",
            "syntax",
            "engine.quantity",
            "engine.data",
            "engine.resolve",
            "engine.compute",
            "engine.plan"),
        // The only room that decides what stands in a page as it is.
        Room.of("engine.html", 4).using("j2html.."),
        Room.of(
                "engine.report",
                9,
                "engine.account",
                "text",
                "measure",
                "finding",
                "engine.quantity",
                "engine.compare",
                "engine.explain",
                "engine.html",
                "engine.label",
                "engine.leastcost",
                "engine.rebalance",
                "engine.sharing",
                "engine.records",
                "engine.trace",
                "engine.plan")
            .knowing(
                Step.class, Bound.class, Demand.class, LabelVerdict.Outcome.class, Ordering.class)
            .using("com.github.difflib..", "j2html.."),
        Room.of(
                "engine.site",
                12,
                "engine.account",
                "text",
                "measure",
                "syntax",
                "engine.quantity",
                "engine.data",
                "engine.resolve",
                "engine.compute",
                "engine.judge",
                "engine.compare",
                "engine.explain",
                "engine.html",
                "engine.plan",
                "engine.trend")
            .using("j2html.."),
        Room.of(
                "engine.outcome",
                12,
                "engine.account",
                "text",
                "measure",
                "finding",
                "show",
                "engine.compare",
                "engine.leastcost",
                "engine.records",
                "engine.sharing",
                "engine.trace")
            .knowing(Bound.class, Demand.class, LabelVerdict.Outcome.class, Ordering.class)
            .using("tools.jackson..", "javax.xml.stream.."),
        // Bytes become text by one rule for files and strings alike, and it lives with the parser.
        Room.of("engine.folder", 2, "text", "finding", "parse")
            .using("org.apache.commons.compress..", "org.apache.commons.io.."),
        // A folder that begins, as texts; of the data it knows the schemas alone.
        Room.of("engine.starter", 7, "text").knowing(Schemas.class),
        // New files as texts; whoever takes them lays them out and writes them.
        Room.of(
            "engine.form",
            5,
            "text",
            "measure",
            "syntax",
            "engine.quantity",
            "engine.data",
            "engine.resolve"),
        // The route of one recipe, and the two ways of keeping what comes of many.
        Room.of(
            "engine.workspace",
            8,
            "text",
            "finding",
            "syntax",
            "parse",
            "engine.quantity",
            "engine.weighing",
            "engine.folder",
            "engine.data",
            "engine.plan",
            "engine.records",
            "engine.trace",
            "engine.resolve",
            "engine.compute",
            "engine.check",
            "engine.judge",
            "engine.trend"),
        Room.of(
            "engine.goal",
            15,
            "engine.account",
            "text",
            "finding",
            "syntax",
            "parse",
            "format",
            "show",
            "engine.quantity",
            "engine.folder",
            "engine.data",
            "engine.records",
            "engine.trace",
            "engine.rebalance",
            "engine.outcome",
            "engine.resolve",
            "engine.compute",
            "engine.check",
            "engine.judge",
            "engine.linear",
            "engine.leastcost",
            "engine.sharing",
            "engine.compare",
            "engine.site",
            "engine.explain",
            "engine.figures",
            "engine.plan",
            "engine.label",
            "engine.report",
            "engine.starter",
            "engine.form",
            "engine.trend",
            "engine.workspace"),
        // The facade: it opens folders, and hands them to a goal.
        Room.of("engine", 1, "text", "engine.folder", "engine.goal").knowing(Calendar.class));
  }
}
