package dev.pellucid.engine.workspace;

import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A section that all other approved recipes have, three or more, and one lacks: a label beside all
 * of the folder, limits of its own and overage beside those for the same species. A feed without it
 * passes, and nobody sees what it was not held to.
 */
public final class LostSections {
  /** The code of a section that is lost. */
  public static final Code CODE = new Code("section-lost");

  private static final int FEWEST = 3;

  private LostSections() {}

  /** A warning for each. */
  static List<Finding> of(List<Summary> recipes) {
    List<Summary> approved = new ArrayList<>();
    for (Summary one : recipes) {
      if (one.asked().isPresent() && one.asked().get().approved()) {
        approved.add(one);
      }
    }
    List<Finding> findings = new ArrayList<>();
    look("label", approved, findings);
    Map<String, List<Summary>> bySpecies = new TreeMap<>();
    for (Summary one : approved) {
      String species = one.asked().orElseThrow().species().orElse("");
      bySpecies.computeIfAbsent(species, none -> new ArrayList<>()).add(one);
    }
    for (List<Summary> sisters : bySpecies.values()) {
      look("limits", sisters, findings);
      look("overage", sisters, findings);
    }
    return findings;
  }

  private static void look(String section, List<Summary> recipes, List<Finding> findings) {
    List<Summary> without = new ArrayList<>();
    for (Summary one : recipes) {
      if (!one.asked().orElseThrow().sections().contains(section)) {
        without.add(one);
      }
    }
    if (without.size() == 1 && recipes.size() > FEWEST) {
      findings.add(finding(without.get(0), section, recipes.size() - 1));
    }
  }

  private static Finding finding(Summary one, String section, int others) {
    return Finding.warning(
            CODE,
            one.asked().orElseThrow().at(),
            one.code()
                + " has no section "
                + section
                + ", and "
                + Plural.of(others, "other approved recipe")
                + (section.equals("label") ? " of this folder do" : " for its species do"))
        .noting(what(section))
        .helping("write it back, if it was lost")
        .about(new About(section, About.Side.NONE, List.of()));
  }

  private static String what(String section) {
    return switch (section) {
      case "label" -> "nothing is declared on its bag, and nothing is held against that";
      case "limits" -> "it is held to its profiles alone";
      default -> "what stays in bowls and bags is not made up for";
    };
  }
}
