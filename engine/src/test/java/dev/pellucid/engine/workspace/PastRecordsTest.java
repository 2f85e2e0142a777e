package dev.pellucid.engine.workspace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.folder.Past;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Records that say what they were made from, while everything around them goes on. */
class PastRecordsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String CF = "CF-31-2026-11-18-1";
  private static final String RECORD = "batches/" + CF + ".yaml";
  private static final String PREMIX = "batches/MIN-WW-2026-11-12-1.yaml";
  private static final String RECIPE = "catfish/CF-31.recipe";
  private static final String NO_MARGIN = "weight: 28.00 kg";

  private final WrittenHistory folder = new WrittenHistory(example());

  private static Texts example() {
    try {
      // Of one recipe, so that a state is checked in no time.
      Texts whole = Texts.at(Example.whole()).held();
      List<String> others = new ArrayList<>(whole.ending(Trees.RECIPE));
      others.remove(RECIPE);
      others.add("batches/TG-44-2026-12-01-1.yaml");
      return whole.without(others);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static Whole check(Texts texts, LocalDate day) {
    Shared shared = Shared.of(ReadFolder.of(texts), Days.on(day));
    return Whole.of(shared, Streamed.check(shared, Summary::of));
  }

  private String fingerprint(String code) {
    return new PastState(Shared.of(ReadFolder.of(folder.now()), Days.on(DAY))).fingerprint(code);
  }

  private void madeFrom(String path, String commit, String fingerprint) {
    String text = folder.text(path).replaceAll("(?m)^made-from:.*\n", "");
    String both =
        (commit.isEmpty() ? "" : "commit: " + commit)
            + (commit.isEmpty() || fingerprint.isEmpty() ? "" : ", ")
            + (fingerprint.isEmpty() ? "" : "fingerprint: " + fingerprint);
    folder.write(path, text.replaceFirst("\nsize:", "\nmade-from: {" + both + "}\nsize:"));
  }

  /** All that is said at a record, as it is printed. */
  private static String said(Whole whole, String path) {
    return FindingText.of(
        whole.findings().stream().filter(it -> it.span().file().path().equals(path)).toList());
  }

  private static List<String> codes(Whole whole, String path) {
    return whole.findings().stream()
        .filter(it -> it.span().file().path().equals(path))
        .map(it -> it.code().text())
        .toList();
  }

  private Whole now() {
    return check(folder.now(), DAY);
  }

  /** Both records come after the commit that they were made from. */
  private void made() {
    Map<String, String> records = Map.of(RECORD, folder.text(RECORD), PREMIX, folder.text(PREMIX));
    records.keySet().forEach(folder::remove);
    String commit = folder.commit();
    records.forEach(folder::write);
    madeFrom(RECORD, commit, fingerprint("CF-31"));
    madeFrom(PREMIX, commit, fingerprint("MIN-WW"));
    folder.commit();
  }

  @Test
  void theSameFilesAskNobody() {
    made();
    assertEquals(List.of(), codes(now(), RECORD), said(now(), RECORD));
    assertEquals(0, folder.asked());
    assertEquals(2, now().batches());
  }

  @Test
  void anEditOfTodayAccusesNoBatchOfThen() {
    made();
    folder.change(
        RECIPE, "soybean-meal-48              28.00 %", "soybean-meal-48              22.00 %");
    assertEquals(List.of(), codes(now(), RECORD), said(now(), RECORD));
    assertTrue(folder.asked() > 0);
    assertEquals(2, now().batches());
    // Without a word of what it was made from it is held against the recipe of today.
    folder.write(RECORD, folder.text(RECORD).replaceAll("(?m)^made-from:.*\n", ""));
    assertTrue(codes(now(), RECORD).contains("weight-off-target"), said(now(), RECORD));
    assertTrue(codes(now(), RECORD).contains("record-without-commit"), said(now(), RECORD));
  }

  @Test
  void whatIsSaidPointsToTheLimitOfThen() {
    folder.change(RECORD, NO_MARGIN, "weight: 8.00 kg");
    made();
    folder.change("limits/house-practice.limits", "# What we ask", "# Anew.\n# What we ask");
    String said = said(now(), RECORD);
    assertTrue(said.contains("as of 2026-11-18"), said);
    assertTrue(said.contains("c0ffee000000:sources.yaml"), said);
    assertTrue(said.contains("batches/CF-31-2026-11-18-1.yaml:"), said);
  }

  @Test
  void aWaiverThatRanOutSinceAccusesNobody() {
    folder.change(
        RECIPE,
        "process\n  grind",
        "waive\n  crude-fibre                  max 8 %      until 2026-11-20 by \"A. Marsh\" because"
            + " \"bran of one sack\"\n\nprocess\n  grind");
    folder.change(
        RECIPE, "  crude-fibre                  max 6 %", "  crude-fibre                  max 1 %");
    made();
    Whole later = check(folder.now(), LocalDate.of(2026, 12, 24));
    assertFalse(said(later, RECORD).contains("crude-fibre"), said(later, RECORD));
  }

  @Test
  void aCommitThatIsNotThereIsNotJudgedByToday() {
    made();
    folder.change(
        RECIPE, "soybean-meal-48              28.00 %", "soybean-meal-48              22.00 %");
    folder.forget("c0ffee000000");
    Whole whole = now();
    assertEquals(List.of("record-not-judged"), codes(whole, RECORD), said(whole, RECORD));
    assertEquals(1, whole.batches());
    Finding note = at(whole, RECORD).get(0);
    assertEquals(Severity.NOTE, note.severity());
    assertTrue(said(whole, RECORD).contains("the commits are not in this clone"));
    // What it took of lots is taken all the same.
    Lot soybean =
        Optional.ofNullable(ReadFolder.of(folder.now()).tables().lots().get("SB-0411"))
            .orElseThrow();
    assertEquals(6000 - 28.0, whole.stock().left(soybean), 1e-9);
  }

  private static List<Finding> at(Whole whole, String path) {
    return whole.findings().stream().filter(it -> it.span().file().path().equals(path)).toList();
  }

  @Test
  void manyThatCannotBeHadAreOneNote() {
    made();
    folder.change("limits/house-practice.limits", "max 12 %", "max 11.9 %");
    folder.change(PREMIX, "size:", "deviations: [none]\nsize:");
    folder.change("premixes/MIN-WW.premix", "# For", "# Once more, for");
    folder.forget("c0ffee000000");
    List<Finding> notes =
        now().findings().stream()
            .filter(it -> it.code().text().equals("record-not-judged"))
            .toList();
    assertEquals(1, notes.size());
    assertTrue(notes.get(0).headline().startsWith("2 records are not judged: "));
  }

  @Test
  void aFingerprintOfOtherFilesWithoutACommitIsToldAndNotJudged() {
    madeFrom(RECORD, "", "0123456789ab");
    Whole whole = now();
    assertEquals(List.of("record-not-judged"), codes(whole, RECORD), said(whole, RECORD));
    assertEquals(Severity.WARNING, at(whole, RECORD).get(0).severity());
  }

  @Test
  void aFingerprintThatIsMiscopiedIsAWarning() {
    String record = folder.text(RECORD);
    folder.remove(RECORD);
    String commit = folder.commit();
    folder.write(RECORD, record);
    madeFrom(RECORD, commit, "0123456789ab");
    Whole whole = now();
    assertEquals(List.of("made-from-unlike"), codes(whole, RECORD), said(whole, RECORD));
    assertTrue(said(whole, RECORD).contains(" give " + fingerprint("CF-31")));
  }

  @Test
  void ofNothingThatIsKeptNothingIsAsked() {
    folder.write(RECORD, folder.text(RECORD));
    assertEquals(List.of(), codes(check(folder.now().knowing(Past.NONE), DAY), RECORD));
  }

  @Test
  void aRecipeThatIsGoneWasThereThen() {
    made();
    folder.remove(RECIPE);
    assertEquals(List.of(), codes(now(), RECORD), said(now(), RECORD));
    folder.remove("premixes/MIN-WW.premix");
    assertEquals(List.of(), codes(now(), PREMIX), said(now(), PREMIX));
  }

  @Test
  void aLotWhoseIngredientHasAnotherNameSinceCannotBeRead() {
    made();
    folder.write(
        "ingredients/maize-yellow.yaml",
        folder.text("ingredients/maize.yaml") + "\nformerly: [maize]\n");
    folder.remove("ingredients/maize.yaml");
    folder.change("lots/2026-11.yaml", "ingredient: maize\n", "ingredient: maize-yellow\n");
    Whole whole = now();
    assertTrue(codes(whole, RECORD).contains("record-not-judged"), said(whole, RECORD));
    assertTrue(said(whole, RECORD).contains("lot MZ-114 is of maize-yellow"), said(whole, RECORD));
  }

  @Test
  void whatTheLaboratoryFindsLaterInALotCounts() {
    made();
    folder.change("lots/2026-11.yaml", "crude-protein: 64.2 %", "crude-protein: 24.2 %");
    assertTrue(said(now(), RECORD).contains("as made, crude-protein"), said(now(), RECORD));
  }

  @Test
  void releasedIsClosed() {
    made();
    folder.change(
        RECORD,
        "line: maize, lot: MZ-114, weight: 8.002 kg",
        "line: maize, lot: MZ-114, weight: 8.2 kg");
    folder.change(RECORD, "water: 17.55 kg", "water: 17.550 kg");
    Whole whole = now();
    String said = said(whole, RECORD);
    assertTrue(codes(whole, RECORD).contains("released-changed"), said);
    assertTrue(said.contains("weight of maize was changed from 8.002 kg to 8.2 kg since"), said);
    // Zeros behind a figure are no change.
    assertEquals(1, codes(whole, RECORD).stream().filter("released-changed"::equals).count(), said);
    folder.change(
        RECORD,
        "release: {decision: released, by: shift lead, day: 2026-11-19}",
        """
        release: {decision: released, by: shift lead, day: 2026-11-19}
        corrections:
          - {day: 2026-11-20, by: shift lead, line: maize, was: 8.002 kg, because: misread}
        results:
          - {day: 2026-11-24, by: laboratory, moisture: 8.9 %}
        """);
    List<Severity> graves =
        at(now(), RECORD).stream()
            .filter(it -> it.code().text().equals("released-changed"))
            .map(Finding::severity)
            .toList();
    assertEquals(List.of(Severity.NOTE), graves, said(now(), RECORD));
  }

  @Test
  void whatSaysNothingOfItsStateIsNotClosedYet() {
    folder.commit();
    folder.change(RECORD, "lot: MZ-114, weight: 8.002 kg", "lot: MZ-114, weight: 8.01 kg");
    assertFalse(all(now()).contains("released-changed"), all(now()));
    assertTrue(
        all(now()).contains("nor are they held to what they were when they were released"),
        all(now()));
  }

  @Test
  void unreleasedAndGoneAreToldToo() {
    made();
    folder.change(RECORD, "release: {decision: released, by: shift lead, day: 2026-11-19}", "");
    String said = said(now(), RECORD);
    assertTrue(said.contains("release was taken out: decision released, by shift lead"), said);
    folder.write(
        "batches/2026/" + CF + ".yaml",
        folder.text(RECORD) + "release: {decision: released, by: shift lead, day: 2026-11-19}\n");
    folder.remove(RECORD);
    assertFalse(all(now()).contains("released-changed"), all(now()));
    folder.remove("batches/2026/" + CF + ".yaml");
    assertTrue(
        all(now()).contains("the record of " + CF + " was released, and is no longer"), all(now()));
  }

  private static String all(Whole whole) {
    return FindingText.of(whole.findings());
  }

  @Test
  void sixtyCommitsOfEditsChangeNoVerdict() {
    Random random = new Random(18);
    Map<String, String> verdicts = new TreeMap<>();
    String record = folder.text(RECORD).replace(NO_MARGIN, "weight: 18.00 kg");
    String premix = folder.text(PREMIX);
    folder.remove(RECORD);
    int told = 0;
    for (int i = 0; i < 60; i++) {
      edit(random, i);
      String commit = folder.commit();
      if (i % 6 == 1) {
        LocalDate day = LocalDate.of(2026, 11, 13).plusDays(i / 6);
        String made = "batches/MIN-WW-" + day + "-2.yaml";
        String path = "batches/CF-31-" + day + "-2.yaml";
        folder.write(made, premix);
        madeFrom(made, commit, fingerprint("MIN-WW"));
        folder.write(path, record.replace("MIN-WW-2026-11-12-1", "MIN-WW-" + day + "-2"));
        madeFrom(path, commit, i % 12 == 1 ? fingerprint("CF-31") : "");
        folder.commit();
        Whole whole = now();
        assertFalse(all(whole).contains("made-from-unlike"), all(whole));
        verdicts.put(path, said(whole, path));
        verdicts.put(made, said(whole, made));
        assertTrue(
            codes(whole, path).contains("made-outside-limits")
                || codes(whole, path).contains("weight-off-target"),
            said(whole, path));
        told += codes(whole, path).size();
      }
      if (i % 4 == 0) {
        Whole whole = now();
        verdicts.forEach((path, verdict) -> assertEquals(verdict, said(whole, path)));
      }
    }
    Whole whole = now();
    verdicts.forEach((path, verdict) -> assertEquals(verdict, said(whole, path)));
    assertEquals(20, verdicts.size());
    assertTrue(told >= 10);
    assertNotEquals(0, folder.asked());
  }

  /** One edit of a recipe, a premix, an ingredient, a limit, a price, a plant or practice. */
  private void edit(Random random, int number) {
    List<Runnable> edits = new ArrayList<>();
    edits.add(() -> figure(RECIPE, "soybean-meal-48              ", random, 24, 8));
    edits.add(() -> figure(RECIPE, "maize                        ", random, 6, 5));
    edits.add(
        () -> figure("premixes/MIN-WW.premix", "zinc                         ", random, 30, 20));
    edits.add(() -> figure("ingredients/soybean-meal-48.yaml", "crude-protein: ", random, 40, 8));
    edits.add(
        () ->
            figure(
                "limits/house-practice.limits", "moisture                     max ", random, 9, 4));
    edits.add(
        () ->
            figure(
                "limits/catfish-finisher.limits",
                "crude-protein                min ",
                random,
                20,
                20));
    edits.add(() -> figure("prices/2026-11.yaml", "maize: ", random, 1, 3));
    edits.add(() -> folder.change("practice/sequence.yaml", "rows:", "# " + number + "\nrows:"));
    edits.add(() -> folder.change("pellucid.yaml", "\n", "\n# " + number + "\n"));
    edits.add(() -> folder.change("plant/farm-shed.yaml", "\n", "\n# " + number + "\n"));
    edits.get(number < edits.size() ? number : random.nextInt(edits.size())).run();
  }

  private void figure(String path, String before, Random random, int from, int width) {
    String text = folder.text(path);
    int at = text.indexOf(before);
    assertTrue(at >= 0, before + " is not in " + path + "\n" + text);
    int start = at + before.length();
    int end = start;
    while (Character.isDigit(text.charAt(end)) || text.charAt(end) == '.') {
      end++;
    }
    String figure = (from + random.nextInt(width)) + "." + (10 + random.nextInt(90));
    folder.write(path, text.substring(0, start) + figure + text.substring(end));
  }
}
