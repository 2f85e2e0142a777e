package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Advice.Standing;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Answers that cost less and that a nutritionist would not take, over the example. */
class RejectedAnswersTest {
  private static final Path EXAMPLE = Example.whole();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
  private static final String PRICES = "prices/2026-11.yaml";

  private final Map<String, String> changed = new LinkedHashMap<>();

  /** The example with one place of a file changed. */
  private RejectedAnswersTest with(String path, String part, String by) throws IOException {
    String text =
        changed.containsKey(path) ? changed.get(path) : Files.readString(EXAMPLE.resolve(path));
    assertTrue(text.contains(part), part + " is not in " + path);
    changed.put(path, text.replace(part, by));
    return this;
  }

  private Shared shared() throws IOException {
    return Shared.of(ReadFolder.of(Texts.at(EXAMPLE).over(changed)), Days.on(DAY));
  }

  private Advice advice(String path, Wishes wishes) throws IOException {
    Shared shared = shared();
    return new Advising(Solver.standard(), new FeedComputer(shared.tables()), shared.findings())
        .of(Streamed.judged(shared, path).recipe().orElseThrow(), wishes);
  }

  private static LineMove line(Advice advice, String name) {
    return advice.lines().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  private static Wishes free(String... names) {
    return wishes(Set.of(names), List.of(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static Wishes trying(String... names) {
    return wishes(Set.of(), List.of(names), OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static Wishes wishes(
      Set<String> freed, List<String> tried, OptionalDouble move, OptionalDouble margin) {
    return new Wishes(
        freed, tried, Set.of(), move, 0, false, margin, false, false, Optional.empty(), false);
  }

  @Test
  @DisplayName("phosphorus of plants does not stand in for available phosphorus")
  void plantPhosphorus() throws IOException {
    Wishes salt = free("monocalcium-phosphate");
    Advice kept = advice("carp/KG-35.recipe", salt);
    double asked = line(kept, "monocalcium-phosphate").then();
    changed.clear();
    String profile = "limits/carp-grower.limits";
    changed.put(
        profile,
        Files.readString(EXAMPLE.resolve(profile))
            .replaceAll("(?m)^ +available-phosphorus .*\n", ""));
    Advice without = advice("carp/KG-35.recipe", salt);
    double total = line(without, "monocalcium-phosphate").then();
    assertTrue(asked > total + 0.1, asked + " with the limit, " + total + " without it");
  }

  @Test
  @DisplayName("feathers do not stand in for protein: what is digested of amino acids is asked for")
  void feathers() throws IOException {
    with(PRICES, "feather-meal: 0.62", "feather-meal: 0.20");
    // A cap would hold them too; here amino acids alone do.
    String feathers = "ingredients/feather-meal.yaml";
    changed.put(
        feathers,
        Files.readString(EXAMPLE.resolve(feathers)).replaceAll("max: \\d+ %", "max: 60 %"));
    Advice asked = advice("catfish/CG-36.recipe", trying("feather-meal"));
    double with = line(asked, "feather-meal").then();
    String profile = Files.readString(EXAMPLE.resolve("limits/catfish-grower.limits"));
    StringBuilder bare = new StringBuilder();
    for (String line : profile.split("(?<=\n)", -1)) {
      boolean amino =
          line.matches(
              "(?s) +(digestible-)?(lysine|methionine-cystine|threonine|arginine|tryptophan|"
                  + "histidine|isoleucine|leucine|valine|phenylalanine-tyrosine)[ :].*");
      bare.append(amino ? "" : line);
    }
    changed.put("limits/catfish-grower.limits", bare.toString());
    double without =
        line(advice("catfish/CG-36.recipe", trying("feather-meal")), "feather-meal").then();
    assertTrue(with < without - 1, with + " % where amino acids are asked, " + without + " % else");
  }

  @Test
  @DisplayName("what does not tell a contaminant with a maximum does not rise, whatever it costs")
  void untoldContaminant() throws IOException {
    with(PRICES, "insect-meal-52: 2.40", "insect-meal-52: 0.60");
    Advice advice = advice("catfish/CG-36I.recipe", Wishes.NONE);
    assertTrue(line(advice, "insect-meal-52").then() <= 10.0);
    assertTrue(
        advice.care().held().stream()
            .anyMatch(
                one ->
                    one.file().equals("ingredients/insect-meal-52.yaml")
                        && one.missing().contains("cadmium")),
        advice.care().held().toString());
  }

  @Test
  @DisplayName("n-3 that is kept on the mean alone is told, and a margin keeps it in most batches")
  void onTheMean() throws IOException {
    Advice bare = advice("trout/TG-44.recipe", free("fish-oil", "rapeseed-oil"));
    assertTrue(
        bare.care().onAverageOnly().stream().anyMatch(one -> one.startsWith("n-3-lc-pufa")),
        bare.care().onAverageOnly().toString());
    Advice wide =
        advice(
            "trout/TG-44.recipe",
            wishes(
                Set.of("fish-oil", "rapeseed-oil"),
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.of(0.8)));
    assertEquals(Standing.CHEAPER, wide.standing(), wide.why() + wide.conflict());
    assertTrue(line(wide, "fish-oil").then() > line(bare, "fish-oil").then());
    assertTrue(wide.care().together().orElseThrow() > bare.care().together().orElseThrow() + 0.1);
  }

  @Test
  @DisplayName("an ingredient over a maximum of its own is not thinned into the feed")
  void overItsOwnMaximum() throws IOException {
    Advice sound = advice("catfish/CF-32.recipe", Wishes.NONE);
    LineMove rises = line(sound, "rapeseed-meal");
    assertTrue(rises.then() > rises.now(), rises.toString());
    String file = "ingredients/rapeseed-meal.yaml";
    String text = Files.readString(EXAMPLE.resolve(file));
    String lead =
        text.lines().filter(one -> one.strip().startsWith("lead:")).findFirst().orElseThrow();
    with(file, lead, lead.replaceFirst("lead:.*", "lead: 40 mg/kg"));
    Advice over = advice("catfish/CF-32.recipe", Wishes.NONE);
    assertTrue(
        over.standing() != Standing.CHEAPER
            || line(over, "rapeseed-meal").then() <= line(over, "rapeseed-meal").now(),
        over.toString());
    assertTrue(
        over.care().held().stream().anyMatch(one -> one.file().equals(file))
            || over.standing() == Standing.UNMET,
        over.toString());
  }

  @Test
  @DisplayName("with a bound on moves the main protein does not swing from week to week")
  void noSwing() throws IOException {
    Advice free = advice("trout/TG-44.recipe", Wishes.NONE);
    Advice bounded =
        advice(
            "trout/TG-44.recipe",
            wishes(Set.of(), List.of(), OptionalDouble.of(3), OptionalDouble.empty()));
    assertTrue(Math.abs(line(free, "fish-meal-65").moved()) > 3);
    double up = 0;
    for (LineMove one : bounded.lines()) {
      assertTrue(Math.abs(one.moved()) <= 3 + 1e-9, one.toString());
      up += Math.max(0, one.moved());
    }
    assertTrue(up <= 3 + 1e-9, "" + up);
    assertEquals(Standing.CHEAPER, bounded.standing());
    assertTrue(bounded.costs().orElseThrow().then() > free.costs().orElseThrow().then());
  }

  @Test
  @DisplayName(
      "plants that do not tell taurine do not push fish meal out of a feed that needs it told")
  void taurine() throws IOException {
    String species = "species/rainbow-trout.yaml";
    changed.put(
        species,
        Files.readString(EXAMPLE.resolve(species)).stripTrailing() + "\nneeds-told: [taurine]\n");
    String nutrients = "nutrients/3-amino-acids.yaml";
    changed.put(
        nutrients,
        Files.readString(EXAMPLE.resolve(nutrients)).stripTrailing()
            + "\ntaurine:\n  title: Taurine\n  unit: \"%\"\n  stability: stable\n");
    String fish = "ingredients/fish-meal-65.yaml";
    with(fish, "    lysine:", "    taurine: 0.6 %\n    lysine:");
    Advice advice = advice("trout/TG-44.recipe", Wishes.NONE);
    LineMove soya = line(advice, "soybean-meal-48");
    assertTrue(soya.then() <= soya.now(), soya.toString());
    assertTrue(
        advice.care().held().stream().anyMatch(one -> one.missing().contains("taurine")),
        advice.care().held().toString());
    assertFalse(
        advice.care().held().stream().anyMatch(one -> one.file().equals(fish)),
        "fish meal tells it");
  }

  @Test
  @DisplayName("no feed is made from a price that is old, doubted or not there")
  void prices() throws IOException {
    with(PRICES, "  rapeseed-meal: 0.31", "  rapeseed-meal: 0.031");
    Advice doubted = advice("catfish/CF-32.recipe", Wishes.NONE);
    assertEquals(Standing.NOT_ASKED, doubted.standing());
    assertTrue(doubted.why().startsWith("check doubts a price, rapeseed-meal"), doubted.why());
    changed.clear();
    with(PRICES, "from: 2026-11-01", "from: 2026-09-01");
    Advice old = advice("catfish/CF-32.recipe", Wishes.NONE);
    assertEquals(Standing.NOT_ASKED, old.standing());
    assertTrue(old.why().contains("88 days old"), old.why());
    changed.clear();
    with(PRICES, "  feather-meal: ", "  # feather-meal: ");
    with("prices/2026-08.yaml", "  feather-meal: ", "  # feather-meal: ");
    Advice none = advice("catfish/CF-32.recipe", trying("feather-meal"));
    assertEquals(Standing.NOT_ASKED, none.standing());
    assertTrue(none.why().startsWith("feather-meal has no price on 2026-11-28"), none.why());
  }

  @Test
  @DisplayName("label, bans and every limit hold in each answer of the example")
  void allHold() throws IOException {
    Shared shared = shared();
    for (String path : shared.texts().ending(".recipe")) {
      Advice advice = advice(path, Wishes.NONE);
      assertTrue(advice.costs().orElseThrow().then() <= advice.costs().orElseThrow().now(), path);
      if (advice.change().isSome()) {
        changed.put(path, advice.change().after());
      }
    }
    Shared after = shared();
    for (String path : after.texts().ending(".recipe")) {
      assertTrue(
          Streamed.judged(after, path).recipe().orElseThrow().limits().stream()
              .allMatch(one -> one.state().isKept()),
          path);
    }
  }
}
