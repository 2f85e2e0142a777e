package dev.pellucid.engine.workspace;

import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Recipes held against their sisters, the other recipes for the same species: what the house asks
 * of each of them, and what fish of the same sizes need. A lost line {@code meets} shows nowhere
 * else, for nothing is judged by what is not asked.
 */
record Sisters(List<Finding> findings, List<String> codes) {
  static final Code CODE = new Code("fewer-than-sisters");

  Sisters {
    findings = List.copyOf(findings);
    codes = List.copyOf(codes);
  }

  static Sisters of(List<Summary> recipes) {
    List<Asked> all = new ArrayList<>();
    for (Summary one : recipes) {
      if (one.asked().isPresent() && one.asked().get().species().isPresent()) {
        all.add(one.asked().get());
      }
    }
    List<Finding> findings = new ArrayList<>();
    List<String> codes = new ArrayList<>();
    for (Asked one : all) {
      Set<String> lacks = new TreeSet<>();
      List<Asked> sisters = new ArrayList<>();
      for (Asked other : all) {
        if (!other.code().equals(one.code()) && other.species().equals(one.species())) {
          sisters.add(other);
        }
      }
      house(one, sisters, lacks);
      need(one, sisters, lacks);
      if (!lacks.isEmpty()) {
        codes.add(one.code());
        findings.add(finding(one, String.join(" and ", lacks), sisters));
      }
    }
    return new Sisters(findings, codes);
  }

  /** What the house asks of all the others; of one other alone it may be a whim. */
  private static void house(Asked one, List<Asked> sisters, Set<String> lacks) {
    if (sisters.size() < 2) {
      return;
    }
    for (String profile : sisters.get(0).practices()) {
      boolean ofAll = !one.meets(profile);
      for (Asked sister : sisters) {
        ofAll &= sister.practices().contains(profile);
      }
      if (ofAll) {
        lacks.add(profile);
      }
    }
  }

  /** What a feed for fish of the very same sizes is asked; one without any need is told that. */
  private static void need(Asked one, List<Asked> sisters, Set<String> lacks) {
    if (one.needs().isEmpty() || one.fish().isEmpty()) {
      return;
    }
    for (Asked sister : sisters) {
      if (sister.fish().equals(one.fish()) && sister.needs().containsAll(one.needs())) {
        for (String profile : sister.needs()) {
          if (!one.meets(profile)) {
            lacks.add(profile);
          }
        }
      }
    }
  }

  private static Finding finding(Asked one, String lacks, List<Asked> sisters) {
    return Finding.note(
            CODE,
            one.at(),
            one.code()
                + " does not meet "
                + lacks
                + ", and other feeds for "
                + one.species().orElseThrow()
                + " do")
        .noting("so it is judged by fewer limits than they are")
        .seeing("one that does", sisters.get(0).at())
        .helping("add a line to the head: meets, and the name, unless that is meant")
        .about(new About(lacks, About.Side.NONE, List.of()));
  }
}
