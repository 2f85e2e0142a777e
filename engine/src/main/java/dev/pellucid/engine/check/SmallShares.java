package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.util.List;
import java.util.Optional;

/**
 * The shares of premixes and of powders, crystals and liquids in one recipe, and where each is
 * written; nothing that holds its text.
 */
public final class SmallShares {
  public static final SmallShares NONE = new SmallShares(List.of());

  private final String[] names;
  private final double[] percents;
  private final int[] starts;
  private final int[] ends;
  private int count;

  private SmallShares(List<Line> lines) {
    int most = lines.size();
    this.names = new String[most];
    this.percents = new double[most];
    this.starts = new int[most];
    this.ends = new int[most];
    for (Line line : lines) {
      if (!line.rest() && isSmall(line.material())) {
        names[count] = line.material().name();
        percents[count] = line.designed().kgPer100();
        starts[count] = line.figure().start();
        ends[count] = line.figure().end();
        count++;
      }
    }
  }

  /** Those of a recipe. */
  public static SmallShares of(ResolvedRecipe recipe) {
    return new SmallShares(recipe.taken());
  }

  private static boolean isSmall(Material material) {
    Optional<Material.Single> single = material.single();
    if (single.isEmpty()) {
      return material.premixed().isPresent();
    }
    Ingredient.Form form = single.get().ingredient().form();
    return switch (form) {
      case POWDER, CRYSTAL, LIQUID -> true;
      case MEAL, GRAIN, OIL -> false;
    };
  }

  public int count() {
    return count;
  }

  public String name(int i) {
    return names[i];
  }

  public double percent(int i) {
    return percents[i];
  }

  /** Where the share begins in the text of the recipe. */
  public int start(int i) {
    return starts[i];
  }

  /** Where it ends. */
  public int end(int i) {
    return ends[i];
  }
}
