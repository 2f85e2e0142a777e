package dev.pellucid.engine.site;

import static dev.pellucid.engine.site.Tables.cell;
import static dev.pellucid.engine.site.Tables.figure;
import static dev.pellucid.engine.site.Tables.figures;
import static dev.pellucid.engine.site.Tables.row;
import static dev.pellucid.engine.site.Tables.table;
import static dev.pellucid.engine.site.Tables.words;
import static j2html.TagCreator.a;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.text;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.site.ProfileView.InFeed;
import j2html.tags.DomContent;
import j2html.tags.specialized.TrTag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The page of one profile: its limits, and how near each feed that it holds is to them. */
final class ProfilePage {
  private ProfilePage() {}

  static List<DomContent> of(ProfileView one) {
    List<DomContent> out = new ArrayList<>();
    out.add(p("Kind: " + one.kind() + (one.whom().isEmpty() ? "" : "; for " + one.whom()) + "."));
    if (one.held().isEmpty()) {
      out.add(p("It holds no feed that could be computed."));
    }
    out.add(
        p(
            "Where a feed has a tighter limit of its own or of another profile, that one is judged"
                + " and it is not given here."));
    Map<String, List<InFeed>> byLimit =
        one.held().stream()
            .collect(
                Collectors.groupingBy(ProfilePage::asked, LinkedHashMap::new, Collectors.toList()));
    out.add(h2("Limits"));
    out.add(
        table(
            "Each limit and the feeds that it holds, the nearest first",
            List.of(
                words("Limit"), words("Feed"), figures("Judged"), figures("Room %"), words("Kept")),
            byLimit.values().stream().flatMap(ProfilePage::limit)));
    return out;
  }

  private static String asked(InFeed feed) {
    return feed.limit().demand().line();
  }

  private static Stream<TrTag> limit(List<InFeed> feeds) {
    return feeds.stream()
        .sorted(
            Comparator.comparingDouble((InFeed feed) -> feed.limit().room())
                .thenComparing(InFeed::code))
        .map(ProfilePage::feed);
  }

  private static TrTag feed(InFeed feed) {
    Held limit = feed.limit();
    return row(
        asked(feed),
        cell(
            a(Site.named(feed.code(), feed.title())).withHref("../feeds/" + feed.code() + ".html")),
        figure(
            limit.told()
                ? limit.certainty().sign()
                    + Figures.plain(limit.shown())
                    + " "
                    + limit.unit().symbol()
                : ""),
        figure(limit.told() ? Figures.fixed(100 * limit.room(), 1) : ""),
        cell(kept(limit)));
  }

  private static DomContent kept(Held limit) {
    if (!limit.told()) {
      return FeedPage.bad("CANNOT BE JUDGED");
    }
    if (!limit.keeps()) {
      return FeedPage.bad("BROKEN");
    }
    return text(
        limit.demand().isWaived()
            ? "under a waiver of " + limit.demand().askedNow()
            : FeedPage.yes(limit));
  }
}
