package dev.pellucid.parse;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.util.List;

/** A tab reads as white space and costs nothing but the columns; the first of a file is noted. */
final class Tabs {
  static final Code TAB = new Code("tab");

  private Tabs() {}

  /** Adds the finding of the first tab that is not inside a comment, if there is one. */
  static void addTo(List<Finding> findings, SourceFile source) {
    String text = source.text();
    for (int at = text.indexOf('\t'); at >= 0; at = text.indexOf('\t', at + 1)) {
      int line = Math.max(text.lastIndexOf('\n', at), text.lastIndexOf('\r', at)) + 1;
      int comment = text.indexOf('#', line);
      if (comment < 0 || comment > at) {
        findings.add(
            Finding.note(
                    TAB,
                    source.span(at, at + 1),
                    "a tab stands here, and every editor draws its columns elsewhere")
                .helping("mvn pellucid:format writes spaces in the place of every tab"));
        return;
      }
    }
  }
}
