package dev.pellucid.maven;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The plugin is a skin: it sees the facade, findings, their printing and the reports. */
class SkinTest {
  private static final JavaClasses SKIN =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("dev.pellucid.maven");

  private static final Pattern HANDED_ON =
      Pattern.compile(
          "dev\\.pellucid\\.engine\\.folder\\.(Texts|(Bundled|Committed|Past)(\\$\\w+)*)|.*[.$]Place");

  @Test
  void enoughOfItWasLookedAt() {
    assertTrue(SKIN.stream().filter(JavaClass::isTopLevelClass).count() >= 7);
  }

  @Test
  void seesOnlyFacadeFindingsAndReports() {
    DescribedPredicate<JavaClass> open =
        resideInAnyPackage(
            "dev.pellucid.maven..",
            "dev.pellucid.engine",
            // What came of a goal; the classes that do it are called by the facade alone.
            "dev.pellucid.engine.goal",
            "dev.pellucid.engine.report",
            "dev.pellucid.finding",
            "dev.pellucid.show",
            // A file of which a layout is shown is handed on from the facade to the report.
            "dev.pellucid.text");
    noClasses()
        .should()
        .dependOnClassesThat(
            resideInAPackage("dev.pellucid..")
                .and(DescribedPredicate.not(open))
                // Data of another version are handed on from its jar to the folder, and what a
                // folder was in earlier commits from git.
                .and(describe("others", type -> !HANDED_ON.matcher(type.getName()).matches())))
        .check(SKIN);
  }

  @Test
  void callsGoalsThroughTheFacade() {
    noClasses()
        .should()
        .dependOnClassesThat(
            resideInAPackage("dev.pellucid.engine.goal")
                .and(describe("goals", type -> type.getSimpleName().endsWith("Goal"))))
        .check(SKIN);
  }

  @Test
  void usesOnlyJavaAndMaven() {
    noClasses()
        .should()
        .dependOnClassesThat(
            DescribedPredicate.not(
                resideInAnyPackage(
                        "java..",
                        "org.apache.maven..",
                        "org.jspecify..",
                        "dev.pellucid..",
                        // One name of older builders of sites.
                        "org.codehaus.doxia.sink",
                        // How Maven has a jar from its repositories, and what its reader of POMs
                        // throws.
                        "org.eclipse.aether..",
                        "org.codehaus.plexus.util.xml.pull")
                    .or(describe("primitive", SkinTest::isPrimitive))))
        // The goal help is generated, and reads its own descriptor as XML.
        .check(SKIN.that(DescribedPredicate.not(resideInAPackage("dev.pellucid.maven.help"))));
  }

  @Test
  void writesThroughTheFacade() {
    Pattern ways =
        Pattern.compile(
            "java\\.io\\.File\\.(create|delete|mkdir|rename|set).*"
                + "|java\\.io\\.(File(OutputStream|Writer)|RandomAccessFile|Print\\w+)\\.<init>"
                + "|java\\.lang\\.ProcessBuilder\\$Redirect\\.(to|appendTo)");
    noClasses()
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(Files.class, FileChannel.class)
        .check(SKIN);
    noClasses()
        .should()
        .accessTargetWhere(
            describe(
                "a way onto the disk",
                access ->
                    ways.matcher(
                            access.getTargetOwner().getName() + "." + access.getTarget().getName())
                        .matches()))
        .check(SKIN);
  }

  @Test
  void onlyOneClassStartsAProgram() {
    noClasses()
        .that(
            describe(
                "neither of the two",
                type ->
                    !type.isEquivalentTo(Git.class) && !type.isEquivalentTo(TimedProgram.class)))
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(ProcessBuilder.class, Runtime.class)
        .check(SKIN);
  }

  private static boolean isPrimitive(JavaClass type) {
    return type.getBaseComponentType().isPrimitive();
  }
}
