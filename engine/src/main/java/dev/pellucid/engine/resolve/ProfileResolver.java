package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Source;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile.ProfileFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.LimitLine;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A profile file to a profile. */
final class ProfileResolver {
  static final Code UNKNOWN_SPECIES = new Code("unknown-species");

  private final ProfileFile file;
  private final Lookup lookup;
  private final List<Finding> findings = new ArrayList<>();
  private final Limits limits;

  private final List<Word> species = new ArrayList<>();
  private final List<Word> materials = new ArrayList<>();
  private Optional<Range> fish = Optional.empty();
  private Optional<Limit.Kind> kind = Optional.empty();
  private Optional<String> jurisdiction = Optional.empty();
  private Optional<Span> jurisdictionAt = Optional.empty();
  private Optional<Source> source = Optional.empty();
  private Optional<HeadLine.Holds> holds = Optional.empty();
  private final List<Word> mustHold = new ArrayList<>();
  private boolean materialsLost;

  ProfileResolver(ProfileFile file, Scope scope) {
    this.file = file;
    this.lookup = new Lookup(scope);
    this.limits = new Limits(lookup, findings);
  }

  Resolution<Profile> resolve() {
    head();
    List<Limit> found = new ArrayList<>();
    String name = file.source().stem();
    int lines = 0;
    boolean whole = true;
    if (file.limits().isPresent()) {
      lines = file.limits().get().lines().size();
      whole = file.limits().get().whole();
      for (LimitLine line : file.limits().get().lines()) {
        int before = found.size();
        limits.add(line, kind.orElse(Limit.Kind.NEED), name, source, found);
        whole &= found.size() - before == line.bounds().size();
      }
    }
    Span declared =
        file.opening().isPresent() ? file.opening().get().name().span() : file.source().beginning();
    new ProfileHead(file.source(), declared, findings)
        .look(
            kind,
            jurisdiction,
            jurisdictionAt,
            species.isEmpty() && materials.isEmpty() && !materialsLost,
            lookup.isFrameWhole() ? found : List.of());
    if (!materials.isEmpty()) {
      new MaterialsHead(file, materials, species, findings).look(kind, found);
    }
    boolean titled = file.opening().isPresent() && file.opening().get().title().isPresent();
    String title = titled ? file.opening().get().title().get().text() : name;
    Profile profile =
        new Profile(
            name,
            title,
            kind.orElse(Limit.Kind.NEED),
            kind.isPresent(),
            texts(species),
            texts(materials),
            fish,
            jurisdiction,
            jurisdictionAt,
            MergedLimits.once(found, findings),
            lines,
            whole,
            holds,
            mustHold,
            declared);
    return new Resolution<>(Optional.of(profile), findings, lookup.reads());
  }

  /** The status of a profile is for people. */
  private void head() {
    HeadLine.Profile head =
        new HeadLine.Profile(
            told -> species(told.species()),
            told -> fish = Optional.of(told.mass()),
            told -> kind = Optional.of(kind(told)),
            this::jurisdiction,
            told -> source = limits.source(told.source()),
            status -> {},
            told -> holds = Optional.of(told),
            told -> mustHold(told.what()),
            told -> materials(told.what()));
    for (HeadLine.OfProfile line : file.head()) {
      line.into(head);
    }
  }

  private void jurisdiction(HeadLine.Jurisdiction told) {
    jurisdiction = Optional.of(told.jurisdiction().text());
    jurisdictionAt = Optional.of(told.span());
  }

  private void mustHold(Word what) {
    if (limits.isOfMaterials(what)) {
      mustHold.add(what);
    }
  }

  private void materials(Word what) {
    if (limits.isOfMaterials(what)) {
      materials.add(what);
    } else {
      materialsLost = true;
    }
  }

  private static List<String> texts(List<Word> words) {
    List<String> texts = new ArrayList<>(words.size());
    for (Word word : words) {
      texts.add(word.text());
    }
    return texts;
  }

  private static Limit.Kind kind(HeadLine.ProfileKind told) {
    return Limit.Kind.valueOf(told.kind().text().toUpperCase(Locale.ROOT));
  }

  private void species(Word name) {
    species.add(name);
    if (!lookup.frame().knowsSpeciesOrGroup(name.text()) && lookup.isFrameWhole()) {
      findings.add(
          Limits.near(
              Finding.error(
                  UNKNOWN_SPECIES, name.span(), name + " is not a species or group of this folder"),
              name,
              lookup.frame().species().keySet(),
              "add it under species/, or fix the name"));
    }
  }
}
