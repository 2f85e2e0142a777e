package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.TablesReader;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.BundledPath;
import java.util.List;

/** What to do about a finding in a file that comes along, which nobody can change where it is. */
final class AlongHelp {
  private AlongHelp() {}

  static List<Finding> told(List<Finding> findings) {
    return findings.stream().map(AlongHelp::told).toList();
  }

  private static Finding told(Finding finding) {
    String path = finding.span().file().path();
    if (!BundledPath.is(path)) {
      return finding;
    }
    return finding.helping(
        TablesReader.isUnknownClass(finding) ? ofClass() : help(BundledPath.below(path)));
  }

  /** All classes that files which come along name are in the retention that comes along. */
  private static String ofClass() {
    return "practice/retention.yaml of the folder stands in place of one that has this class: add"
        + " the class there, or delete the file";
  }

  private static String help(String place) {
    // Of what lies at the top, entries of the folder count beside those that come along.
    return place.contains("/")
        ? "this file comes with the program: mvn pellucid:new -Dpellucid.own="
            + place
            + " writes it into the folder, to be changed there"
        : "this file comes with the program: write the whole entry anew in "
            + place
            + " of the folder, where it counts more";
  }
}
