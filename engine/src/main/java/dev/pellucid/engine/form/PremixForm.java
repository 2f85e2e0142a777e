package dev.pellucid.engine.form;

import dev.pellucid.engine.data.Additive;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.ShareLine;
import dev.pellucid.syntax.SupplyLine;
import java.util.List;
import java.util.Optional;

/**
 * A new premix: with the lines of one that is there, or, where none is, with a salt for each trace
 * element. What it is to bring, and at which dose, is left to a person.
 */
public final class PremixForm {
  private static final String SALTS = "trace-salts";
  private static final String CARRIERS = "milling-offals";

  private final FeedText text = new FeedText();

  private void head(String code) {
    text.opening("premix", code, "Premix " + code).line("dose", FeedText.wanted("g/kg"));
  }

  /** With the lines of another premix. */
  public String like(String code, PremixFile model) {
    text.remark("Lines are those of " + model.source().stem() + ", without its figures.");
    head(code);
    List<SupplyLine> supply = FeedText.lines(model.supply());
    if (!supply.isEmpty()) {
      text.section("supply");
      supply.forEach(line -> supply(line.nutrient().text(), unit(line), line.from().text()));
    }
    shares("mix", FeedText.lines(model.mix()));
    shares("carrier", FeedText.lines(model.carrier()));
    return text.process(model.process()).toString();
  }

  private static String unit(SupplyLine line) {
    return FeedText.unit(line.amount());
  }

  private void supply(String nutrient, String unit, String from) {
    text.line(nutrient, FeedText.wanted(unit), "from", from);
  }

  private void shares(String section, List<ShareLine> lines) {
    if (!lines.isEmpty()) {
      text.section(section).shares(lines);
    }
  }

  /** Where there is no other to go by. */
  public String bare(String code, FeedTables tables) {
    text.remark("A salt for each trace element; take out what the feeds do not need.");
    head(code);
    text.section("supply");
    for (Ingredient salt : tables.ingredients().values()) {
      Optional<Nutrient> brought =
          salt.groups().contains(SALTS)
              ? salt.additive().flatMap(Additive::nutrient).flatMap(tables.nutrients()::named)
              : Optional.empty();
      brought.ifPresent(one -> supply(one.name(), one.unit().symbol(), salt.name()));
    }
    text.section("carrier")
        .line(
            tables.ingredients().values().stream()
                .filter(one -> one.groups().contains(CARRIERS))
                .map(Ingredient::name)
                .findFirst()
                .orElse("wheat-middlings"),
            "rest");
    return text.section("process")
        .line("blend", "time", FeedText.wanted("min"))
        .line("pack", "bag", FeedText.wanted("kg"))
        .line("store", "shelf-life", FeedText.wanted("d"))
        .line("store", "temperature", FeedText.wanted("°C"))
        .toString();
  }
}
