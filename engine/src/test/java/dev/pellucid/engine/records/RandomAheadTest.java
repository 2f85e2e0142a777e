package dev.pellucid.engine.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Pantry;
import dev.pellucid.engine.data.TablesRead;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.engine.records.MadeUpStore.Batch;
import dev.pellucid.engine.records.MadeUpStore.Named;
import dev.pellucid.engine.records.MaterialRequirements.Ahead;
import dev.pellucid.engine.records.MaterialRequirements.Planned;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The store ahead of made-up stores against a plain search over what was made up, to the gram. */
class RandomAheadTest {
  private static final int STORES = 200;
  private static final Span NOWHERE = new SourceFile("x", "").beginning();
  private static final LocalDate TODAY = MadeUpStore.date(MadeUpStore.TODAY);

  private int picks;
  private int mixed;
  private int lacks;
  private int made;
  private int late;
  private int spoiling;

  @Test
  void theWalkFindsWhatAPlainSearchFinds() {
    for (int seed = 0; seed < STORES; seed++) {
      look(new MadeUpStore(seed), "seed " + seed);
    }
    // No part of this passes on nothing.
    assertTrue(picks > 500 && mixed > 30 && lacks > 300, picks + " " + mixed + " " + lacks);
    assertTrue(made > 100 && late > 5 && spoiling > 200, made + " " + late + " " + spoiling);
  }

  private void look(MadeUpStore store, String seed) {
    PlainStore plain = new PlainStore(store);
    FeedTables tables = tables(store);
    Map<String, ResolvedPremix> premixes = premixes(store, tables);
    List<Planned> planned = new ArrayList<>();
    List<Use> uses = new ArrayList<>();
    for (Batch batch : store.batches) {
      BatchRecord record = Optional.ofNullable(tables.batches().get(batch.number())).orElseThrow();
      uses.addAll(uses(batch));
      if (!batch.made()) {
        planned.add(Planned.of(record, order(store, batch, tables, premixes)));
      }
    }
    Ahead ahead =
        MaterialRequirements.of(planned, tables, premixes, new Stock(tables, uses), TODAY);
    assertEquals(plain.taken, taken(ahead), seed);
    assertEquals(goods(plain), goods(ahead, store, tables), seed);
    assertEquals(premixes(plain), premixes(ahead.list()), seed);
    assertEquals(left(plain, store), left(ahead, tables), seed);
    Map<String, Long> spoils = new TreeMap<>();
    ahead.list().spoiling().forEach(lot -> spoils.put(lot.lot(), grams(lot.kg())));
    spoils.values().removeIf(grams -> grams == 0);
    Map<String, Long> plainly = plain.spoiling();
    plainly.values().removeIf(grams -> grams == 0);
    assertEquals(plainly, spoils, seed);
    spoiling += spoils.size();
  }

  private static FeedTables tables(MadeUpStore store) {
    Pantry pantry = Pantry.full().with("prices/2026-12.yaml", store.orderingText());
    if (!store.lots.isEmpty()) {
      pantry = pantry.with("lots/all.yaml", store.lotsText());
    }
    for (Batch batch : store.batches) {
      pantry = pantry.with("batches/" + batch.number() + ".yaml", store.text(batch));
    }
    TablesRead read = pantry.stocked();
    assertEquals("", FindingText.of(read.findings()));
    return read.tables();
  }

  private static Map<String, ResolvedPremix> premixes(MadeUpStore store, FeedTables tables) {
    Map<String, ResolvedPremix> premixes = new TreeMap<>();
    for (String code : List.of("P-0", "P-1")) {
      List<ResolvedPremix.Part> parts = new ArrayList<>();
      store
          .parts
          .getOrDefault(code, Map.of())
          .forEach(
              (part, percent) -> {
                Share share = new Share(BigDecimal.valueOf(percent));
                Material material = material(part, tables, premixes);
                parts.add(new ResolvedPremix.Part(material, share, share, Share.ZERO, NOWHERE));
              });
      premixes.put(
          code,
          new ResolvedPremix(
              code,
              code,
              Optional.of(new Share(BigDecimal.valueOf(PlainStore.DOSE * 100))),
              parts,
              List.of(),
              Optional.empty(),
              new Passes(List.of()),
              Optional.empty(),
              NOWHERE));
    }
    return premixes;
  }

  private static Material material(
      String name, FeedTables tables, Map<String, ResolvedPremix> premixes) {
    ResolvedPremix premix = premixes.get(name);
    if (premix != null) {
      return new Material.Premixed(premix);
    }
    Ingredient one = Optional.ofNullable(tables.ingredients().get(name)).orElseThrow();
    return new Material.Single(one, tables.price(name, TODAY));
  }

