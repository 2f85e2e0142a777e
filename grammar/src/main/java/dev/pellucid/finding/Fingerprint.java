package dev.pellucid.finding;

import java.util.Locale;

/**
 * By what a finding is known again in a later run or another state: its code, the file, what it is
 * about, and the side of the limit; never a line, a column or a figure, so that it stays the same
 * when lines move and values change. Several of a run may have the same.
 */
public final class Fingerprint {
  private Fingerprint() {}

  /** As one string. */
  public static String of(Finding finding) {
    return of(finding, finding.span().file().path());
  }

  /** The same as if it stood in the file at another path. */
  public static String of(Finding finding, String path) {
    About about = finding.about();
    return String.join("|", finding.code().text(), path, about.subject(), side(about.side()));
  }

  /** {@code min}, {@code max}, or empty. */
  public static String side(About.Side side) {
    return side == About.Side.NONE ? "" : side.name().toLowerCase(Locale.ROOT);
  }
}
