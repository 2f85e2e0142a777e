package dev.pellucid.engine;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import dev.pellucid.engine.check.Rule;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.goal.FolderLayout;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.Code;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/**
 * The laws of the house that are about how code is written: worlds are closed, rules keep nothing,
 * no null is unmarked, nothing static changes. Each is shown to see a careless class.
 */
class LawsTest {
  private static final JavaClasses HOUSE = Rooms.HOUSE;

  /**
   * Who may still ask what kind a value of a sealed type is, and why. Everyone else asks the type a
   * question, or gives an answer for each kind, so that a new kind does not compile before it is
   * answered everywhere.
   */
  private static final Set<String> ASKING =
      Set.of(
          // Lines of a head are parted by the kind of file that they stand in.
          "FileReader HeadLine",
          // YAML has three kinds of node and will have no fourth; one that is not of the kind that
          // its key holds is a finding.
          "Astray Yaml",
          "Fields Yaml",
          "ClosedRecord Yaml",
          "KeyFindings Yaml",
          "TreeBuilder Yaml",
          // Trees are kept by the end of their path, which says the kind of file.
          "Trees FeedFile",
          // One rule for each kind, since each has a page of its own.
          "Rules Obstacle");

  @Test
  void onlyAFewAskWhatKindAValueIs() {
    assertEquals(lines(ASKING), lines(asking(HOUSE)));
  }

  @Test
  void everyQuestionForAKindIsSeen() {
    JavaClasses careless = new ClassFileImporter().importClasses(CarelessAsker.class);
    assertEquals(lines(Set.of("LawsTest Material", "LawsTest Subject")), lines(asking(careless)));
  }

  /** It takes all subjects but one for the same, and all materials but one. */
  @SuppressWarnings("UnusedMethod")
  private static final class CarelessAsker {
    static String unit(Subject subject) {
      return subject instanceof Subject.Cost ? "EUR/kg" : "%";
    }

    static boolean isBought(Optional<Material> material) {
      return material.filter(Material.Single.class::isInstance).isPresent();
    }
  }

  /** Which class asks for a kind of which sealed type, by {@code instanceof} or by its class. */
  private static Set<String> asking(JavaClasses classes) {
    Set<String> asking = new TreeSet<>();
    for (JavaClass type : classes) {
      Set<JavaClass> kinds =
          type.getInstanceofChecks().stream()
              .map(check -> check.getRawType())
              .collect(Collectors.toSet());
      type.getReferencedClassObjects().forEach(object -> kinds.add(object.getRawType()));
      Class<?> asks = outermost(type.reflect());
      for (JavaClass kind : kinds) {
        closed(kind)
            .filter(closed -> outermost(closed) != asks)
            .forEach(closed -> asking.add(asks.getSimpleName() + " " + closed.getSimpleName()));
      }
    }
    return asking;
  }

  /** The sealed types of ours that a class is by itself a kind of. */
  private static Stream<Class<?>> closed(JavaClass kind) {
    return kind.getRawInterfaces().stream()
        .filter(type -> type.getPackageName().startsWith("dev.pellucid"))
        .<Class<?>>map(JavaClass::reflect)
        .filter(Class::isSealed);
  }

  private static Class<?> outermost(Class<?> type) {
    Class<?> outer = type;
    while (outer.getEnclosingClass() != null) {
      outer = outer.getEnclosingClass();
    }
    return outer;
  }

  private static String lines(Set<String> all) {
    return String.join("\n", new TreeSet<>(all));
  }

  @Test
  void rulesKeepNothing() {
    assertEquals(Set.of(), keeping(HOUSE));
  }

  @Test
  void everyRuleThatKeepsSomethingIsSeen() {
    JavaClasses careless = new ClassFileImporter().importClasses(CarelessRule.class);
    assertEquals(Set.of("CarelessRule.found", "CarelessRule.last"), keeping(careless));
  }

  /** It counts what it finds, and the next recipe is told of it. */
  @SuppressWarnings("UnusedVariable")
  private abstract static class CarelessRule implements Rule {
    private final Code code = new Code("careless");
    private final List<String> found = new ArrayList<>();
    private String last = "";
  }

