package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.resolve.ResolvedRecipe.Met;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Range;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Fish of this feed for which no profile that it meets was written. Profiles of one kind cover
 * together, so that a feed may meet one for the small and one for the large fish; a profile without
 * sizes covers all. Law holds whatever the size.
 */
final class FishOutsideProfile implements Rule {
  private static final Code CODE = new Code("fish-outside-profile");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Range> fish = recipe.recipe().fish();
    if (fish.isPresent() && !FishOfSpecies.isBeyond(fish.get(), recipe.recipe().species())) {
      look(recipe, fish.get(), Limit.Kind.NEED, out);
      look(recipe, fish.get(), Limit.Kind.PRACTICE, out);
    }
  }

  private static void look(RuleContext recipe, Range fish, Limit.Kind kind, Remarks out) {
    List<Profile> profiles = new ArrayList<>();
    for (Met met : recipe.recipe().profiles()) {
      Profile profile = met.profile();
      if (profile.kind() == kind && SpeciesOutsideProfile.fits(recipe.recipe(), profile)) {
        if (profile.fish().isEmpty()) {
          return;
        }
        profiles.add(profile);
      }
    }
    if (!profiles.isEmpty() && !covered(fish, profiles)) {
      out.accept(finding(fish, profiles));
    }
  }

  private static List<Range> rising(List<Profile> profiles) {
    return profiles.stream()
        .flatMap(profile -> profile.fish().stream())
        .sorted(Comparator.comparingDouble(Range::lowBase))
        .toList();
  }

  private static boolean covered(Range fish, List<Profile> profiles) {
    double reached = fish.lowBase();
    for (Range range : rising(profiles)) {
      if (Closeness.isAtMost(range.lowBase(), reached)) {
        reached = Math.max(reached, range.highBase());
      }
    }
    return reached > fish.lowBase() && Closeness.isAtLeast(reached, fish.highBase());
  }

  private static Finding finding(Range fish, List<Profile> profiles) {
    String names = profiles.stream().map(Profile::name).collect(Collectors.joining(" and "));
    String sizes =
        profiles.stream()
            .flatMap(profile -> profile.fish().stream())
            .map(Range::asWritten)
            .collect(Collectors.joining(" and "));
    Finding finding =
        Finding.warning(
            CODE,
            fish.span(),
            "this feed is for fish of "
                + fish.asWritten()
                + ", "
                + names
                + (profiles.size() > 1 ? " are for " : " is for ")
                + sizes);
    for (Profile profile : profiles) {
      finding = finding.seeing("size written", profile.fish().orElseThrow().span());
    }
    return finding
        .noting("for the other fish nobody has written what the feed must hold")
        .helping(
            shared(fish, profiles)
                    .map(size -> "narrow fish to " + size + ", or meet a profile for the rest")
                    .orElse("meet a profile for fish of " + fish.asWritten())
                + " too")
        .about(new About(names, About.Side.NONE, List.of()));
  }

  /** The sizes that the recipe and its one profile have in common. */
  private static Optional<String> shared(Range fish, List<Profile> profiles) {
    if (profiles.size() != 1) {
      return Optional.empty();
    }
    Range range = profiles.get(0).fish().orElseThrow();
    Range low = fish.lowBase() >= range.lowBase() ? fish : range;
    Range high = fish.highBase() <= range.highBase() ? fish : range;
    return low.lowBase() < high.highBase()
        ? Optional.of(
            low.unit() == high.unit()
                ? low.low().text() + " to " + high.high().text() + " " + high.unitAsWritten()
                : low.low().text()
                    + " "
                    + low.unitAsWritten()
                    + " to "
                    + high.high().text()
                    + " "
                    + high.unitAsWritten())
        : Optional.empty();
  }
}
