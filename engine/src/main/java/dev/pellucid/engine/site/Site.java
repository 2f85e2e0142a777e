package dev.pellucid.engine.site;

import dev.pellucid.engine.account.Account;
import dev.pellucid.engine.account.Account.Inclusion;
import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.data.Source;
import dev.pellucid.engine.html.Inline;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.site.IngredientView.ToldContent;
import dev.pellucid.syntax.Range;
import j2html.tags.DomContent;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Makes the pages: that of a feed when it is added, all others when it is closed. What is kept of a
 * feed until then is its row in the index, and how it stands to ingredients and profiles.
 */
public final class Site {
  /** The style sheet of all pages, beside the index. */
  static final String STYLE = "site.css";

  /** The script of the index, beside it. */
  static final String SCRIPT = "index.js";

  private final FeedTables tables;
  private final LocalDate day;
  private final Writer writer;
  private final Page page;
  private final Map<String, List<IngredientView.InFeed>> uses = new TreeMap<>();
  private final Map<String, List<ProfileView.InFeed>> held = new TreeMap<>();

  /** Where files go. */
  public interface Writer {
    /** Takes a file by its path below the index, from any thread. */
    void write(String path, String text) throws IOException;
  }

  /** What is kept of a feed. */
  public record Kept(
      IndexPage.Entry entry,
      List<IngredientView.InFeed> uses,
      List<ProfileView.InFeed> held,
      Optional<IndexPage.MadeEntry> made) {
    public Kept {
      uses = List.copyOf(uses);
      held = List.copyOf(held);
    }

    private static Kept of(FeedView feed, Optional<IndexPage.MadeEntry> made) {
      List<IngredientView.InFeed> uses = new ArrayList<>();
      List<ProfileView.InFeed> held = new ArrayList<>();
      if (feed.figures().isPresent()) {
        Account account = feed.figures().get().taken().account();
        for (Inclusion use : account.inclusions()) {
          uses.add(new IngredientView.InFeed(feed.code(), feed.title(), use, account.costPerKg()));
        }
        for (Held limit : account.limits().values()) {
          held.add(new ProfileView.InFeed(feed.code(), feed.title(), limit));
        }
      }
      return new Kept(IndexPage.Entry.of(feed), uses, held, made);
    }
  }

  private Site(FeedTables tables, LocalDate day, Writer writer) {
    this.tables = tables;
    this.day = day;
    this.writer = writer;
    this.page = new Page(tables.settings().name(), day.toString());
  }

  /** Writes what all pages share. */
  public static Site open(FeedTables tables, LocalDate day, Writer writer) throws IOException {
    writer.write(STYLE, Inline.text("site/" + STYLE));
    writer.write(SCRIPT, Inline.text("site/" + SCRIPT));
    return new Site(tables, day, writer);
  }

  /** Writes the page of a feed, and that of its batches where some were made; in any thread. */
  public Kept add(FeedView feed, Optional<MadeView> made) throws IOException {
    put(
        "feeds/" + feed.code(),
        named(feed.code(), feed.title()),
        "../",
        FeedPage.of(feed, currency(), tables.ingredients().keySet(), made.isPresent()));
    if (made.isPresent()) {
      put(
          "batches/" + feed.code(),
          "Batches of " + named(feed.code(), feed.title()),
          "../",
          BatchesPage.of(made.get(), currency()));
    }
    return Kept.of(feed, made.map(one -> IndexPage.MadeEntry.of(one, day)));
  }

