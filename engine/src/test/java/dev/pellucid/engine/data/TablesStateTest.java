package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A state that follows another is what reading afresh gives, and keeps what has not changed. */
class TablesStateTest {
  private static final SortedMap<String, SourceFile> EXAMPLE = Pantry.of(Example.whole()).files();

  private static final SortedMap<String, SourceFile> NONE = new TreeMap<>();

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13})
  void afterAnyEditsItIsWhatReadingAfreshGives(long seed) {
    EditedData folder = new EditedData(EXAMPLE, seed);
    TablesState kept = TablesState.empty();
    int broken = 0;
    for (int step = 0; step < 100; step++) {
      String edit = folder.edit();
      kept = kept.next(folder.texts(), folder.closed());
      TablesRead afresh = TablesReader.read(folder.texts(), folder.closed());
      String where = "edit " + step + " of " + seed + ": " + edit;
      assertEquals(
          FindingText.of(afresh.findings()), FindingText.of(kept.stocked().findings()), where);
      assertEquals(shown(afresh.tables()), shown(kept.stocked().tables()), where);
      broken += afresh.findings().isEmpty() ? 0 : 1;
    }
    assertTrue(broken >= 34, "broken " + broken);
  }

  /** All that the tables holds, in words. */
  private static String shown(FeedTables tables) {
    return Stream.of(
            tables.settings(),
            tables.sources(),
            tables.nutrients().inOrder(),
            tables.nutrients().mendFirst(),
            tables.groups(),
            tables.ingredients(),
            tables.species(),
            tables.plants(),
            tables.plant(),
            tables.label(),
            tables.practice(),
            tables.prices(),
            tables.pricesWhole(),
            tables.ordering(),
            tables.lots(),
            tables.batches(),
            tables.plans())
        .map(String::valueOf)
        .collect(Collectors.joining("\n"));
  }

  @Test
  void theSameTextsKeepEveryThing() {
    TablesState state = TablesState.empty().next(EXAMPLE, NONE);
    assertKept(state, state.next(new TreeMap<>(EXAMPLE), NONE), List.of());
  }

  @Test
  void aChangedIngredientLeavesAllOthers() {
    TablesState state = TablesState.empty().next(EXAMPLE, NONE);
    TablesState next = state.next(changed("ingredients/wheat-bran.yaml"), NONE);
    assertKept(state, next, List.of("wheat-bran"));
    assertSame(practice(state), practice(next));
    assertSame(state.stocked().tables().plant().orElseThrow(), plant(next));
    assertEquals("# of the next state", ingredient(next, "wheat-bran").declared().file().line(1));
  }

  @Test
  void theIngredientOfAFlushIsTheOneThatIsThere() {
    TablesState state = TablesState.empty().next(EXAMPLE, NONE);
    String with =
        practice(state).sequence().stream()
            .flatMap(row -> row.flush().stream())
            .map(flush -> flush.with().name())
            .findFirst()
            .orElseThrow();
    TablesState next = state.next(changed("ingredients/" + with + ".yaml"), NONE);
    assertNotSame(practice(state), practice(next));
    practice(next).sequence().stream()
        .flatMap(row -> row.flush().stream())
        .filter(flush -> flush.with().name().equals(with))
        .forEach(flush -> assertSame(ingredient(next, with), flush.with()));
  }

  @Test
  void anIngredientMoreLeavesPricesLotsAndRecords() {
    TablesState state = TablesState.empty().next(EXAMPLE, NONE);
    SortedMap<String, SourceFile> more = new TreeMap<>(EXAMPLE);
    String path = "ingredients/another-bran.yaml";
    more.put(path, new SourceFile(path, text("ingredients/wheat-bran.yaml")));
    TablesState next = state.next(more, NONE);
    assertEquals(
        state.stocked().tables().ingredients().size() + 1,
        next.stocked().tables().ingredients().size());
    assertKept(state, next, List.of());
    assertSameThings(state.stocked().tables().lots(), next.stocked().tables().lots());
    assertSameThings(state.stocked().tables().batches(), next.stocked().tables().batches());
    assertSameThings(state.stocked().tables().prices(), next.stocked().tables().prices());
  }

  @Test
  void aChangedPriceLeavesThoseOfOtherIngredients() {
    TablesState state = TablesState.empty().next(EXAMPLE, NONE);
    String source =
        state.stocked().tables().prices().values().iterator().next().get(0).source().id();
    SortedMap<String, SourceFile> dearer = new TreeMap<>(EXAMPLE);
    String more = "prices/2027-01.yaml";
    dearer.put(
        more,
        new SourceFile(
            more, "from: 2027-01-01\nsource: " + source + "\nprices:\n  maize: 0.9 EUR/kg\n"));
    TablesState next = state.next(dearer, NONE);
    assertEquals(List.of(), next.stocked().findings());
    Map<String, List<Price>> before = state.stocked().tables().prices();
    Map<String, List<Price>> now = next.stocked().tables().prices();
    assertEquals(before.keySet(), now.keySet());
    now.forEach((name, prices) -> assertEquals(!name.equals("maize"), prices == before.get(name)));
  }

  @Test
  void aChangeOfWhatAllCountOnReadsAllAnew() {
    TablesState state = TablesState.empty().next(EXAMPLE, NONE);
    TablesState next = state.next(changed("groups.yaml"), NONE);
    Map<String, Ingredient> before = state.stocked().tables().ingredients();
    next.stocked()
        .tables()
        .ingredients()
        .forEach((name, one) -> assertNotSame(before.get(name), one, name));
    assertSame(state.stocked().tables().plant().orElseThrow(), plant(next));
  }

  @Test
  void findingsOfAKeptFileAreKept() {
    String path = "ingredients/wheat-bran.yaml";
    SortedMap<String, SourceFile> wrong = new TreeMap<>(EXAMPLE);
    wrong.put(path, new SourceFile(path, text(path).replace("form: ", "fom: ")));
    TablesState state = TablesState.empty().next(wrong, NONE);
    wrong.put(
        "ingredients/maize.yaml", changed("ingredients/maize.yaml").get("ingredients/maize.yaml"));
    TablesState next = state.next(wrong, NONE);
    assertTrue(!state.stocked().findings().isEmpty());
    assertEquals(state.stocked().findings().size(), next.stocked().findings().size());
    for (int i = 0; i < state.stocked().findings().size(); i++) {
      assertSame(state.stocked().findings().get(i), next.stocked().findings().get(i));
    }
  }

  @Test
  void anEmptyStateHasNothingAndSaysThat() {
    TablesRead stocked = TablesState.empty().stocked();
    assertEquals(
        List.of("data-no-moisture-nutrient", "data-no-settings"),
        stocked.findings().stream().map(finding -> finding.code().text()).toList());
    assertTrue(stocked.tables().ingredients().isEmpty());
  }

  private static void assertKept(TablesState state, TablesState next, List<String> changed) {
    Map<String, Ingredient> now = next.stocked().tables().ingredients();
    state
        .stocked()
        .tables()
        .ingredients()
        .forEach(
            (name, one) -> {
              if (changed.contains(name)) {
                assertNotSame(one, now.get(name), name);
              } else {
                assertSame(one, now.get(name), name);
              }
            });
    assertTrue(now.size() >= 40);
  }

  private static <T> void assertSameThings(Map<String, T> before, Map<String, T> now) {
    assertEquals(before.keySet(), now.keySet());
    assertTrue(!before.isEmpty());
    before.forEach((name, one) -> assertSame(one, now.get(name), name));
  }

  private static SortedMap<String, SourceFile> changed(String path) {
    SortedMap<String, SourceFile> changed = new TreeMap<>(EXAMPLE);
    changed.put(path, new SourceFile(path, "# of the next state\n" + text(path)));
    return changed;
  }

  private static String text(String path) {
    return Pantry.of(Example.whole()).text(path);
  }

  private static Practice practice(TablesState state) {
    return state.stocked().tables().practice();
  }

  private static Plant plant(TablesState state) {
    return state.stocked().tables().plant().orElseThrow();
  }

  private static Ingredient ingredient(TablesState state, String name) {
    Ingredient one = state.stocked().tables().ingredients().get(name);
    if (one == null) {
      throw new AssertionError(name);
    }
    return one;
  }
}
