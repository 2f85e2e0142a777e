package dev.pellucid.engine;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import dev.pellucid.engine.Rooms.Room;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rooms of grammar and engine: what each may see of the house, and of the world outside. */
class RoomsTest {
  private static final String ROOT = Rooms.ROOT;
  private static final JavaClasses HOUSE = Rooms.HOUSE;

  static List<Room> rooms() {
    return Rooms.all();
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

  @ParameterizedTest
  @MethodSource("rooms")
  void isPermittedNothingThatItDoesNotUse(Room room) {
    assertEquals(List.of(), room.unused(HOUSE));
  }

  @Test
  void aPermissionWithoutUseIsSeen() {
    Room room = Room.of("text", 1, "measure", "finding").using("j2html..").knowing(Step.class);
    assertEquals(
        List.of("measure", "finding", "dev.pellucid.syntax.Step", "j2html.."), room.unused(HOUSE));
  }
}
