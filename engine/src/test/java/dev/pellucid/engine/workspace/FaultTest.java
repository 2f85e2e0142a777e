package dev.pellucid.engine.workspace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where this program itself breaks, one file is lost to the check and everything else goes on. */
class FaultTest {
  private static final Days DAY = Days.on(LocalDate.of(2026, 11, 25));

  @TempDir Path empty;

  private Texts texts() throws IOException {
    return Texts.at(empty).over(EditedFolder.texts());
  }

  /** A premix where a recipe is asked for: no driver hands one over, so it is a fault. */
  private static Checked fault(Shared shared) {
    SourceFile premix =
        shared.texts().read("premixes/VM-CAT.premix", new ArrayList<>()).orElseThrow();
    return Checks.check(shared, new SourceBytes.Decoded(premix, List.of()));
  }

  @Test
  void aFaultIsOneFindingThatNamesTheFileAndWhatToTry() throws IOException {
    Checked broken = fault(Shared.of(ReadFolder.of(texts()), DAY));
    assertEquals(
        """
        premixes/VM-CAT.premix:1:1: error: a fault of pellucid, and none of yours, kept this file from being checked [fault-of-pellucid]
         note: it broke with ClassCastException
         help: take back what was changed last in this file, and check again
         help: run the goal with -X and send what it prints to those who look after pellucid
        """,
        FindingText.of(broken.findings().get(0)));
    assertEquals(1, broken.findings().size());
    assertFalse(broken.isSound());
    assertTrue(broken.fault().orElseThrow() instanceof ClassCastException);
  }

  @Test
  void everythingElseGoesOnAndTheTallySaysSo() throws IOException {
    Shared shared = Shared.of(ReadFolder.of(texts()), DAY);
    List<Summary> recipes = new ArrayList<>(Streamed.check(shared, Summary::of));
    recipes.add(Summary.of(fault(shared)));
    Whole whole = Whole.of(shared, recipes);
    assertEquals(1, whole.faults().size());
    assertEquals(List.of("VM-CAT"), whole.notChecked());
    assertEquals(
        List.of(Fault.CODE),
        whole.findings().stream()
            .filter(one -> one.span().file().path().endsWith("VM-CAT.premix"))
            .map(Finding::code)
            .toList());
    assertTrue(whole.unmade().contains("VM-CAT"));
  }

  @Test
  void whatIsSoundIsKept() throws IOException {
    Texts texts = texts();
    AtomicInteger asked = new AtomicInteger();
    Kept<Integer> kept =
        Kept.of(
            texts,
            DAY,
            Kept.Route.CHECK,
            recipe -> {
              asked.incrementAndGet();
              return recipe.findings().size();
            });
    kept.all();
    int first = asked.get();
    kept.with(texts).all();
    assertEquals(first, asked.get(), "sound recipes are kept");
  }
}
