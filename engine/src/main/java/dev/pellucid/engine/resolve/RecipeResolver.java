package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchBasis;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import dev.pellucid.engine.resolve.ResolvedRecipe.Met;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.LimitLine;
import dev.pellucid.syntax.ProcessLine;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Section;
import dev.pellucid.syntax.Step;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A recipe file to a resolved recipe. It is absent where its figures could only mislead: a broken
 * line in mix, coat or process, an unknown ingredient, a total that is off.
 */
final class RecipeResolver {
  static final Code UNKNOWN_PROFILE = new Code("unknown-profile");
  static final Code NOTHING_TO_MEET = new Code("nothing-to-meet");
  static final Code NOTHING_TO_COAT = new Code("nothing-to-coat");
  static final Code NO_LAW = new Code("no-law");

  private final RecipeFile file;
  private final Lookup lookup;
  private final String code;
  private final List<Finding> findings = new ArrayList<>();
  private final Limits limits;
  private final List<Met> profiles = new ArrayList<>();

  private String status = "draft";
  private Optional<Species> species = Optional.empty();
  private Optional<Range> fish = Optional.empty();
  private Optional<String> habit = Optional.empty();
  private Optional<BatchSize> batch = Optional.empty();

  RecipeResolver(RecipeFile file, Scope scope) {
    this.file = file;
    this.lookup = new Lookup(scope);
    this.code = file.source().stem();
    this.limits = new Limits(lookup, findings);
  }

  Resolution<ResolvedRecipe> resolve() {
    file.head().forEach(this::head);
    law();
    Optional<Passes> passes = passes();
    List<Limit> all = allLimits();
    Optional<Label> label =
        file.label().map(section -> new LabelLines(limits, findings).of(section));
    Optional<List<Line>> lines = lines();
    Span declared =
        file.opening().map(opening -> opening.name().span()).orElse(file.source().beginning());
    boolean known = lookup.frame().nutrients().mendFirst().isEmpty();
    if (all.isEmpty() && known) {
      findings.add(
          Finding.warning(NOTHING_TO_MEET, declared, code + " has no limit to meet")
              .helping("name a profile with meets, or write limits of its own"));
    }
    String title = file.opening().flatMap(o -> o.title()).map(t -> t.text()).orElse(code);
    return new Resolution<>(
        lines
            .filter(list -> known)
            .flatMap(
                list ->
                    passes.map(
                        inOrder ->
                            new ResolvedRecipe(
                                file.source(),
                                code,
                                title,
                                status,
                                species,
                                fish,
                                habit,
                                batch,
                                list,
                                inOrder,
                                profiles,
                                all,
                                label,
                                declared))),
        findings,
        lookup.reads());
  }

  /** A line that could not be read may be the one that says how hot or how dry. */
  private Optional<Passes> passes() {
    if (!file.process().map(Section::whole).orElse(true)) {
      return Optional.empty();
    }
    List<ProcessLine> process = file.process().map(Section::lines).orElse(List.of());
    if (file.coat().isEmpty()) {
      process.stream()
          .filter(line -> line.step() == Step.COAT)
          .findFirst()
          .ifPresent(line -> findings.add(nothingToCoat(line)));
    }
    return ProcessLines.passes(
        process,
        file.coat().filter(coat -> !coat.lines().isEmpty()).map(Section::heading),
        findings);
  }

  /** Where the heading of the coat is lost, its oil goes into the mixer. */
  private static Finding nothingToCoat(ProcessLine line) {
    return Finding.error(
            NOTHING_TO_COAT,
            line.stepAsWritten().span(),
            "coat is a step of the process, and the recipe has no section coat")
        .helping("list what goes on the kernel in a section coat, or take the lines of coat out");
  }

  private boolean addsForStability() {
    return file.overage().stream()
        .flatMap(section -> section.lines().stream())
        .anyMatch(line -> line.purpose().text().equals("stability"));
  }

  private void head(HeadLine.OfRecipe line) {
    line.into(
        new HeadLine.Recipe(
            told -> status = told.status().text(),
            told -> species(told.species()),
            told -> fish = Optional.of(told.mass()),
            told -> habit = Optional.of(told.habit().text()),
            told -> profile(told.profile()),
            told -> batch = Optional.of(size(told))));
  }

  private static BatchSize size(HeadLine.Batch told) {
    BatchBasis basis =
        told.basis().text().equals("finished") ? BatchBasis.FINISHED : BatchBasis.WEIGHED;
    return new BatchSize(told.mass().base(), basis, told.mass());
  }

