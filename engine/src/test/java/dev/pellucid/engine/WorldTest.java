package dev.pellucid.engine;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import dev.pellucid.engine.folder.Outputs;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What grammar and engine take of the world outside: the disk by one door, and no clock. */
class WorldTest {
  private static final JavaClasses HOUSE = Rooms.HOUSE;

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