  private static BatchTarget order(
      MadeUpStore store, Batch batch, FeedTables tables, Map<String, ResolvedPremix> premixes) {
    List<TargetWeight> asks = new ArrayList<>();
    store
        .parts
        .getOrDefault(batch.code(), Map.of())
        .forEach(
            (part, percent) ->
                asks.add(
                    new TargetWeight(
                        asks.size(),
                        Place.MIX,
                        material(part, tables, premixes),
                        batch.kg() * percent / 100,
                        1,
                        false,
                        NOWHERE,
                        Optional.empty())));
    return new BatchTarget(
        batch.code(),
        batch.kg(),
        asks,
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.of(PlainStore.DOSE));
  }

  private static List<Use> uses(Batch batch) {
    List<Use> uses = new ArrayList<>();
    for (Named one : batch.named()) {
      if (!one.lot().isEmpty() || !one.bin().isEmpty()) {
        LocalDate day = MadeUpStore.date(batch.day());
        String bin = one.lot().isEmpty() ? one.bin() : "";
        uses.add(
            new Use(one.lot(), bin, batch.number(), day, one.kg(), 0.5, batch.made(), NOWHERE));
      }
    }
    return uses;
  }

  private Map<String, String> taken(Ahead ahead) {
    Map<String, String> taken = new TreeMap<>();
    ahead
        .taken()
        .forEach(
            (number, lines) ->
                lines.forEach(
                    (line, choice) -> {
                      List<String> words = new ArrayList<>();
                      choice
                          .picks()
                          .forEach(pick -> words.add(pick.lots() + " " + grams(pick.kg())));
                      picks += words.size();
                      mixed +=
                          (int) choice.picks().stream().filter(it -> it.lots().size() > 1).count();
                      taken.put(number + " " + line, words + " lacks " + grams(choice.shortfall()));
                    }));
    return taken;
  }

  private static long grams(double kg) {
    return PlainStore.grams(kg);
  }

  private static Map<String, String> goods(PlainStore plain) {
    Map<String, String> goods = new TreeMap<>();
    plain.goods.forEach(
        (meal, told) ->
            goods.put(
                meal,
                grams(told[0])
                    + " "
                    + grams(told[1])
                    + (told[1] > 0 ? " " + MadeUpStore.date((int) told[2]) : "")));
    return goods;
  }

  private Map<String, String> goods(Ahead ahead, MadeUpStore store, FeedTables tables) {
    Map<String, String> titles = new TreeMap<>();
    MadeUpStore.MEALS.forEach(
        meal ->
            titles.put(
                Optional.ofNullable(tables.ingredients().get(meal)).orElseThrow().title(), meal));
    Map<String, String> goods = new TreeMap<>();
    for (PurchaseList.Good good : ahead.list().goods()) {
      boolean lacking = good.lacking() > 0;
      lacks += lacking ? 1 : 0;
      String meal = titles.getOrDefault(good.title(), "");
      goods.put(
          meal,
          grams(good.needed()) + " " + grams(good.lacking()) + (lacking ? " " + good.from() : ""));
      int pack = store.packs.getOrDefault(meal, 0);
      assertEquals(
          (grams(good.lacking()) + pack * 1000L - 1) / (pack * 1000L),
          good.packs().orElseThrow(),
          good::toString);
      assertEquals(lacking, good.orderBy().isPresent());
      good.orderBy().ifPresent(day -> assertEquals(good.from(), day.plusDays(5)));
    }
    return goods;
  }

  private static Map<String, String> premixes(PlainStore plain) {
    Map<String, String> premixes = new TreeMap<>();
    plain.toMake.forEach(
        (code, told) -> {
          if (told[1] > 0) {
            premixes.put(code, grams(told[1]) + " " + MadeUpStore.date((int) told[2]));
          }
        });
    plain.late.forEach(
        (number, told) ->
            premixes.put(number, grams(told[0]) + " " + MadeUpStore.date((int) told[1])));
    return premixes;
  }

  private Map<String, String> premixes(PurchaseList list) {
    Map<String, String> premixes = new TreeMap<>();
    for (PurchaseList.ToMake one : list.premixes()) {
      made += one.planned().isPresent() ? 0 : 1;
      late += one.planned().isPresent() ? 1 : 0;
      premixes.put(one.planned().orElse(one.code()), grams(one.kg()) + " " + one.from());
    }
    return premixes;
  }

  private static Map<String, Long> left(PlainStore plain, MadeUpStore store) {
    Map<String, Long> left = new TreeMap<>();
    store.lots.forEach(
        lot ->
            left.put(lot.number(), grams(Math.max(0, plain.left.getOrDefault(lot.number(), 0.0)))));
    return left;
  }

  private static Map<String, Long> left(Ahead ahead, FeedTables tables) {
    Map<String, Long> left = new TreeMap<>();
    tables.lots().values().forEach(lot -> left.put(lot.number(), grams(ahead.left().left(lot))));
    return left;
  }
}
