package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FeedPlan.Available;
import dev.pellucid.engine.data.FeedPlan.Planned;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Extent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** One file of {@code plans/}. */
final class PlansReader {
  private static final Pattern CODE = Pattern.compile("[A-Z][A-Z0-9]*(-[A-Z0-9]+)*");

  private final Known ingredients;
  private final Remarks remarks;
  private final FigureReader figures;

  private PlansReader(Known ingredients, Remarks remarks) {
    this.ingredients = ingredients;
    this.remarks = remarks;
    this.figures = new FigureReader(remarks);
  }

  static Read<Optional<FeedPlan>> read(DataFile file, Frame frame, Known ingredients) {
    Remarks remarks = new Remarks();
    PlansReader reader = new PlansReader(ingredients, remarks);
    Optional<FeedPlan> plan =
        file.fields(PlansVocabulary.PLANS_KEYS, remarks).map(fields -> reader.plan(file, fields));
    plan.ifPresent(it -> PlanChecks.look(frame.settings(), it.feeds(), remarks));
    return file.read(plan, remarks);
  }

  private FeedPlan plan(DataFile file, Fields fields) {
    List<Planned> feeds = new ArrayList<>();
    for (Fields block : fields.blocks(PlansVocabulary.FEEDS)) {
      planned(block).ifPresent(feeds::add);
    }
    List<Available> available = new ArrayList<>();
    Optional<Fields> block = fields.block(PlansVocabulary.AVAILABLE);
    if (block.isPresent()) {
      for (Entry entry : block.get().others()) {
        available(block.get(), entry).ifPresent(available::add);
      }
    }
    return new FeedPlan(file.stem(), feeds, available, file.source().beginning());
  }

  private Optional<Planned> planned(Fields block) {
    Optional<Scalar> recipe = block.text(PlansVocabulary.RECIPE);
    OptionalDouble kg = figures.positive(block.text(PlansVocabulary.QUANTITY), Extent.WEIGHT);
    Optional<LocalDate> by = figures.day(block.text(PlansVocabulary.BY));
    return recipe.isPresent() && kg.isPresent() && by.isPresent()
        ? Optional.of(
            new Planned(
                recipe.get().text(),
                kg.getAsDouble(),
                by.get(),
                recipe.get().span(),
                block.placeOf(PlansVocabulary.QUANTITY),
                block.placeOf(PlansVocabulary.BY)))
        : Optional.empty();
  }

  private Optional<Available> available(Fields block, Entry entry) {
    Scalar name = entry.key();
    Optional<Scalar> amount = block.textOf(entry);
    if (CODE.matcher(name.text()).matches()) {
      remarks.add(PlanFindings.premix(name));
      return Optional.empty();
    }
    boolean known = ingredients.check(name, remarks);
    if (amount.isEmpty()) {
      return Optional.empty();
    }
    boolean inStore = amount.get().text().equals(PlansVocabulary.STORE);
    OptionalDouble kg = inStore ? OptionalDouble.empty() : kg(amount.get());
    return known && (inStore || kg.isPresent())
        ? Optional.of(new Available(name.text(), kg, name.span(), amount.get().span()))
        : Optional.empty();
  }

  /** That there is none may be told by the word, or by its figure. */
  private OptionalDouble kg(Scalar amount) {
    return amount.text().equals(Vocabulary.NONE)
        ? OptionalDouble.of(0)
        : figures.base(amount, Extent.WEIGHT.kind());
  }
}
