package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedLines.LabelLineContext;
import dev.pellucid.parse.generated.FeedLines.LimitLineContext;
import dev.pellucid.parse.generated.FeedLines.OverageLineContext;
import dev.pellucid.parse.generated.FeedLines.ProcessLineContext;
import dev.pellucid.parse.generated.FeedLines.ShareLineContext;
import dev.pellucid.parse.generated.FeedLines.SupplyLineContext;
import dev.pellucid.parse.generated.FeedLines.WaiverLineContext;
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

  /** The one that was opened with a word, if any was. */
  @Nullable OpenSection<?> find(SectionWord word) {
    for (OpenSection<?> section : opened) {
      if (section.word() == word) {
        return section;
      }
    }
    return null;
  }

  boolean has(SectionWord word) {
    return find(word) != null;
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
        mix = shares(word, heading);
        yield mix;
      }
      case CARRIER -> {
        carrier = shares(word, heading);
        yield carrier;
      }
      case COAT -> {
        coat = shares(word, heading);
        yield coat;
      }
      case SUPPLY -> {
        supply = supplySection(heading);
        yield supply;
      }
      case OVERAGE -> {
        overage = overageSection(heading);
        yield overage;
      }
      case LIMITS -> {
        limits = limitSection(heading);
        yield limits;
      }
      case WAIVERS -> {
        waivers = waiverSection(heading);
        yield waivers;
      }
      case PROCESS -> {
        process = processSection(heading);
        yield process;
      }
      case LABEL -> {
        label = labelSection(heading);
        yield label;
      }
    };
  }

  private OpenSection<ShareLine> shares(SectionWord word, Span heading) {
    return new OpenSection<>(reader, word, heading) {
      @Override
      ShareLine record(ParserRuleContext line) {
        return plain.share((ShareLineContext) line);
      }
    };
  }

  private OpenSection<SupplyLine> supplySection(Span heading) {
    return new OpenSection<>(reader, SectionWord.SUPPLY, heading) {
      @Override
      SupplyLine record(ParserRuleContext line) {
        return plain.supply((SupplyLineContext) line);
      }
    };
  }

  private OpenSection<OverageLine> overageSection(Span heading) {
    return new OpenSection<>(reader, SectionWord.OVERAGE, heading) {
      @Override
      OverageLine record(ParserRuleContext line) {
        return plain.overage((OverageLineContext) line);
      }
    };
  }

  private OpenSection<LimitLine> limitSection(Span heading) {
    return new OpenSection<>(reader, SectionWord.LIMITS, heading) {
      @Override
      LimitLine record(ParserRuleContext line) {
        return limitLines.limit((LimitLineContext) line);
      }
    };
  }

  private OpenSection<WaiverLine> waiverSection(Span heading) {
    return new OpenSection<>(reader, SectionWord.WAIVERS, heading) {
      @Override
      WaiverLine record(ParserRuleContext line) {
        return limitLines.waiver((WaiverLineContext) line);
      }
    };
  }

  private OpenSection<ProcessLine> processSection(Span heading) {
    return new OpenSection<>(reader, SectionWord.PROCESS, heading) {
      @Override
      @Nullable ProcessLine record(ParserRuleContext line) {
        return processLines.process((ProcessLineContext) line);
      }
    };
  }

  private OpenSection<LabelLine> labelSection(Span heading) {
    return new OpenSection<>(reader, SectionWord.LABEL, heading) {
      @Override
      LabelLine record(ParserRuleContext line) {
        return plain.label((LabelLineContext) line);
      }
    };
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