  /** The fields of rules in which something of one recipe could reach the next. */
  private static Set<String> keeping(JavaClasses classes) {
    return classes.stream()
        .filter(LawsTest::isRule)
        .flatMap(type -> type.getFields().stream())
        .filter(field -> !field.getModifiers().contains(JavaModifier.STATIC))
        .filter(field -> !isConstant(field))
        .map(field -> field.getOwner().getSimpleName() + "." + field.getName())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean isRule(JavaClass type) {
    return type.isAssignableTo(Rule.class)
        || type.isAssignableTo("dev.pellucid.engine.records.RecordRule");
  }

  private static boolean isConstant(JavaField field) {
    JavaClass type = field.getRawType();
    boolean fixed =
        type.isPrimitive()
            || type.isEnum()
            || type.isEquivalentTo(String.class)
            || type.isEquivalentTo(Class.class)
            || type.isEquivalentTo(Code.class);
    return fixed && field.getModifiers().contains(JavaModifier.FINAL);
  }

  @Test
  void enoughRulesWereLookedAt() {
    long rules = HOUSE.stream().filter(LawsTest::isRule).count();
    assertTrue(rules > 50, () -> rules + " rules");
  }

  @Test
  void noRuleComputesAFeed() {
    computesNoFeed("dev.pellucid.engine.check", "dev.pellucid.engine.judge").check(HOUSE);
  }

  @Test
  void whoComputesAFeedIsSeen() {
    assertTrue(computesNoFeed("dev.pellucid.engine.workspace").evaluate(HOUSE).hasViolation());
  }

  private static ArchRule computesNoFeed(String... rooms) {
    return noClasses()
        .that(resideInAnyPackage(rooms))
        .should()
        .dependOnClassesThat(
            describe("computers of feeds", type -> type.isEquivalentTo(FeedComputer.class)));
  }

  /** What ANTLR makes is not ours to mark, and shows that a package without the mark is seen. */
  @Test
  void everyPackageIsNullMarked() {
    Set<String> unmarked = new TreeSet<>();
    for (JavaClass type : HOUSE) {
      String words = type.getPackageName() + ".package-info";
      if (!HOUSE.contain(words) || !HOUSE.get(words).isAnnotatedWith(NullMarked.class)) {
        unmarked.add(type.getPackageName());
      }
    }
    assertEquals(Set.of("dev.pellucid.parse.generated"), unmarked);
  }

  @Test
  void nothingStaticChanges() throws IllegalAccessException {
    List<Field> all = statics(HOUSE);
    // It remembers what a pure function gave, so no run sees anything of the one before.
    assertEquals(List.of("Normal.QUANTILES"), changing(all));
    assertTrue(all.size() > 40, () -> all.size() + " static collections");
  }

  @Test
  void everyStaticCollectionThatChangesIsSeen() throws IllegalAccessException {
    JavaClasses careless = new ClassFileImporter().importClasses(CarelessKeeper.class);
    assertEquals(
        List.of("CarelessKeeper.FIXED", "CarelessKeeper.SEEN", "CarelessKeeper.replaced"),
        changing(statics(careless)));
  }

  /** What every run would see of the one before. */
  @SuppressWarnings({"UnusedVariable", "MutableConstantField", "FieldCanBeFinal"})
  private static final class CarelessKeeper {
    private static final Map<String, String> SEEN = new HashMap<>();
    private static final List<String> FIXED = Arrays.asList("one", "two");
    private static final List<String> SAFE = List.of("one");
    private static List<String> replaced = List.of();
  }

  private static List<Field> statics(JavaClasses classes) {
    return classes.stream()
        .flatMap(type -> type.getFields().stream())
        .filter(field -> field.getModifiers().contains(JavaModifier.STATIC))
        .filter(
            field ->
                field.getRawType().isAssignableTo(Collection.class)
                    || field.getRawType().isAssignableTo(Map.class))
        .map(JavaField::reflect)
        .sorted((one, other) -> name(one).compareTo(name(other)))
        .toList();
  }

  private static List<String> changing(List<Field> fields) throws IllegalAccessException {
    List<String> changing = new ArrayList<>();
    for (Field field : fields) {
      field.setAccessible(true);
      if (!Modifier.isFinal(field.getModifiers())
          || takesChanges(Objects.requireNonNull(field.get(null)))) {
        changing.add(name(field));
      }
    }
    return changing;
  }

  private static String name(Field field) {
    return field.getDeclaringClass().getSimpleName() + "." + field.getName();
  }

  /** Asks for changes that change nothing: one that cannot be changed refuses even these. */
  private static boolean takesChanges(Object collection) {
    try {
      if (collection instanceof Map<?, ?> map) {
        map.replaceAll((key, value) -> value);
      } else {
        ((Collection<?>) collection).removeIf(element -> false);
      }
      return true;
    } catch (UnsupportedOperationException refused) {
      return false;
    }
  }

  @Test
  void onlyTheFacadeSeesGoals() {
    seesNoGoal(describe("outside the facade", type -> !isFacadeOrGoal(type))).check(HOUSE);
  }

  @Test
  void whoSeesAGoalIsSeen() {
    JavaClasses careless = new ClassFileImporter().importClasses(CarelessCaller.class);
    assertTrue(seesNoGoal(describe("any", type -> true)).evaluate(careless).hasViolation());
  }

  private static boolean isFacadeOrGoal(JavaClass type) {
    return Set.of("dev.pellucid.engine", "dev.pellucid.engine.goal")
        .contains(type.getPackageName());
  }

  private static ArchRule seesNoGoal(DescribedPredicate<JavaClass> who) {
    return noClasses()
        .that(who)
        .should()
        .dependOnClassesThat(resideInAPackage("dev.pellucid.engine.goal"));
  }

  @Test
  void theWorkspaceReadsAndWritesNothing() {
    readsNothing(resideInAPackage("dev.pellucid.engine.workspace")).check(HOUSE);
  }

  @Test
  void whoReadsSomethingIsSeen() {
    JavaClasses careless = new ClassFileImporter().importClasses(CarelessCaller.class);
    assertTrue(readsNothing(describe("any", type -> true)).evaluate(careless).hasViolation());
  }

  private static ArchRule readsNothing(DescribedPredicate<JavaClass> who) {
    return noClasses()
        .that(who)
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("java.io..", "java.nio.file..", "java.nio.channels..")
                // Lambdas and records name it, and it opens nothing.
                .and(describe("a door", type -> !type.isEquivalentTo(java.io.Serializable.class))));
  }

  /** It asks a goal, and reads a file by itself. */
  @SuppressWarnings({"UnusedMethod", "UnusedVariable"})
  private record CarelessCaller(FolderLayout layout) {
    static String read(Path file) throws IOException {
      return Files.readString(file);
    }
  }
}
