package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedLines;
import dev.pellucid.slip.Place;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.ProfileFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.LabelLine;
import dev.pellucid.syntax.LimitLine;
import dev.pellucid.syntax.Opening;
import dev.pellucid.syntax.OverageLine;
import dev.pellucid.syntax.ProcessLine;
import dev.pellucid.syntax.Section;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.syntax.ShareLine;
import dev.pellucid.syntax.SupplyLine;
import dev.pellucid.syntax.WaiverLine;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.antlr.v4.runtime.ParserRuleContext;
import org.jspecify.annotations.Nullable;

/** The sections of one file as they are opened, each with the rule that its lines follow. */
final class Sections {
  private final LineReader reader;
  private final PlainLines plain;
  private final LimitLines limitLines;
  private final ProcessLines processLines;
  private final List<OpenSection<?>> opened = new ArrayList<>();

  private @Nullable OpenSection<ShareLine> mix;
  private @Nullable OpenSection<ShareLine> carrier;
  private @Nullable OpenSection<ShareLine> coat;
  private @Nullable OpenSection<SupplyLine> supply;
  private @Nullable OpenSection<OverageLine> overage;
  private @Nullable OpenSection<LimitLine> limits;
  private @Nullable OpenSection<WaiverLine> waivers;
  private @Nullable OpenSection<ProcessLine> process;
  private @Nullable OpenSection<LabelLine> label;

  Sections(LineReader reader, Pieces pieces) {
    Bounds bounds = new Bounds(pieces);
    this.reader = reader;
    this.plain = new PlainLines(pieces, bounds);
    this.limitLines = new LimitLines(pieces, bounds);
    this.processLines = new ProcessLines(pieces);
  }

  /** Those opened so far, in the order of the file. */
  List<OpenSection<?>> opened() {
    return opened;
  }

  Optional<OpenSection<?>> find(SectionWord word) {
    for (OpenSection<?> section : opened) {
      if (section.word() == word) {
        return Optional.of(section);
      }
    }
    return Optional.empty();
  }

  /** Opens a section that is not open yet. */
  OpenSection<?> open(SectionWord word, Span heading) {
    OpenSection<?> section = start(word, heading);
    opened.add(section);
    return section;
  }

  private OpenSection<?> start(SectionWord word, Span heading) {
    return switch (word) {
      case MIX -> {
        mix = section(word, heading, FeedLines::shareLine, plain::share);
        yield mix;
      }
      case CARRIER -> {
        carrier = section(word, heading, FeedLines::shareLine, plain::share);
        yield carrier;
      }
      case COAT -> {
        coat = section(word, heading, FeedLines::shareLine, plain::share);
        yield coat;
      }
      case SUPPLY -> {
        supply = section(word, heading, FeedLines::supplyLine, plain::supply);
        yield supply;
      }
      case OVERAGE -> {
        overage = section(word, heading, FeedLines::overageLine, plain::overage);
        yield overage;
      }
      case LIMITS -> {
        limits = section(word, heading, FeedLines::limitLine, limitLines::limit);
        yield limits;
      }
      case WAIVERS -> {
        waivers = section(word, heading, FeedLines::waiverLine, limitLines::waiver);
        yield waivers;
      }
      case PROCESS -> {
        process = processSection(word, heading);
        yield process;
      }
      case LABEL -> {
        label = section(word, heading, FeedLines::labelLine, plain::label);
        yield label;
      }
    };
  }

  /** The rule that the lines of a section follow. */
  static Function<FeedLines, ? extends ParserRuleContext> rule(SectionWord word) {
    return switch (word) {
      case MIX, CARRIER, COAT -> FeedLines::shareLine;
      case SUPPLY -> FeedLines::supplyLine;
      case OVERAGE -> FeedLines::overageLine;
      case LIMITS -> FeedLines::limitLine;
      case WAIVERS -> FeedLines::waiverLine;
      case PROCESS -> FeedLines::processLine;
      case LABEL -> FeedLines::labelLine;
    };
  }

  private <C extends ParserRuleContext, L> OpenSection<L> section(
      SectionWord word, Span heading, Function<FeedLines, C> rule, Function<C, L> build) {
    Place place = Place.of(word);
    return new OpenSection<>(word, heading, line -> reader.read(place, line, rule, build));
  }

  private OpenSection<ProcessLine> processSection(SectionWord word, Span heading) {
    return new OpenSection<>(
        word,
        heading,
        line ->
            reader
                .read(Place.PROCESS, line, FeedLines::processLine, processLines::process)
                .flatMap(Function.identity()));
  }

  RecipeFile recipe(SourceFile source, Optional<Opening> opening, List<HeadLine.OfRecipe> head) {
    return new RecipeFile(
        source,
        opening,
        head,
        closed(mix),
        closed(coat),
        closed(overage),
        closed(limits),
        closed(waivers),
        closed(process),
        closed(label));
  }

  PremixFile premix(SourceFile source, Optional<Opening> opening, List<HeadLine.OfPremix> head) {
    return new PremixFile(
        source,
        opening,
        head,
        closed(supply),
        closed(mix),
        closed(carrier),
        closed(overage),
        closed(process));
  }

  ProfileFile profile(SourceFile source, Optional<Opening> opening, List<HeadLine.OfProfile> head) {
    return new ProfileFile(source, opening, head, closed(limits));
  }

  private static <L> Optional<Section<L>> closed(@Nullable OpenSection<L> section) {
    return section == null ? Optional.empty() : Optional.of(section.closed());
  }
}
