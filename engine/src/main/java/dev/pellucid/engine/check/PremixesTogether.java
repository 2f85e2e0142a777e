package dev.pellucid.engine.check;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.Section;
import dev.pellucid.syntax.SupplyLine;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What the premixes of a folder show when they are held against each other, as they are written: a
 * supply or an overage ten times off, a line of supply that is lost, a source of which the store
 * holds nothing. Sisters are those that share half of what they supply, two or more.
 */
public final class PremixesTogether {
  static final Code LOST = new Code("supply-lost");
  static final Code NO_LOT = new Code("source-without-lot");

  private static final int FEWEST = 2;

  /** A premix that lacks more is of another make. */
  private static final int MOST_LOST = 3;

  private final List<PremixFile> premixes;
  private final List<Profile> profiles;
  private final FeedTables tables;
  private final Set<String> inStore = new HashSet<>();
  private final List<Finding> findings = new ArrayList<>();

  private PremixesTogether(List<PremixFile> premixes, List<Profile> profiles, FeedTables tables) {
    this.premixes = premixes;
    this.profiles = profiles;
    this.tables = tables;
    for (Lot lot : tables.lots().values()) {
      inStore.add(lot.ingredient());
    }
  }

  /**
   * Looks at the premixes of a folder.
   *
   * @param premixes all of the folder, broken ones too
   * @param profiles all of the folder
   */
  public static List<Finding> look(
      List<PremixFile> premixes, List<Profile> profiles, FeedTables tables) {
    PremixesTogether together = new PremixesTogether(premixes, profiles, tables);
    for (PremixFile premix : premixes) {
      together.look(premix);
    }
    return together.findings;
  }

  private void look(PremixFile premix) {
    List<PremixFile> sisters = new ArrayList<>();
    for (PremixFile other : premixes) {
      if (!other.source().stem().equals(premix.source().stem()) && areSisters(premix, other)) {
        sisters.add(other);
      }
    }
    PremixTenTimesOff tenTimes = new PremixTenTimesOff(profiles, findings);
    if (sisters.size() >= FEWEST) {
      tenTimes.look(premix, sisters);
      lost(premix, sisters);
    }
    if (!inStore.isEmpty() && premix.supply().isPresent()) {
      for (SupplyLine line : premix.supply().get().lines()) {
        source(line);
      }
    }
  }

  private static boolean areSisters(PremixFile one, PremixFile other) {
    Set<String> its = supplied(one).keySet();
    Set<String> others = supplied(other).keySet();
    Set<String> shared = new HashSet<>(its);
    shared.retainAll(others);
    return !shared.isEmpty() && 2 * shared.size() >= Math.max(its.size(), others.size());
  }

  /** The lines of supply by nutrient, the first of each. */
  static Map<String, SupplyLine> supplied(PremixFile premix) {
    Map<String, SupplyLine> lines = new LinkedHashMap<>();
    if (premix.supply().isPresent()) {
      for (SupplyLine line : premix.supply().get().lines()) {
        lines.putIfAbsent(line.nutrient().text(), line);
      }
    }
    return lines;
  }

  private void lost(PremixFile premix, List<PremixFile> sisters) {
    Section<SupplyLine> section = premix.supply().orElseThrow();
    Set<String> shared = new LinkedHashSet<>(supplied(sisters.get(0)).keySet());
    for (PremixFile sister : sisters) {
      shared.retainAll(supplied(sister).keySet());
    }
    shared.removeAll(supplied(premix).keySet());
    if (!section.whole() || !areKnown(premix) || shared.size() > MOST_LOST) {
      return;
    }
    for (String nutrient : shared) {
      findings.add(lost(premix, section, nutrient, sisters));
    }
  }

  /** Whether every line names a nutrient: one that does not is a slip that may stand for any. */
  private boolean areKnown(PremixFile premix) {
    for (String name : supplied(premix).keySet()) {
      if (tables.nutrients().named(name).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  private Finding lost(
      PremixFile premix, Section<SupplyLine> section, String nutrient, List<PremixFile> sisters) {
    List<String> names = new ArrayList<>();
    for (PremixFile sister : sisters) {
      names.add(sister.source().stem());
    }
    List<String> asking = asking(nutrient);
    SupplyLine example = Objects.requireNonNull(supplied(sisters.get(0)).get(nutrient));
    String headline =
        premix.source().stem()
            + " supplies no "
            + nutrient
            + "; "
            + Sisters.listed(names)
            + " do"
            + (asking.isEmpty()
                ? ""
                : ", and "
                    + Plural.of(asking.size(), "profile asks", "profiles ask")
                    + " for a minimum of it");
    Finding finding =
        asking.isEmpty()
            ? Finding.note(LOST, section.heading(), headline)
            : Finding.warning(LOST, section.heading(), headline)
                .noting("asked by " + Choices.all(asking));
    return finding
        .seeing("supplied here", example.span())
        .helping(
            "if the line was lost, write it again: "
                + nutrient
                + " "
                + example.amount().asWritten()
                + " from "
                + example.from())
        .about(new About(nutrient, About.Side.MIN, List.of(premix.source().stem())));
  }

  private List<String> asking(String nutrient) {
    List<String> names = new ArrayList<>();
    for (Profile profile : profiles) {
      for (Limit limit : profile.limits()) {
        if (limit.side() == Bound.Side.MIN && limit.subject().text().equals(nutrient)) {
          names.add(profile.name());
        }
      }
    }
    return names;
  }

  /** Another grade or salt of the same is in the store, and of this one nothing is. */
  private void source(SupplyLine line) {
    Ingredient source = tables.ingredients().get(line.from().text());
    if (source == null || inStore.contains(source.name())) {
      return;
    }
    for (Ingredient other : tables.ingredients().values()) {
      if (inStore.contains(other.name())
          && !Collections.disjoint(source.groups(), other.groups())
          && brings(other, line.nutrient().text())) {
        findings.add(
            Finding.warning(
                    NO_LOT,
                    line.from().span(),
                    "the store has no lot of "
                        + source.name()
                        + ", and some of "
                        + other.name()
                        + ", which brings "
                        + line.nutrient()
                        + " too")
                .helping("write from " + other.name() + ", or enter the lot that is used")
                .fixing(line.from().span(), other.name())
                .about(new About(line.nutrient().text(), About.Side.NONE, List.of())));
        return;
      }
    }
  }

  /** As a source: a tenth of it, or any activity. */
  private static boolean brings(Ingredient one, String nutrient) {
    for (Ingredient.ContentBlock block : one.contents()) {
      if (block.byNutrient().containsKey(nutrient)
          && block.byNutrient().get(nutrient).low() >= 0.005) {
        return true;
      }
    }
    return false;
  }
}
