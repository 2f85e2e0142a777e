package dev.pellucid.engine.account;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Source.Reliability;
import dev.pellucid.engine.judge.LimitStatus;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the judged limits of a feed rest on: each figure of the folder on which some of them hangs,
 * once, and how far its source can be trusted.
 *
 * @param figures in the order in which they are met: the limits, then what they are read off
 */
public record RestsOn(List<Figure> figures) {
  public RestsOn {
    figures = List.copyOf(figures);
  }

  /**
   * Of a feed and how it stands with its limits; those that cannot be judged are left out.
   *
   * @param practice with the retention and the spreads by which the feed was computed
   */
  public static RestsOn of(ComputedFeed feed, List<LimitStatus> limits, Practice practice) {
    return new RestsOn(new Grounds(feed, practice).of(limits));
  }

  /** What a figure of the folder tells. */
  public enum Kind {
    /** A bound, in a profile or the law; what a recipe or a waiver asks has no source. */
    LIMIT,
    /** How much of a nutrient an ingredient holds. */
    CONTENT,
    /** What part of it fish digest. */
    DIGESTIBILITY,
    /** How a nutrient follows from others. */
    FORMULA,
    /** How a content differs from lot to lot, where a limit is judged by that. */
    SPREAD,
    /** What is left of a nutrient after a step. */
    RETENTION
  }

  /**
   * One figure.
   *
   * @param of where it stands: the profile of a limit, the ingredient of a content, a digestibility
   *     or a spread of its own, the nutrient of a formula, the class of a retention; {@link
   *     #PRACTICE} for a spread that is told for all ingredients
   * @param what of it: the nutrient, the step, or what the limit is called
   * @param source its name in {@code sources.yaml}
   */
  public record Figure(Kind kind, String of, String what, String source, Reliability standing) {}

  /** Where spreads stand that are told for all ingredients. */
  public static final String PRACTICE = "practice/spreads.yaml";

  /** How many figures there are. */
  public int count() {
    return figures.size();
  }

  /** How many have a source of this standing. */
  public int count(Reliability standing) {
    int count = 0;
    for (Figure figure : figures) {
      count += figure.standing() == standing ? 1 : 0;
    }
    return count;
  }

  /** Figures of one kind that stand together and have sources of the same standing. */
  public record Group(Kind kind, String of, Reliability standing, int figures) {
    private Group withOneMore() {
      return new Group(kind, of, standing, figures + 1);
    }
  }

  /**
   * The figures of a standing in groups, the largest first; of equals the one that is met first.
   */
  public List<Group> groups(Reliability standing) {
    Map<String, Group> groups = new LinkedHashMap<>();
    for (Figure figure : figures) {
      if (figure.standing() == standing) {
        String key = figure.kind() + " " + figure.of();
        Group group = groups.getOrDefault(key, new Group(figure.kind(), figure.of(), standing, 0));
        groups.put(key, group.withOneMore());
      }
    }
    List<Group> largest = new ArrayList<>(groups.values());
    largest.sort(Comparator.comparingInt(Group::figures).reversed());
    return largest;
  }
}
