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
import static j2html.TagCreator.ul;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.site.IngredientView.InFeed;
import j2html.TagCreator;
import j2html.tags.DomContent;
import j2html.tags.specialized.TrTag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The page of one ingredient: where it is used, how much, and what its price does. */
final class IngredientPage {
  private static final double DEARER = 0.1;

  private IngredientPage() {}

  static List<DomContent> of(IngredientView one, String currency) {
    List<DomContent> out = new ArrayList<>();
    out.add(
        p(
            one.price().isEmpty()
                ? "It has no price."
                : "A kg costs " + one.price() + " " + currency + ", " + one.priceSource() + "."));
    out.add(p("In recipes it is called " + one.name() + ". Kind: " + one.kind() + "."));
    if (!one.warnings().isEmpty()) {
      out.add(h2("What to mind"));
      out.add(ul().with(one.warnings().stream().map(TagCreator::li)));
    }
    out.add(h2("Where it is used"));
    if (one.uses().isEmpty()) {
      out.add(p("In no feed that could be computed."));
    } else {
      out.add(uses(one.uses(), currency));
    }
    out.add(h2("What it holds"));
    out.add(
        table(
            "Contents as they are written, as fed",
            List.of(words("Nutrient"), figures("Content"), words("Source")),
            one.contents().stream()
                .map(told -> row(told.nutrient(), figure(told.asWritten()), cell(told.source())))));
    return out;
  }

  private static DomContent uses(List<InFeed> uses, String currency) {
    return table(
        "Its share of each feed with what premixes bring of it, the largest first, and what a feed"
            + " would cost more if its price rose by a tenth",
        List.of(
            words("Feed"),
            figures("% of recipe"),
            words("Also through"),
            figures(currency + "/kg feed"),
            figures("Dearer by " + currency + "/kg"),
            figures("that is %")),
        uses.stream()
            .sorted(
                Comparator.comparingDouble((InFeed one) -> one.use().percent())
                    .reversed()
                    .thenComparing(InFeed::code))
            .map(IngredientPage::use));
  }

  private static TrTag use(InFeed one) {
    String percent = Figures.plain(one.use().percent());
    double dearer = one.use().money() * DEARER;
    return row(
        a(Site.named(one.code(), one.title())).withHref("../feeds/" + one.code() + ".html"),
        figure(percent),
        cell(String.join(", ", one.use().through())),
        figure(Figures.visible(one.use().money(), 4)),
        figure(Figures.visible(dearer, 4)),
        figure(one.costPerKg() > 0 ? Figures.visible(100 * dearer / one.costPerKg(), 2) : ""));
  }
}
