package dev.pellucid.engine.site;

import static dev.pellucid.engine.site.Tables.cell;
import static dev.pellucid.engine.site.Tables.figure;
import static dev.pellucid.engine.site.Tables.figures;
import static dev.pellucid.engine.site.Tables.row;
import static dev.pellucid.engine.site.Tables.table;
import static dev.pellucid.engine.site.Tables.words;
import static j2html.TagCreator.a;
import static j2html.TagCreator.div;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.pre;
import static j2html.TagCreator.script;
import static j2html.TagCreator.select;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;

import dev.pellucid.engine.account.Account.Inclusion;
import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.site.FeedView.FeedStatus;
import dev.pellucid.engine.trend.MeasuredBatch;
import dev.pellucid.measure.Unit;
import j2html.tags.DomContent;
import j2html.tags.specialized.TrTag;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The first page: every feed with what matters most of it, every ingredient and profile. */
final class IndexPage {
  private static final String PROTEIN = "crude-protein";

  private IndexPage() {}

  /**
   * The page.
   *
   * @param elsewhere findings that are about no feed, as they are printed
   */
  static List<DomContent> of(
      List<Entry> feeds,
      List<MadeEntry> made,
      List<IngredientView> ingredients,
      List<ProfileView> profiles,
      String tally,
      String currency,
      List<String> elsewhere) {
    List<DomContent> out = new ArrayList<>();
    out.add(p(tally + "."));
    out.add(filters(feeds));
    out.add(
        table(
            "Feeds",
            List.of(
                words("Feed"),
                words("For"),
                words("Status"),
                words("Limits"),
                figures("Protein %"),
                figures(currency + "/kg"),
                words("Nearest limit")),
            feeds.stream().map(IndexPage::feed)));
    if (!made.isEmpty()) {
      out.add(h2("Batches"));
      out.add(
          table(
              "Feeds of which batches were made, and which of their figures drift",
              List.of(words("Feed"), figures("Batches"), words("Last"), words("Drifts")),
              made.stream().map(IndexPage::made)));
    }
    if (!elsewhere.isEmpty()) {
      out.add(h2("Findings about other files"));
      elsewhere.forEach(finding -> out.add(pre(finding)));
    }
    out.add(h2("Ingredients"));
    out.add(
        table(
            "Ingredients and in how many feeds they are",
            List.of(words("Ingredient"), figures("Feeds"), figures("Price " + currency + "/kg")),
            ingredients.stream().map(IndexPage::ingredient)));
    out.add(h2("Profiles of limits"));
    out.add(
        table(
            "Profiles and how many feeds they hold",
            List.of(words("Profile"), figures("Feeds"), figures("Broken limits")),
            profiles.stream().map(IndexPage::profile)));
    out.add(script().withSrc(Site.SCRIPT));
    return out;
  }

  /**
   * What the index keeps of a feed.
   *
   * @param found words by which it is found, in small letters
   */
  record Entry(
      String code,
      String title,
      String species,
      String whom,
      String status,
      FeedStatus standing,
      String protein,
      String cost,
      String nearest,
      String found) {

    static Entry of(FeedView feed) {
      Optional<FeedView.Figured> figures = feed.figures();
      String lines =
          figures.stream()
              .flatMap(one -> one.taken().account().inclusions().stream())
              .map(Inclusion::ingredient)
              .collect(Collectors.joining(" "));
      return new Entry(
          feed.code(),
          feed.title(),
          feed.species(),
          feed.whom(),
          feed.status(),
          feed.standing(),
          figures
              .flatMap(one -> one.taken().account().told(PROTEIN))
              .map(amount -> Figures.fixed(Unit.PERCENT.fromBase(amount.base()), 1))
              .orElse(""),
          figures.map(one -> Figures.fixed(one.taken().account().costPerKg(), 4)).orElse(""),
          figures.flatMap(Entry::nearest).orElse(""),
          lower(String.join(" ", feed.code(), feed.title(), feed.whom(), feed.status(), lines)));
    }

    /** Nothing of what must not be there is no near limit, nor is one that cannot be judged. */
    private static Optional<String> nearest(FeedView.Figured figures) {
      return figures.taken().account().limits().values().stream()
          .filter(limit -> limit.told() && (!limit.keeps() || limit.shown() != 0))
          .min(Comparator.comparingDouble(Held::room))
          .map(
              limit ->
                  limit.demand().lineNow()
                      + ": "
                      + Figures.fixed(Math.abs(100 * limit.room()), 1)
                      + (limit.keeps() ? " % of room" : " % beyond"));
    }
  }

