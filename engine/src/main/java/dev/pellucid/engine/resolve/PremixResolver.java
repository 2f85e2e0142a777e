package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.OverageLine;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.syntax.SupplyLine;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A premix file to the premix as it is made: content is supply over dose, a source weighs content
 * over potency, times one and its stability overage; the carrier's {@code rest} fills up to 100 %.
 */
final class PremixResolver {
  static final Code NO_DOSE = new Code("dose-missing");
  static final Code NOT_IN_SOURCE = new Code("source-lacks-nutrient");
  static final Code SUPPLIED_TWICE = new Code("supplied-twice");
  static final Code NO_ROOM_LEFT = new Code("no-room-left");
  static final Code INCOMPLETE = new Code("premix-incomplete");

  /** The part of all sources by which one of them is at fault: common sense, no source. */
  private static final double MOST = 0.6;

  private final PremixFile file;
  private final String code;
  private final List<Finding> findings = new ArrayList<>();
  private final Lookup lookup;
  private final Materials materials;
  private final Limits limits;
  private final boolean nutrientsAreKnown;
  private final List<ResolvedPremix.Supply> supplies = new ArrayList<>();

  PremixResolver(PremixFile file, Scope scope) {
    this.file = file;
    this.code = file.source().stem();
    this.lookup = new Lookup(scope);
    this.materials = new Materials(lookup, findings);
    this.limits = new Limits(lookup, findings);
    this.nutrientsAreKnown = lookup.isFrameWhole();
  }

  Resolution<ResolvedPremix> resolve() {
    Optional<ResolvedPremix> premix =
        file.opening().flatMap(opening -> make()).filter(one -> nutrientsAreKnown);
    return new Resolution<>(premix, findings, lookup.reads());
  }

  private Optional<ResolvedPremix> make() {
    Optional<Share> dose = dose();
    List<Source> sources = new ArrayList<>();
    boolean whole = file.supply().map(section -> section.whole()).orElse(true);
    if (file.supply().isPresent()) {
      if (dose.isEmpty() && hasUnreadDose()) {
        return Optional.empty();
      }
      if (dose.isEmpty()) {
        findings.add(
            Finding.error(
                    NO_DOSE,
                    file.opening().get().span(),
                    code + " supplies nutrients and has no dose")
                .helping("say how much of it goes into a kg of feed: dose 10 g/kg"));
        return Optional.empty();
      }
      Map<String, SupplyLine> seen = new HashMap<>();
      for (SupplyLine line : file.supply().get().lines()) {
        SupplyLine first = seen.putIfAbsent(line.nutrient().text(), line);
        if (first != null) {
          findings.add(
              Finding.error(
                      SUPPLIED_TWICE,
                      line.nutrient().span(),
                      line.nutrient() + " is supplied twice")
                  .seeing("first supplied", first.nutrient().span())
                  .helping("keep one of the two lines"));
          continue;
        }
        Optional<Source> source = source(line, dose.get());
        whole &= source.isPresent();
        source.ifPresent(sources::add);
      }
    }
    Lines lines = new Lines(materials, false, findings);
    file.mix().ifPresent(section -> lines.take(section, Place.MIX));
    file.carrier().ifPresent(section -> lines.take(section, Place.MIX));
    return whole && lines.whole() ? close(dose, sources, lines) : Optional.empty();
  }

  /** A line of supply as a part of the premix. */
  private record Source(Material material, Share designed, SupplyLine written) {}

  /** A dose that is written and could not be read has been spoken of. */
  private boolean hasUnreadDose() {
    return file.head().stream().allMatch(line -> line.doseTold().isEmpty())
        && UnreadHead.has(file.source(), "dose");
  }

  private Optional<Word> plantTold() {
    for (HeadLine.OfPremix line : file.head()) {
      if (line.plantTold().isPresent()) {
        return line.plantTold();
      }
    }
    return Optional.empty();
  }

  private Optional<Share> dose() {
    return file.head().stream()
        .flatMap(line -> line.doseTold().stream())
        .map(Lines::exact)
        .filter(Share::isPositive)
        .findFirst();
  }

  private Optional<Source> source(SupplyLine line, Share dose) {
    Optional<Nutrient> nutrient = limits.nutrient(line.nutrient());
    Optional<Material> material = materials.named(line.from());
    if (nutrient.isEmpty() || material.isEmpty()) {
      return Optional.empty();
    }
    if (line.amount().unit().kind() != nutrient.get().unit().kind()) {
      findings.add(
          Finding.error(
                  Limits.OTHER_KIND,
                  line.amount().unitAsWritten().span(),
                  nutrient.get().name()
                      + " is given in "
                      + nutrient.get().unit().symbol()
                      + ", not in "
                      + line.amount().unitAsWritten())
              .helping("use a unit like " + nutrient.get().unit().symbol()));
      return Optional.empty();
    }
    double potency = potency(material.get(), nutrient.get().name());
    if (potency <= 0) {
      findings.add(
          Finding.error(
                  NOT_IN_SOURCE,
                  line.from().span(),
                  line.from() + " holds no " + nutrient.get().name())
              .helping("name a source that holds it, or add its content to the ingredient"));
      return Optional.empty();
    }
    supplies.add(
        new ResolvedPremix.Supply(nutrient.get(), line.amount().base(), line.from().text(), line));
    BigDecimal wanted = BigDecimal.valueOf(line.amount().base());
    BigDecimal perPremix = BigDecimal.valueOf(potency).multiply(dose.percent().movePointLeft(2));
    return Optional.of(new Source(material.get(), Share.ratio(wanted, perPremix), line));
  }