  /**
   * Writes all other pages.
   *
   * @param feeds what was kept of each
   * @param elsewhere findings that are about no feed, as they are printed
   * @return how many pages there are
   */
  public int close(List<Kept> feeds, List<Profile> profiles, String tally, List<String> elsewhere)
      throws IOException {
    for (Kept feed : feeds) {
      for (IngredientView.InFeed use : feed.uses()) {
        uses.computeIfAbsent(use.use().ingredient(), none -> new ArrayList<>()).add(use);
      }
      for (ProfileView.InFeed limit : feed.held()) {
        held.computeIfAbsent(limit.limit().demand().profile(), none -> new ArrayList<>())
            .add(limit);
      }
    }
    List<IngredientView> ingredients =
        tables.ingredients().values().stream().map(this::ingredient).toList();
    for (IngredientView one : ingredients) {
      put("ingredients/" + one.name(), one.title(), "../", IngredientPage.of(one, currency()));
    }
    List<ProfileView> views =
        profiles.stream().sorted(Comparator.comparing(Profile::name)).map(this::profile).toList();
    for (ProfileView one : views) {
      put("limits/" + one.name(), one.title(), "../", ProfilePage.of(one));
    }
    put(
        "index",
        "Feeds of " + tables.settings().name(),
        "",
        IndexPage.of(
            feeds.stream()
                .map(Kept::entry)
                .sorted(Comparator.comparing(IndexPage.Entry::code))
                .toList(),
            feeds.stream()
                .flatMap(one -> one.made().stream())
                .sorted(Comparator.comparing(IndexPage.MadeEntry::code))
                .toList(),
            ingredients,
            views,
            tally,
            currency(),
            elsewhere));
    int made = (int) feeds.stream().filter(one -> one.made().isPresent()).count();
    return feeds.size() + made + ingredients.size() + views.size() + 1;
  }

  private void put(String path, String name, String up, List<? extends DomContent> content)
      throws IOException {
    writer.write(path + ".html", page.of(name, up, content));
  }

  private String currency() {
    return tables.settings().currency();
  }

  /** {@code CG-36 African catfish grower}. */
  static String named(String code, String title) {
    return title.isEmpty() || title.equals(code) ? code : code + " " + title;
  }

  private IngredientView ingredient(Ingredient one) {
    Optional<Price> price = tables.price(one.name(), day);
    return new IngredientView(
        one.name(),
        one.title(),
        kind(one),
        warnings(one),
        price.map(told -> Figures.plain(told.perKg())).orElse(""),
        price.map(told -> "from " + told.from() + " on, " + source(told.source())).orElse(""),
        contents(one),
        uses.getOrDefault(one.name(), List.of()));
  }

  private static String kind(Ingredient one) {
    String form = one.form().name().toLowerCase(Locale.ROOT);
    return one.groups().isEmpty()
        ? form
        : form + ", of " + String.join(", ", new TreeSet<>(one.groups()));
  }

  private static List<String> warnings(Ingredient one) {
    List<String> warnings = new ArrayList<>(one.cautions());
    for (Ingredient.Cap cap : one.caps()) {
      String cast = cap.most().isPresent() ? "At most " + cap.asWritten() : "No cap";
      String most = cast + " for " + cap.species() + ": " + cap.because();
      warnings.add(most + ", " + source(cap.source()));
    }
    return warnings;
  }

  /** In the order of the nutrients; of several blocks each, the one for a species first. */
  private List<ToldContent> contents(Ingredient one) {
    List<ToldContent> told = new ArrayList<>();
    for (Nutrient nutrient : tables.nutrients().inOrder()) {
      one.contents().stream().flatMap(block -> told(nutrient, block).stream()).forEach(told::add);
    }
    return told;
  }

  private static Optional<ToldContent> told(Nutrient nutrient, Ingredient.ContentBlock block) {
    String whom = block.species().map(one -> ", for " + one).orElse("");
    return Optional.ofNullable(block.byNutrient().get(nutrient.name()))
        .map(
            one -> new ToldContent(nutrient.title() + whom, one.asWritten(), source(one.source())));
  }

  private static String source(Source source) {
    return source.id() + " (" + source.reliability().inWords() + ")";
  }

  private ProfileView profile(Profile one) {
    List<String> whom = new ArrayList<>(one.species());
    one.fish().map(Range::asWritten).ifPresent(whom::add);
    one.jurisdiction().ifPresent(whom::add);
    return new ProfileView(
        one.name(),
        one.title(),
        one.kind().word(),
        String.join(", ", whom),
        held.getOrDefault(one.name(), List.of()));
  }
}