  /**
   * What the index keeps of the batches of a feed.
   *
   * @param drifts figures that drift, in words; empty where none does
   */
  record MadeEntry(String code, String title, int batches, String last, String drifts) {
    static MadeEntry of(MadeView made, LocalDate today) {
      List<MeasuredBatch> batches = made.history().batches();
      return new MadeEntry(
          made.code(),
          made.title(),
          batches.size(),
          batches.get(batches.size() - 1).day().toString(),
          String.join(", ", made.drifting(today)));
    }
  }

  static String lower(String words) {
    return words.toLowerCase(Locale.ROOT);
  }

  private static DomContent filters(List<Entry> feeds) {
    Stream<String> species =
        feeds.stream().map(Entry::species).filter(one -> !one.isEmpty()).distinct().sorted();
    Stream<String> standings =
        feeds.stream().map(Entry::standing).distinct().sorted().map(FeedStatus::words);
    return div(form(
                div(
                    label("Search feeds, ingredients and profiles").withFor("search"),
                    input().withType("search").withId("search").attr("autocomplete", "off")),
                div(label("Species").withFor("species"), choice("species", "all", species)),
                div(label("Limits").withFor("standing"), choice("standing", "all", standings)))
            .withId("filters")
            .attr("hidden"))
        .with(p().withId("told").attr("role", "status"));
  }

  private static DomContent choice(String id, String all, Stream<String> options) {
    return select(option(all).withValue(""))
        .with(options.map(one -> option(one).withValue(one)))
        .withId(id);
  }

  private static TrTag feed(Entry feed) {
    return row(
            a(Site.named(feed.code(), feed.title())).withHref("feeds/" + feed.code() + ".html"),
            cell(feed.whom()),
            cell(feed.status()),
            cell(FeedPage.standing(feed.standing())),
            figure(feed.protein()),
            figure(feed.cost()),
            cell(feed.nearest()))
        .attr("data-kind", "feeds")
        .attr("data-words", feed.found())
        .attr("data-species", feed.species())
        .attr("data-standing", feed.standing().words());
  }

  private static TrTag made(MadeEntry made) {
    return row(
        a(Site.named(made.code(), made.title())).withHref("batches/" + made.code() + ".html"),
        figure(String.valueOf(made.batches())),
        cell(made.last()),
        cell(made.drifts().isEmpty() ? text("none") : FeedPage.bad(made.drifts())));
  }

  private static TrTag ingredient(IngredientView one) {
    return row(
            a(one.title()).withHref("ingredients/" + one.name() + ".html"),
            figure(String.valueOf(one.uses().size())),
            figure(one.price()))
        .attr("data-kind", "ingredients")
        .attr("data-words", lower(one.name() + " " + one.title()));
  }

  private static TrTag profile(ProfileView one) {
    long broken = one.held().stream().filter(held -> held.limit().broken()).count();
    return row(
            a(one.title()).withHref("limits/" + one.name() + ".html"),
            figure(String.valueOf(one.feeds())),
            td(broken == 0 ? text("none") : FeedPage.bad(String.valueOf(broken))))
        .attr("data-kind", "profiles")
        .attr("data-words", lower(one.name() + " " + one.title()));
  }
}
