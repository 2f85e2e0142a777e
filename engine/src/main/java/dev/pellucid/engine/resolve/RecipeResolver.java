package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchBasis;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import dev.pellucid.engine.resolve.ResolvedRecipe.Met;
import dev.pellucid.engine.resolve.ResolvedRecipe.Reviewed;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.LimitLine;
import dev.pellucid.syntax.OverageLine;
import dev.pellucid.syntax.ProcessLine;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Step;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A recipe file to a resolved recipe. It is absent where its figures could only mislead: a broken
 * line in mix, coat or process, an unknown ingredient or plant, a total that is off.
 */
final class RecipeResolver {
  static final Code UNKNOWN_PROFILE = new Code("unknown-profile");
  static final Code NOTHING_TO_MEET = new Code("nothing-to-meet");
  static final Code NOTHING_TO_COAT = new Code("nothing-to-coat");
  static final Code NO_LAW = new Code("no-law");
  static final Code NO_NEED = new Code("need-missing");
  static final Code MEETS_TWICE = new Code("meets-twice");
  static final Code NO_LAW_FOR_SPECIES = new Code("species-without-law");

  private static final String MEETS = "meets";

  private final RecipeFile file;
  private final Lookup lookup;
  private final String code;
  private final List<Finding> findings = new ArrayList<>();
  private final Limits limits;
  private final List<Met> profiles = new ArrayList<>();

  private String status = "draft";
  private Optional<Reviewed> reviewed = Optional.empty();
  private Optional<Species> species = Optional.empty();
  private Optional<Range> fish = Optional.empty();
  private Optional<Word> habit = Optional.empty();
  private Optional<BatchSize> batch = Optional.empty();
  private Optional<Word> plant = Optional.empty();
  private boolean profileUnknown;

  RecipeResolver(RecipeFile file, Scope scope) {
    this.file = file;
    this.lookup = new Lookup(scope);
    this.code = file.source().stem();
    this.limits = new Limits(lookup, findings);
  }

  Resolution<ResolvedRecipe> resolve() {
    head();
    Optional<Plant> madeAt = new MadeAt(lookup, findings).of(plant);
    boolean plantUnknown = plant.isPresent() && madeAt.isEmpty();
    law();
    Optional<Passes> passes = passes();
    List<Limit> all = allLimits();
    Optional<Label> label =
        file.label().isPresent()
            ? Optional.of(new LabelLines(limits, findings).of(file.label().get()))
            : Optional.empty();
    Optional<List<Line>> lines = lines();
    Span declared =
        file.opening().isPresent() ? file.opening().get().name().span() : file.source().beginning();
    boolean known = lookup.isFrameWhole();
    if (known && needIsMissing()) {
      findings.add(LostDemands.need(lookup, code, species, declared));
    } else if (all.isEmpty() && known) {
      findings.add(
          Finding.warning(NOTHING_TO_MEET, declared, code + " has no limit to meet")
              .helping("name a profile with meets, or write limits of its own"));
    }
    if (!known || plantUnknown || lines.isEmpty() || passes.isEmpty()) {
      return new Resolution<>(Optional.empty(), findings, lookup.reads());
    }
    ResolvedRecipe recipe =
        new ResolvedRecipe(
            file.source(),
            code,
            title(),
            status,
            reviewed,
            species,
            fish,
            habit,
            batch,
            madeAt,
            lines.get(),
            passes.get(),
            profiles,
            OwnSpecies.in(all, lines.get(), species),
            label,
            declared);
    return new Resolution<>(Optional.of(recipe), findings, lookup.reads());
  }

  private String title() {
    boolean told = file.opening().isPresent() && file.opening().get().title().isPresent();
    return told ? file.opening().get().title().get().text() : code;
  }

  /** A line that could not be read may be the one that says how hot or how dry. */
  private Optional<Passes> passes() {
    if (file.process().isPresent() && !file.process().get().whole()) {
      return Optional.empty();
    }
    List<ProcessLine> process =
        file.process().isPresent() ? file.process().get().lines() : List.of();
    if (file.coat().isEmpty()) {
      for (ProcessLine line : process) {
        if (line.step() == Step.COAT) {
          findings.add(nothingToCoat(line));
          break;
        }
      }
    }
    boolean coats = file.coat().isPresent() && !file.coat().get().lines().isEmpty();
    Optional<Span> coat = coats ? Optional.of(file.coat().get().heading()) : Optional.empty();
    return ProcessLines.passes(process, coat, findings);
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
    for (OverageLine line : overages()) {
      if (line.purpose().text().equals("stability")) {
        return true;
      }
    }
    return false;
  }

  private List<OverageLine> overages() {
    return file.overage().isPresent() ? file.overage().get().lines() : List.of();
  }

  private void head() {
    HeadLine.Recipe head =
        new HeadLine.Recipe(
            this::status,
            told -> species(told.species()),
            told -> fish = Optional.of(told.mass()),
            told -> habit = Optional.of(told.habit()),
            told -> profile(told.profile()),
            told -> batch = Optional.of(size(told)),
            told -> plant = Optional.of(told.plant()));
    for (HeadLine.OfRecipe line : file.head()) {
      line.into(head);
    }
  }

  private void status(HeadLine.Status told) {
    status = told.status().text();
    reviewed = told.review().flatMap(one -> Reviews.of(one, lookup.days().waivers(), findings));
  }

  private static BatchSize size(HeadLine.Batch told) {
    BatchBasis basis =
        told.basis().text().equals("finished") ? BatchBasis.FINISHED : BatchBasis.WEIGHED;
    return new BatchSize(told.mass().base(), basis, told.mass());
  }

