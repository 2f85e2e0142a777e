package dev.pellucid.engine.resolve;

import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Plural;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * What the head of a profile leaves out. Law that does not say whose law it is, that it is law, or
 * whom it binds, binds nobody, and no feed would tell: that is an error. Limits without a source
 * nobody can look up.
 */
final class ProfileHead {
  static final Code INCOMPLETE = new Code("profile-incomplete");

  private final SourceFile source;
  private final Span declared;
  private final List<Finding> findings;

  ProfileHead(SourceFile source, Span declared, List<Finding> findings) {
    this.source = source;
    this.declared = declared;
    this.findings = findings;
  }

  /**
   * @param kind empty where the head says none
   * @param anySpecies whether the head names no species and no raw materials
   * @param limits with the sources that they were given
   */
  void look(
      Optional<Limit.Kind> kind,
      Optional<String> jurisdiction,
      Optional<Span> jurisdictionAt,
      boolean anySpecies,
      List<Limit> limits) {
    boolean law = kind.isPresent() && kind.get().bindsByItself();
    String is = "is " + kind.orElse(Limit.Kind.LAW).word() + ", and does not say ";
    if (law && jurisdiction.isEmpty()) {
      missing(
          "jurisdiction",
          is + "of which jurisdiction, so it binds no feed",
          "jurisdiction EU, with the one of pellucid.yaml");
    }
    if (!law && jurisdiction.isPresent() && (kind.isPresent() || isLost("kind"))) {
      notLaw(kind, jurisdiction.get(), jurisdictionAt.orElse(declared));
    }
    if (law && anySpecies) {
      missing(
          "species",
          is + "for which species, so it binds no feed",
          "species, and a species or group of this folder, one on each line");
    }
    sources(law, limits);
  }

  private void notLaw(Optional<Limit.Kind> kind, String jurisdiction, Span at) {
    findings.add(
        Finding.error(
                INCOMPLETE,
                at,
                source.stem()
                    + " says jurisdiction "
                    + jurisdiction
                    + kind.map(
                            it -> " and kind " + it.word() + ", and only law and guidance have one")
                        .orElse(" and no kind, so it counts as a need and binds no feed"))
            .helping("add the line to the head, or change it: kind law")
            .helping("or take the jurisdiction out, where it is no law")
            .about(new About("kind", About.Side.NONE, List.of())));
  }

  private void sources(boolean law, List<Limit> limits) {
    int without = 0;
    for (Limit limit : limits) {
      without += limit.origin().source().isEmpty() ? 1 : 0;
    }
    if (without == 0 || hasUnknownSource()) {
      return;
    }
    String headline =
        Plural.of(without, "limit")
            + " of "
            + source.stem()
            + (without == 1 ? " has" : " have")
            + " no source";
    Finding finding =
        law
            ? Finding.warning(INCOMPLETE, declared, headline)
            : Finding.note(INCOMPLETE, declared, headline);
    said(
        finding
            .noting("nobody can look up whether they are right")
            .helping("add a line to the head: source, and where they come from in sources.yaml"),
        "source");
  }

  private boolean hasUnknownSource() {
    for (Finding finding : findings) {
      if (finding.code().equals(Limits.UNKNOWN_SOURCE)) {
        return true;
      }
    }
    return false;
  }

  private void missing(String word, String what, String line) {
    said(
        Finding.error(INCOMPLETE, declared, source.stem() + " " + what)
            .helping("add a line to the head: " + line),
        word);
  }

  private void said(Finding finding, String word) {
    if (isLost(word)) {
      findings.add(finding.about(new About(word, About.Side.NONE, List.of())));
    }
  }

  /** Whether the head has no line of the word, and none that may stand for it. */
  private boolean isLost(String word) {
    return !UnreadHead.mayHave(source, word);
  }
}