  private void species(Word name) {
    species = Optional.ofNullable(lookup.frame().species().get(name.text()));
    if (species.isEmpty()) {
      findings.add(
          Limits.near(
              Finding.error(
                  ProfileResolver.UNKNOWN_SPECIES,
                  name.span(),
                  name + " is not a species of this folder"),
              name,
              lookup.frame().species().keySet(),
              "add it under species/, or mend the name"));
    }
  }

  private void profile(Word name) {
    Optional<Profile> profile = lookup.profile(name.text());
    if (profile.isPresent()) {
      profiles.add(new Met(profile.get(), Optional.of(name.span())));
      return;
    }
    findings.add(
        Limits.near(
            Finding.error(UNKNOWN_PROFILE, name.span(), name + " is not a profile of this folder"),
            name,
            lookup.profiles(),
            "add the file " + name + ".limits, or mend the name"));
  }

  /** What the jurisdiction asks, whatever the recipe says. */
  private void law() {
    lookup.law().stream()
        .filter(this::holds)
        .filter(profile -> profiles.stream().noneMatch(met -> met.profile().equals(profile)))
        .forEach(profile -> profiles.add(new Met(profile, Optional.empty())));
  }

  private boolean holds(Profile profile) {
    return profile.species().isEmpty()
        || species.isEmpty()
        || profile.species().stream().anyMatch(name -> species.get().is(name));
  }

  private List<Limit> allLimits() {
    List<Limit> all = new ArrayList<>();
    profiles.forEach(met -> all.addAll(met.profile().limits()));
    List<Limit> own = new ArrayList<>();
    for (LimitLine line : file.limits().map(section -> section.lines()).orElse(List.of())) {
      own.addAll(limits.of(line, Limit.Kind.RECIPE, code, Optional.empty()));
    }
    all.addAll(MergedLimits.once(own, findings));
    List<Limit> merged = MergedLimits.of(all, findings);
    if (!lookup.frame().nutrients().mendFirst().isEmpty()) {
      return merged;
    }
    List<Limit> waived =
        new Waivers(limits, lookup.days().waivers(), findings)
            .applied(file.waivers().map(section -> section.lines()).orElse(List.of()), merged);
    return MergedLimits.withLawInForce(waived, all);
  }

  private Optional<List<Line>> lines() {
    if (file.mix().isEmpty()) {
      return Optional.empty();
    }
    Lines lines = new Lines(new Materials(lookup, findings), true, findings);
    lines.take(file.mix().get(), Place.MIX);
    file.coat().ifPresent(section -> lines.take(section, Place.COAT));
    if (!lines.whole()) {
      if (!addsForStability()) {
        lines.addUp(file.mix().get().heading(), Share.ZERO);
      }
      return Optional.empty();
    }
    Overages overages =
        new Overages(
            file.overage().map(section -> section.lines()).orElse(List.of()),
            batchSize(),
            findings);
    Share extra = Share.ZERO;
    for (Lines.Drawn line : lines.drawn()) {
      if (line.share().isPresent()) {
        extra = extra.plus(overages.stability(line.material(), line.share().get()));
      }
    }
    Share stability = extra;
    return lines
        .closed(file.mix().get().heading(), stability)
        .flatMap(drawn -> finished(drawn, overages, stability));
  }

  private Overages.Batch batchSize() {
    if (batch.isPresent()) {
      return Overages.Batch.TOLD;
    }
    return UnreadHead.has(file.source(), "batch")
        ? Overages.Batch.UNREADABLE
        : Overages.Batch.UNTOLD;
  }

  private Optional<List<Line>> finished(
      List<Lines.Drawn> drawn, Overages overages, Share stability) {
    List<Line> done = new ArrayList<>();
    for (Lines.Drawn line : drawn) {
      Share designed = line.share().orElseThrow();
      boolean rest = Lines.isRest(line);
      if (rest) {
        overages.restGivesWay(line.material(), designed);
      }
      Share share =
          rest
              ? designed.minus(stability)
              : designed.plus(overages.stability(line.material(), designed));
      if (share.isNegative()) {
        findings.add(
            Finding.error(
                    PremixResolver.NO_ROOM_LEFT,
                    line.written().share().span(),
                    "overage for stability leaves no room for rest")
                .helping("lower another line"));
        return Optional.empty();
      }
      done.add(
          new Line(
              done.size(),
              line.place(),
              line.material(),
              designed,
              share,
              overages.handling(line.material(), share, designed),
              overages.kgPerWeighing(line.material(), designed),
              rest,
              line.written().within(),
              line.written().subject().span(),
              line.written().share().span()));
    }
    overages.report();
    return Optional.of(done);
  }
}
