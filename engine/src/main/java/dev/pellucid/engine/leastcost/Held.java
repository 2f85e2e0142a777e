package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.judge.Silence;
import dev.pellucid.engine.judge.Silences;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which ingredients may not rise above their share of today, nor come in: those that do not tell
 * what a feed with more of them would be judged by, and those of whose own file check says
 * something: a figure that is doubted, or a maximum of its own that it is over, so that it would be
 * thinned into the feed.
 */
public final class Held {
  private final FeedComputer computer;
  private final Map<String, Finding> wrong = new HashMap<>();
  private final Optional<InStore> store;
  private final Map<Span, Finding> atPlaces = new HashMap<>();

  /**
   * @param findings what is wrong with the data of the folder
   */
  public Held(FeedComputer computer, List<Finding> findings) {
    this(computer, findings, Optional.empty());
  }

  /**
   * @param store of which a batch may take no more than there is; none where that is not asked
   */
  public Held(FeedComputer computer, List<Finding> findings, Optional<InStore> store) {
    this.store = store;
    this.computer = computer;
    for (Finding finding : findings) {
      if (finding.severity() != Severity.NOTE) {
        wrong.putIfAbsent(finding.span().file().path(), finding);
        atPlaces.putIfAbsent(finding.span(), finding);
      }
    }
  }

  /** What check says of a price that it doubts. */
  Optional<Finding> doubt(Price price) {
    return Optional.ofNullable(atPlaces.get(price.place()));
  }

  /** What holds a line of a recipe; none of what is no single ingredient. */
  public List<Refusal> from(ResolvedRecipe recipe, Line line) {
    Optional<Material.Single> single = line.material().single();
    return single.isPresent() ? from(recipe, single.get().ingredient()) : List.of();
  }

  /** What holds an ingredient, whether it is in the recipe or not. */
  public List<Refusal> from(ResolvedRecipe recipe, Ingredient one) {
    List<Refusal> refusals = new ArrayList<>();
    String file = one.declared().file().path();
    Finding finding = wrong.get(file);
    if (finding != null) {
      refusals.add(new Refusal(one.name(), file, finding.headline()));
    }
    for (Silence silence :
        Silences.of(one, computer.composition(one, recipe), recipe, computer.nutrients())) {
      refusals.add(Refusal.of(silence));
    }
    return refusals;
  }

  /** The store that bounds a batch, where one does. */
  Optional<InStore> store() {
    return store;
  }
}
