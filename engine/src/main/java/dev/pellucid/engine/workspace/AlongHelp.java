package dev.pellucid.engine.workspace;

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
    return BundledPath.is(path) ? finding.helping(help(BundledPath.below(path))) : finding;
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