  private void species(Word name) {
    species = Optional.ofNullable(lookup.frame().species().get(name.text()));
    if (species.isEmpty() && lookup.isFrameWhole()) {
      findings.add(
          Limits.near(
              Finding.error(
                  ProfileResolver.UNKNOWN_SPECIES,
                  name.span(),
                  name + " is not a species of this folder"),
              name,
              lookup.frame().species().keySet(),
              "add it under species/, or fix the name"));
    }
  }

  private void profile(Word name) {
    Optional<Profile> profile = lookup.profile(name.text());
    if (profile.isPresent()) {
      Optional<Met> before = met(profile.get());
      if (before.isPresent() && before.get().asked().isPresent()) {
        findings.add(
            Finding.warning(MEETS_TWICE, name.span(), "this recipe meets " + name + " twice")
                .seeing("first written", before.get().asked().get())
                .helping("take one out, or name the profile that was meant"));
        return;
      }
      profiles.add(new Met(profile.get(), Optional.of(name.span())));
      return;
    }
    profileUnknown = true;
    if (lookup.boundsMaterials(name.text())) {
      findings.add(
          Finding.error(
                  UNKNOWN_PROFILE,
                  name.span(),
                  name + " bounds raw materials, and no feed meets it")
              .helping(
                  "take the line out: lots and ingredients are held against it by themselves"));
      return;
    }
    findings.add(
        Limits.near(
            Finding.error(UNKNOWN_PROFILE, name.span(), name + " is not a profile of this folder"),
            name,
            lookup.profiles(),
            "add the file " + name + ".limits, or fix the name"));
  }

  /** What the jurisdiction asks, whatever the recipe says. */
  private void law() {
    boolean lawIsThere = false;
    boolean bound = false;
    for (Profile profile : lookup.binding()) {
      boolean holds = holds(profile);
      boolean law = profile.kind() == Limit.Kind.LAW;
      lawIsThere |= law;
      bound |= law && holds;
      if (holds && met(profile).isEmpty()) {
        profiles.add(new Met(profile, Optional.empty()));
      }
    }
    if (lawIsThere && !bound && species.isPresent() && isApproved() && lookup.isFrameWhole()) {
      findings.add(LostDemands.law(lookup, species.get()));
    }
  }

  private boolean isApproved() {
    return status.equals("approved");
  }

  private Optional<Met> met(Profile profile) {
    for (Met met : profiles) {
      if (met.profile().equals(profile)) {
        return Optional.of(met);
      }
    }
    return Optional.empty();
  }

  /** Of a recipe that tells no species only that holds which holds for every one of the folder. */
  private boolean holds(Profile profile) {
    if (species.isPresent()) {
      return profile.isFor(species.get());
    }
    for (Species one : lookup.frame().species().values()) {
      if (!profile.isFor(one)) {
        return false;
      }
    }
    return true;
  }

  /** Whether an approved recipe meets nothing that says what its fish need. */
  private boolean needIsMissing() {
    if (!isApproved() || profileUnknown || UnreadHead.mayHave(file.source(), MEETS, asked())) {
      return false;
    }
    for (Met met : profiles) {
      if (met.profile().kind() == Limit.Kind.NEED) {
        return false;
      }
    }
    return true;
  }

  private int asked() {
    int asked = 0;
    for (Met met : profiles) {
      asked += met.asked().isPresent() ? 1 : 0;
    }
    return asked;
  }

  private List<Limit> allLimits() {
    List<Profile> met = new ArrayList<>();
    for (Met one : profiles) {
      met.add(one.profile());
    }
    List<Limit> own = new ArrayList<>();
    if (file.limits().isPresent()) {
      for (LimitLine line : file.limits().get().lines()) {
        limits.add(line, Limit.Kind.RECIPE, code, Optional.empty(), own);
      }
    }
    MergedLimits ofProfiles = lookup.limitsOf(met);
    List<Limit> merged = ofProfiles.with(MergedLimits.once(own, findings), findings);
    if (!lookup.isFrameWhole()) {
      return merged;
    }
    List<Limit> waived =
        file.waivers().isEmpty()
            ? merged
            : new Waivers(limits, lookup.days().waivers(), findings)
                .applied(file.waivers().get().lines(), merged);
    return ofProfiles.withLawInForce(waived);
  }

  private Optional<List<Line>> lines() {
    if (file.mix().isEmpty()) {
      return Optional.empty();
    }
    Lines lines = new Lines(new Materials(lookup, findings), true, findings);
    lines.take(file.mix().get(), Place.MIX);
    if (file.coat().isPresent()) {
      lines.take(file.coat().get(), Place.COAT);
    }
    if (!lines.whole()) {
      if (!addsForStability()) {
        lines.addUp(file.mix().get().heading(), Share.ZERO);
      }
      return Optional.empty();
    }
    Overages overages = new Overages(overages(), batchSize(), findings);
    Share stability = Share.ZERO;
    for (Lines.Drawn line : lines.drawn()) {
      if (line.share().isPresent()) {
        stability = stability.plus(overages.stability(line.material(), line.share().get()));
      }
    }
    Optional<Share> left = lines.left(file.mix().get().heading(), stability);
    return left.isEmpty()
        ? Optional.empty()
        : finished(lines.drawn(), left.get(), overages, stability);
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
      List<Lines.Drawn> drawn, Share left, Overages overages, Share stability) {
    List<Line> done = new ArrayList<>(drawn.size());
    for (Lines.Drawn line : drawn) {
      Share designed = line.share().orElse(left);
      if (line.isRest()) {
        overages.restGivesWay(line.material(), designed);
      }
      Share share =
          line.isRest()
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
              line.isRest(),
              Line.Within.of(line.written()),
              line.isRest() ? Optional.empty() : Line.Step.of(line.written()),
              line.written().subject().span(),
              line.written().share().span()));
    }
    overages.report();
    return Optional.of(done);
  }
}