  private static double potency(Material material, String nutrient) {
    return material.single().stream()
        .flatMap(single -> single.ingredient().contents().stream())
        .map(Ingredient.ContentBlock::byNutrient)
        .filter(byNutrient -> byNutrient.containsKey(nutrient))
        .mapToDouble(byNutrient -> byNutrient.get(nutrient).low())
        .findFirst()
        .orElse(0);
  }

  private Optional<ResolvedPremix> close(Optional<Share> dose, List<Source> sources, Lines lines) {
    List<OverageLine> rules = file.overage().map(section -> section.lines()).orElse(List.of());
    Overages overages = new Overages(rules, Overages.Batch.NOT_IN_PREMIX, findings);
    List<ResolvedPremix.Part> parts = new ArrayList<>();
    Share used = Share.ZERO;
    for (Source source : sources) {
      Share extra = overages.stability(source.material(), source.designed());
      Share share = source.designed().plus(extra);
      Share onTop = overages.handling(source.material(), share, source.designed());
      used = used.plus(share);
      parts.add(
          new ResolvedPremix.Part(
              source.material(), source.designed(), share, onTop, source.written().from().span()));
    }
    Share stability =
        parts.stream().map(p -> p.share().minus(p.designed())).reduce(Share.ZERO, Share::plus);
    Optional<List<ResolvedPremix.Part>> rest =
        lines.oneRestAtMost() ? rest(used, stability, lines, overages, sources) : Optional.empty();
    if (rest.isEmpty()) {
      return Optional.empty();
    }
    parts.addAll(rest.get());
    overages.report();
    Optional<Passes> told =
        ProcessLines.passes(
            file.process().map(section -> section.lines()).orElse(List.of()),
            Optional.empty(),
            findings);
    boolean read = file.process().map(section -> section.whole()).orElse(true);
    if (told.isPresent() && read) {
      new PremixKeeping(code, file.opening().get().name().span(), findings)
          .look(told.get(), parts.size(), !supplies.isEmpty());
    }
    Optional<Plant> plant = new MadeAt(lookup, findings).of(plantTold());
    return told.map(
        passes ->
            new ResolvedPremix(
                code,
                file.opening().get().title().map(title -> title.text()).orElse(code),
                dose,
                parts,
                supplies,
                keeping(passes),
                passes,
                plant,
                file.opening().get().name().span()));
  }

  private Optional<List<ResolvedPremix.Part>> rest(
      Share used, Share stabilityOfSources, Lines lines, Overages overages, List<Source> sources) {
    List<ResolvedPremix.Part> parts = new ArrayList<>();
    Share sum = used;
    Share stability = stabilityOfSources;
    Optional<Lines.Drawn> filler = Optional.empty();
    for (Lines.Drawn line : lines.drawn()) {
      if (line.isRest()) {
        filler = Optional.of(line);
        continue;
      }
      Share designed = line.share().get();
      Share share = designed.plus(overages.stability(line.material(), designed));
      Share onTop = overages.handling(line.material(), share, designed);
      sum = sum.plus(share);
      stability = stability.plus(share.minus(designed));
      parts.add(part(line, designed, share, onTop));
    }
    Share left = Share.WHOLE.minus(sum);
    if (filler.isPresent() && !left.isNegative()) {
      Share designed = left.plus(stability);
      overages.restGivesWay(filler.get().material(), designed);
      Share onTop = overages.handling(filler.get().material(), left, designed);
      parts.add(part(filler.get(), designed, left, onTop));
      return Optional.of(parts);
    }
    if (filler.isEmpty() && left.compareTo(Share.ZERO) == 0) {
      return Optional.of(parts);
    }
    findings.add(
        filler.isPresent()
            ? noRoom(used, sources, Figures.plain(sum.kgPer100()) + " %")
            : Finding.error(
                    Lines.TOTAL,
                    file.opening().get().name().span(),
                    "the parts of "
                        + code
                        + " add up to "
                        + Figures.plain(sum.kgPer100())
                        + " %, not to 100 %")
                .helping("write rest on the carrier"));
    return Optional.empty();
  }

  /** At the supply that takes up most of it, where one does; else the dose leaves too little. */
  private Finding noRoom(Share used, List<Source> sources, String sum) {
    for (Source one : sources) {
      double percent = one.designed().kgPer100();
      if (percent > MOST * used.kgPer100()) {
        return Finding.error(
                NO_ROOM_LEFT,
                one.written().amount().span(),
                "the sources of "
                    + code
                    + " come to "
                    + sum
                    + ", more than the premix holds; "
                    + one.material().name()
                    + " alone to "
                    + Figures.plain(percent)
                    + " %")
            .helping("lower this supply, raise the dose, or take a stronger source");
      }
    }
    Span place = file.opening().get().name().span();
    for (HeadLine.OfPremix line : file.head()) {
      place = line.doseTold().isPresent() ? line.doseTold().get().span() : place;
    }
    return Finding.error(
            NO_ROOM_LEFT,
            place,
            "the sources of " + code + " come to " + sum + ", more than the premix holds")
        .helping("raise the dose, or take stronger sources");
  }

  private static ResolvedPremix.Part part(
      Lines.Drawn line, Share designed, Share share, Share onTop) {
    return new ResolvedPremix.Part(
        line.material(), designed, share, onTop, line.written().subject().span());
  }

  private static Optional<ResolvedPremix.Keeping> keeping(Passes passes) {
    Optional<Setting> life = passes.setting(Step.STORE, Property.SHELF_LIFE);
    Optional<Setting> warmth = passes.setting(Step.STORE, Property.TEMPERATURE);
    return life.map(
        setting ->
            new ResolvedPremix.Keeping(
                setting.most(),
                warmth.map(Setting::most).orElse(25.0),
                setting.span(),
                warmth.orElse(setting).span()));
  }
}
