package dev.pellucid.engine;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.resolve.Demand;
import dev.pellucid.measure.Calendar;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.syntax.Step;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rooms of grammar and engine: what each may see of the house, and of the world outside. */
class RoomsTest {
  private static final String ROOT = "dev.pellucid.";

  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("dev.pellucid");

  /**
   * A room.
   *
   * @param sees the other rooms that it may see
   * @param words single classes that it may see of rooms that are otherwise closed to it
   * @param outside packages of libraries
   * @param classes how many classes it holds at least, so that no rule passes on nothing
   */
  private record Room(
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
          || words.stream()
              .anyMatch(word -> (type.getName() + "$").startsWith(word.getName() + "$"));
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Room> rooms() {
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
        Room.of("engine.larder", 45, "text", "measure", "finding", "engine.quality", "engine.yaml")
            .knowing(Step.class),
        Room.of(
            "engine.resolve",
            25,
            "text",
            "measure",
            "finding",
            "syntax",
            "engine.quantity",
            "engine.larder"),
        Room.of(
            "engine.compute",
            14,
            "text",
            "measure",
            "syntax",
            "engine.quantity",
            "engine.larder",
            "engine.resolve"),
        // What it decides is told by others: no finding, and no words.
        Room.of(
            "engine.judge",
            9,
            "measure",
            "syntax",
            "engine.quantity",
            "engine.larder",
            "engine.resolve",
            "engine.compute"),
        Room.of(
            "engine.account",
            3,
            "measure",
            "syntax",
            "engine.quantity",
            "engine.larder",
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
            "engine.larder",
            "engine.resolve",
            "engine.compute",
            "engine.judge",
            "engine.floor"),
        Room.of(
            "engine.sequence",
            1,
            "measure",
            "engine.quantity",
            "engine.larder",
            "engine.resolve",
            "engine.compute"),
        Room.of(
            "engine.explain",
            2,
            "measure",
            "engine.quantity",
            "engine.larder",
            "engine.resolve",
            "engine.compute"),
        Room.of(
                "engine.compare",
                9,
                "measure",
                "engine.quantity",
                "engine.larder",
                "engine.resolve",
                "engine.compute",
                "engine.account",
                "engine.check",
                "engine.judge",
                "engine.floor",
                "engine.label")
            .using("com.github.difflib.."),
        Room.of(
            "engine.figures",
            5,
            "text",
            "measure",
            "finding",
            "syntax",
            "engine.quantity",
            "engine.larder",
            "engine.resolve",
            "engine.account",
            "engine.judge"),
        Room.of("engine.quality", 5, "measure"),
        Room.of(
                "engine.floor",
                9,
                "measure",
                "engine.quantity",
                "engine.larder",
                "engine.resolve",
                "engine.compute")
            .knowing(Step.class),
        Room.of(
                "engine.made",
                25,
                "text",
                "measure",
                "finding",
                "engine.quantity",
                "engine.quality",
                "engine.larder",
                "engine.resolve",
                "engine.compute",
                "engine.check",
                "engine.judge",
                "engine.floor",
                "engine.sequence")
            .knowing(Step.class, Property.class),
        // A plan prints how limits stand beside the analysis it expects; it makes no finding.
        Room.of(
            "engine.plan",
            15,
            "text",
            "measure",
            "syntax",
            "engine.quantity",
            "engine.larder",
            "engine.resolve",
            "engine.compute",
            "engine.account",
            "engine.judge",
            "engine.floor",
            "engine.sequence"),
        Room.of(
            "engine.label",
            3,
            "measure",
            "syntax",
            "engine.quantity",
            "engine.larder",
            "engine.resolve",
            "engine.compute",
            "engine.plan"),
        Room.of(
                "engine.report",
                9,
                "text",
                "measure",
                "engine.quantity",
                "engine.account",
                "engine.compare",
                "engine.explain",
                "engine.label",
                "engine.made",
                "engine.plan")
            .knowing(Step.class, Demand.class, LabelVerdict.Outcome.class)
            .using("com.github.difflib.."),
        Room.of(
                "engine.site",
                12,
                "measure",
                "syntax",
                "engine.quantity",
                "engine.larder",
                "engine.resolve",
                "engine.compute",
                "engine.judge",
                "engine.account",
                "engine.compare",
                "engine.explain",
                "engine.plan")
            .using("j2html.."),
        Room.of(
                "engine.outcome",
                12,
                "text",
                "measure",
                "finding",
                "show",
                "engine.account",
                "engine.compare")
            .knowing(Demand.class, LabelVerdict.Outcome.class)
            .using("tools.jackson..", "javax.xml.stream.."),
        // Bytes become text by one rule for files and strings alike, and it lives with the parser.
        Room.of("engine.folder", 2, "text", "finding", "parse")
            .using("org.apache.commons.compress..", "org.apache.commons.io.."),
        // The route of one recipe, and the two ways of keeping what comes of many.
        Room.of(
            "engine.workspace",
            8,
            "text",
            "finding",
            "syntax",
            "parse",
            "engine.floor",
            "engine.folder",
            "engine.larder",
            "engine.made",
            "engine.resolve",
            "engine.compute",
            "engine.check",
            "engine.judge"),
        Room.of(
            "engine.goal",
            15,
            "text",
            "finding",
            "syntax",
            "parse",
            "format",
            "show",
            "engine.floor",
            "engine.folder",
            "engine.larder",
            "engine.made",
            "engine.outcome",
            "engine.resolve",
            "engine.compute",
            "engine.account",
            "engine.check",
            "engine.judge",
            "engine.compare",
            "engine.site",
            "engine.explain",
            "engine.figures",
            "engine.plan",
            "engine.label",
            "engine.report",
            "engine.workspace"),
        // The facade: it opens folders, and hands them to a goal.
        Room.of("engine", 1, "text", "engine.folder", "engine.goal").knowing(Calendar.class));
  }

