package dev.pellucid.finding;

import java.util.List;

/**
 * What a finding is about, for those who must recognise it again after lines have moved or figures
 * have changed: the subject ({@code crude-protein}, {@code soybean-meal-48}), the side of a limit,
 * and the way down to the line to blame ({@code CG-36 > VM-CAT > zinc-sulphate}).
 */
public record About(String subject, Side side, List<String> path) {
  public static final About NOTHING = new About("", Side.NONE, List.of());

  /** The side of a limit. */
  public enum Side {
    MIN,
    MAX,
    NONE
  }

  public About {
    path = List.copyOf(path);
  }
}
