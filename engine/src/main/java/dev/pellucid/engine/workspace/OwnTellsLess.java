package dev.pellucid.engine.workspace;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.folder.Texts.Replaced;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file of the folder takes the place of one that comes along, whole. What it leaves out of that
 * one counts no more, and nobody would see it.
 */
public final class OwnTellsLess {
  /** The code of what it says; its page has no example, for that would be a whole file. */
  public static final Code CODE = new Code("own-file-tells-less");

  private static final int NAMED = 5;

  /** A key at the beginning of a line of a data file. */
  private static final Pattern KEY = Pattern.compile("(?m)^([a-z][a-z0-9-]*):");

  /** What a line of a profile limits. */
  private static final Pattern LIMITED = Pattern.compile("(?m)^ +(\\S.*?) +(?:min|max) ");

  private OwnTellsLess() {}

  static void look(Texts texts, List<Finding> findings) {
    for (Replaced one : texts.replaced()) {
      // What cannot be read is told where it is read.
      texts.read(one.own(), new ArrayList<>()).ifPresent(own -> look(own, one, findings));
    }
  }

  private static void look(SourceFile own, Replaced replaced, List<Finding> findings) {
    Set<String> left = told(replaced.bundled());
    left.removeAll(told(own));
    if (!left.isEmpty() && !own.text().isBlank()) {
      findings.add(finding(own, BundledPath.below(replaced.bundled().path()), left));
    }
  }

  private static Set<String> told(SourceFile file) {
    Set<String> told = new TreeSet<>();
    Matcher each = (file.path().endsWith(".limits") ? LIMITED : KEY).matcher(file.text());
    while (each.find()) {
      told.add(each.group(1).replaceAll(" +", " "));
    }
    return told;
  }

  private static Finding finding(SourceFile own, String place, Set<String> left) {
    List<String> named = left.stream().limit(NAMED).toList();
    int more = left.size() - named.size();
    return Finding.of(
            CODE,
            bounds(place) ? Severity.WARNING : Severity.NOTE,
            own.beginning(),
            "this file stands in place of "
                + BundledPath.of(place)
                + " and leaves out of it "
                + String.join(", ", named)
                + (more > 0 ? " and " + more + " more" : ""))
        .helping(
            "take over what it leaves out, or delete it; mvn pellucid:new -Dpellucid.own="
                + place
                + " then writes the whole one")
        .about(new About(place, About.Side.NONE, List.of()));
  }

  /** Whether it is a file that keeps a feed from harm. */
  private static boolean bounds(String place) {
    return place.startsWith("law/") || place.equals("practice/bounds.yaml");
  }
}