  @Test
  void everyRoomIsInTheTable() {
    Set<String> told =
        rooms().stream().map(Room::name).collect(Collectors.toCollection(TreeSet::new));
    Set<String> there =
        HOUSE.stream()
            .map(JavaClass::getPackageName)
            .filter(name -> name.startsWith(ROOT))
            .map(name -> name.substring(ROOT.length()))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(String.join("\n", there), String.join("\n", told));
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void enoughOfItWasLookedAt(Room room) {
    long held =
        HOUSE.stream()
            .filter(room::holds)
            .filter(type -> !type.getSimpleName().equals("package-info"))
            .filter(JavaClass::isTopLevelClass)
            .count();
    assertTrue(
        held >= room.classes(),
        () -> held + " classes in a room of " + room.classes() + " or more");
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void seesOnlyItsRooms(Room room) {
    DescribedPredicate<JavaClass> own = describe("of the room", room::holds);
    DescribedPredicate<JavaClass> closed =
        describe("in a room it may not see", type -> isOurs(type) && !room.maySee(type));
    noClasses().that(own).should().dependOnClassesThat(closed).check(HOUSE);
  }

  private static boolean isOurs(JavaClass type) {
    return type.getPackageName().startsWith("dev.pellucid");
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void usesOnlyItsLibraries(Room room) {
    List<String> open = new ArrayList<>(List.of("java..", "org.jspecify..", "dev.pellucid.."));
    open.addAll(room.outside());
    DescribedPredicate<JavaClass> known =
        resideInAnyPackage(open.toArray(String[]::new))
            .or(describe("primitive", type -> type.getBaseComponentType().isPrimitive()));
    noClasses()
        .that(describe("of the room", room::holds))
        .should()
        .dependOnClassesThat(DescribedPredicate.not(known))
        .check(HOUSE);
  }

  @Test
  void noRoomsInARing() {
    slices().matching("dev.pellucid.(**)").should().beFreeOfCycles().check(HOUSE);
  }

  @Test
  void noRuleComputesAFeed() {
    noClasses()
        .that(resideInAnyPackage("dev.pellucid.engine.check", "dev.pellucid.engine.judge"))
        .should()
        .dependOnClassesThat(
            describe("computers of feeds", type -> type.isEquivalentTo(FeedComputer.class)))
        .check(HOUSE);
  }

  @Test
  void limitsAreNoMatterOfComputing() {
    noClasses()
        .that(resideInAPackage("dev.pellucid.engine.compute"))
        .should()
        .dependOnClassesThat(
            resideInAPackage("dev.pellucid.engine.resolve")
                .and(
                    describe(
                        "limits",
                        type ->
                            Set.of("Limit", "Limits", "MergedLimits", "Profile", "Waiver")
                                .contains(type.getSimpleName()))))
        .check(HOUSE);
  }

  @Test
  void onlyTheFolderTouchesTheDisk() {
    Set<String> disk =
        Set.of(
            "java.nio.file.Files",
            "java.nio.file.FileSystems",
            "java.io.File",
            "java.io.FileInputStream",
            "java.io.FileOutputStream",
            "java.io.FileReader",
            "java.io.FileWriter",
            "java.io.RandomAccessFile");
    noClasses()
        .that(DescribedPredicate.not(resideInAPackage("dev.pellucid.engine.folder")))
        // What ANTLR makes is not ours to write.
        .and(DescribedPredicate.not(resideInAPackage("dev.pellucid.parse.generated")))
        .should()
        .dependOnClassesThat(describe("of the disk", type -> disk.contains(type.getName())))
        .check(HOUSE);
  }

  @Test
  void onlyOneDoorLeadsOntoTheDisk() {
    writesToTheDisk(type -> type.isEquivalentTo(Outputs.class)).check(HOUSE);
  }

  @Test
  void theRuleOfTheDoorSeesEveryOtherWay() {
    JavaClasses careless = new ClassFileImporter().importClasses(CarelessWriter.class);
    int found =
        writesToTheDisk(none -> false).evaluate(careless).getFailureReport().getDetails().size();
    assertEquals(7, found);
    JavaClasses door = new ClassFileImporter().importClasses(Outputs.class);
    assertTrue(writesToTheDisk(none -> false).evaluate(door).hasViolation());
  }

  /** What only one class of the house may do. */
  @SuppressWarnings({"DefaultCharset", "ResultOfMethodCallIgnored", "UnusedMethod"})
  private static final class CarelessWriter {
    static void all(Path file) throws IOException {
      Files.writeString(file, "x");
      Files.newBufferedWriter(file).close();
      Files.deleteIfExists(file);
      Files.move(file, file);
      new FileOutputStream(file.toFile()).close();
      new PrintWriter(file.toFile()).close();
      FileChannel.open(file).close();
    }
  }

  private static ArchRule writesToTheDisk(Predicate<JavaClass> door) {
    Pattern ways =
        Pattern.compile(
            "java\\.nio\\.file\\.Files\\.(write|new[BO]|copy|move|delete|create|set).*"
                + "|java\\.nio\\.channels\\.(Asynchronous)?FileChannel\\.open"
                + "|java\\.io\\.File\\.(create|delete|mkdir|rename|set).*"
                + "|java\\.io\\.(File(OutputStream|Writer)|RandomAccessFile)\\.<init>"
                + "|java\\.nio\\.file\\.spi\\..*");
    Pattern byName =
        Pattern.compile(
            "java\\.(io\\.Print\\w+|util\\.Formatter)\\.<init>\\(java\\.(io\\.File|lang\\.S).*");
    return noClasses()
        .that(DescribedPredicate.not(describe("the door", door)))
        .should()
        .accessTargetWhere(
            describe(
                "a way onto the disk",
                access ->
                    ways.matcher(name(access)).matches()
                        || byName.matcher(access.getTarget().getFullName()).matches()));
  }

  @Test
  void noClockNoLocaleNoEnvironment() {
    readsTheMachine().check(HOUSE);
  }

  @Test
  void theRuleOfTheClockSeesEveryOne() {
    JavaClasses careless = new ClassFileImporter().importClasses(Careless.class);
    int found = readsTheMachine().evaluate(careless).getFailureReport().getDetails().size();
    assertEquals(7, found);
  }

  /** What no class of the house may do. */
  @SuppressWarnings({
    "DefaultCharset",
    "DefaultLocale",
    "JavaTimeDefaultTimeZone",
    "StringCaseLocaleUsage",
    "UnusedMethod"
  })
  private static final class Careless {
    static String all(byte[] bytes) {
      return String.format("%s", LocalDate.now())
          + "%d".formatted(1)
          + new String(bytes)
          + "I".toLowerCase()
          + System.getenv("HOME")
          + Locale.getDefault();
    }
  }

  private static ArchRule readsTheMachine() {
    Set<String> closed =
        Set.of(
            "java.lang.System.getenv",
            "java.lang.System.getProperty",
            "java.lang.System.getProperties",
            "java.lang.System.lineSeparator",
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.lang.Boolean.getBoolean",
            "java.lang.Integer.getInteger",
            "java.lang.Long.getLong",
            "java.lang.Math.random",
            "java.util.UUID.randomUUID",
            "java.util.Locale.getDefault",
            "java.nio.charset.Charset.defaultCharset",
            "java.time.ZoneId.systemDefault",
            "java.util.TimeZone.getDefault",
            "java.time.Instant.now",
            "java.time.LocalDate.now",
            "java.time.LocalDateTime.now",
            "java.time.LocalTime.now",
            "java.time.ZonedDateTime.now",
            "java.time.Year.now",
            "java.time.OffsetDateTime.now",
            "java.time.YearMonth.now");
    Set<String> reliesOnDefaults =
        Set.of(
            "java.lang.String.toLowerCase()",
            "java.lang.String.toUpperCase()",
            "java.lang.String.getBytes()",
            "java.lang.String.<init>([B)",
            "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
            "java.lang.String.formatted([Ljava.lang.Object;)",
            "java.util.Date.<init>()",
            "java.util.Random.<init>()",
            "java.util.Formatter.<init>()",
            "java.util.Scanner.<init>(java.io.InputStream)",
            "java.io.InputStreamReader.<init>(java.io.InputStream)",
            "java.io.OutputStreamWriter.<init>(java.io.OutputStream)",
            "java.io.PrintStream.<init>(java.io.OutputStream)",
            "java.text.DecimalFormat.<init>(java.lang.String)",
            "java.text.NumberFormat.getInstance()",
            "java.time.format.DateTimeFormatter.ofPattern(java.lang.String)");
    DescribedPredicate<JavaAccess<?>> reads =
        describe(
            "the clock, the environment, or a default of the machine",
            access ->
                closed.contains(name(access))
                    || reliesOnDefaults.contains(access.getTarget().getFullName()));
    return noClasses()
        .that(DescribedPredicate.not(resideInAPackage("dev.pellucid.parse.generated")))
        .should()
        .accessTargetWhere(reads);
  }

  private static String name(JavaAccess<?> access) {
    return access.getTargetOwner().getName() + "." + access.getTarget().getName();
  }
}
