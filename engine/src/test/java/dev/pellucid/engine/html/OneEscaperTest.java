package dev.pellucid.engine.html;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import j2html.TagCreator;
import j2html.rendering.FlatHtml;
import j2html.tags.DomContent;
import j2html.tags.UnescapedText;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The library escapes, and only one room may ask it not to. */
class OneEscaperTest {
  @Test
  void onlyOneRoomLetsTextStandAsItIs() {
    JavaClasses house =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.pellucid.engine");
    letsTextStand("dev.pellucid.engine.html").check(house);
    assertTrue(ways("none", house) > 0, "the room itself does");
  }

  @Test
  void theRuleSeesEveryWay() {
    assertEquals(6, ways("none", new ClassFileImporter().importClasses(CarelessPage.class)));
  }

  /** What only one room may do. */
  @SuppressWarnings("UnusedMethod")
  private static final class CarelessPage {
    static List<DomContent> all(String words) throws IOException {
      FlatHtml.inMemory().appendUnescapedText(words);
      return List.of(
          TagCreator.rawHtml(words),
          TagCreator.join(words, words),
          new UnescapedText(words),
          TagCreator.fileAsString(words));
    }
  }

  private static int ways(String room, JavaClasses classes) {
    return letsTextStand(room).evaluate(classes).getFailureReport().getDetails().size();
  }

  private static ArchRule letsTextStand(String room) {
    Pattern ways =
        Pattern.compile(
            "j2html\\.TagCreator\\.(rawHtml|join|\\w*[fF]ile\\w*)"
                + "|j2html\\.tags\\.(UnescapedText|DomContentJoiner|InlineStaticResource)\\..*"
                + "|j2html\\.(Config|rendering\\.\\w+)\\..*"
                + "|j2html\\..*\\.render\\w*");
    return noClasses()
        .that(DescribedPredicate.not(resideInAPackage(room)))
        .should()
        .accessTargetWhere(
            describe(
                "a way to let text stand in HTML as it is, or to write a page",
                access -> ways.matcher(name(access)).matches()));
  }

  private static String name(JavaAccess<?> access) {
    return access.getTargetOwner().getName() + "." + access.getTarget().getName();
  }
}
