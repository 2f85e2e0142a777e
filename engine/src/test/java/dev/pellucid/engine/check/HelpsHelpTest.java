package dev.pellucid.engine.check;

import static dev.pellucid.engine.workspace.Kept.Route.CHECK;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.Causes;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.Kept;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * A help that names an amount helps: the example is broken at random, seeded, each such help is
 * applied, and the folder is checked again. The limit is met, and none that was kept is broken.
 * With {@code -Dpellucid.helps=5000} so many breaks are made.
 */
class HelpsHelpTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
  private static final int BREAKS = Integer.getInteger("pellucid.helps", 120);
  private static final int SEED = Integer.getInteger("pellucid.helpsSeed", 20261128);
  private static final Pattern AMOUNT = Pattern.compile("[0-9]");

  /** These name an amount that stands in the way, or ask after a slip. */
  private static final Pattern OTHER =
      Pattern.compile("did you mean .*|.*other limits are broken too.*");

  private final Map<String, Integer> applied = new TreeMap<>();
  private final Map<String, Integer> without = new TreeMap<>();
  private final List<String> failed = new ArrayList<>();
  private int elsewhere;
  private final Set<String> unread = new TreeSet<>();

  @Test
  void whateverNamesAnAmountHelps() throws IOException {
    Texts example = Texts.at(Example.whole()).held();
    Kept<Checked> sound = Kept.of(example.without(besides(example)), Days.on(DAY), CHECK, it -> it);
    List<String> recipes = sound.recipes();
    sound.all();
    Random random = new Random(SEED);
    for (int i = 0; i < BREAKS; i++) {
      String recipe = recipes.get(random.nextInt(recipes.size()));
      List<LimitStatus> limits = limits(sound.recipe(recipe).orElseThrow());
      Texts texts = sound.shared().texts();
      look(i, sound.with(new BrokenExample(random, texts, recipe, limits).broken()), recipe);
    }
    System.out.println(
        "helps applied: " + applied + ", broken without: " + without + ", elsewhere: " + elsewhere);
    assertTrue(failed.isEmpty(), () -> failed.size() + ":\n" + String.join("\n", failed));
    assertEquals(Set.of(), unread, "helps that name an amount and are not read");
    assertTrue(applied.getOrDefault("shares", 0) > BREAKS / 5, () -> "helps applied: " + applied);
  }

  /** What would speak of a recipe a second time. */
  private static List<String> besides(Texts example) {
    List<String> paths = new ArrayList<>(example.paths());
    paths.removeIf(
        path ->
            !path.endsWith(".figures")
                && !path.startsWith("batches/")
                && !path.startsWith("lots/"));
    return paths;
  }

  private void look(int number, Kept<Checked> broken, String recipe) {
    Checked checked = broken.recipe(recipe).orElseThrow();
    Set<String> known = keys(broken);
    for (Remark remark : checked.remarks()) {
      known.add(key(remark.finding()));
    }
    for (Remark remark : checked.remarks()) {
      Finding finding = remark.finding();
      boolean helped = false;
      for (String help : finding.helps()) {
        Optional<String> kind = AppliedHelp.kind(help);
        if (kind.isPresent()) {
          helped = true;
          applied.merge(kind.get(), 1, Integer::sum);
          String why = fault(broken, recipe, known, remark, help);
          if (!why.isEmpty()) {
            failed.add(number + " " + recipe + " " + finding.headline() + "\n    " + help + why);
          }
        } else if (remark.about().isPresent()
            && AMOUNT.matcher(help.replaceAll("\\S*[a-zA-Z]\\S*", "")).find()
            && !OTHER.matcher(help).matches()) {
          unread.add(help);
        }
      }
      if (!helped && remark.about().isPresent() && finding.severity() == Severity.ERROR) {
        without.merge(finding.code().text(), 1, Integer::sum);
      }
    }
  }

  /** What is not as it should be once a help is applied; nothing where it helps. */
  private String fault(
      Kept<Checked> broken, String recipe, Set<String> known, Remark remark, String help) {
    String subject = remark.finding().about().subject();
    Kept<Checked> fixed =
        broken.with(AppliedHelp.to(broken.shared().texts(), recipe, help, subject));
    boolean supply = help.contains(" in the supply of ");
    StringBuilder why = new StringBuilder();
    for (String path : broken.recipes()) {
      Map<String, LimitStatus> after = byName(limits(fixed.recipe(path).orElseThrow()));
      for (LimitStatus status : limits(broken.recipe(path).orElseThrow())) {
        String name = name(status);
        LimitStatus now = after.get(name);
        boolean here = path.equals(recipe);
        boolean isTarget = here && remark.about().filter(it -> name(it).equals(name)).isPresent();
        boolean all = here && help.contains(" broken limits") && status.state().isBroken();
        boolean wanted = isTarget || all || status.state().isKept();
        if (now == null || wanted && !now.state().isKept()) {
          if (!here && supply) {
            elsewhere++;
          } else {
            why.append("\n    ").append(isTarget ? "not met: " : "broken: ").append(name);
          }
        }
      }
    }
    for (Finding finding : said(fixed)) {
      if (finding.severity() == Severity.ERROR && !supply && !known.contains(key(finding))) {
        why.append("\n    new: ").append(finding.headline());
      }
    }
    return why.toString();
  }

  private static List<Finding> said(Kept<Checked> folder) {
    return Whole.of(folder.shared(), folder.all().stream().map(Summary::of).toList()).findings();
  }

  private static Set<String> keys(Kept<Checked> folder) {
    Set<String> keys = new TreeSet<>();
    said(folder).forEach(finding -> keys.add(key(finding)));
    return keys;
  }

  /** What is told together with its cause is at and about the first of what is left. */
  private static String key(Finding finding) {
    boolean together = finding.code().equals(Causes.CODE);
    return finding.code().text() + " " + (together ? "" : finding.about().subject());
  }

  private static Map<String, LimitStatus> byName(List<LimitStatus> limits) {
    Map<String, LimitStatus> byName = new LinkedHashMap<>();
    limits.forEach(status -> byName.put(name(status), status));
    return byName;
  }

  private static String name(LimitStatus status) {
    return status.limit().name() + " " + status.limit().side();
  }

  private static List<LimitStatus> limits(Checked recipe) {
    return recipe.recipe().map(RuleContext::limits).orElse(List.of());
  }
}
