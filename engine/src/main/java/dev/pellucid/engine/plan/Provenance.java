package dev.pellucid.engine.plan;

import java.time.LocalDate;

/**
 * Where a plan comes from.
 *
 * @param commit the short name of the commit that holds the recipe; empty where there is none
 * @param clean whether the tree held nothing that is not in the commit
 * @param day the day of the run; use-by is counted from it
 * @param fingerprint of all files that the recipe or premix hangs on; empty where none is told
 */
public record Provenance(String commit, boolean clean, LocalDate day, String fingerprint) {
  public Provenance(String commit, boolean clean, LocalDate day) {
    this(commit, clean, day, "");
  }

  Provenance with(String files) {
    return new Provenance(commit, clean, day, files);
  }
}
