package dev.pellucid.syntax;

import dev.pellucid.text.SourceFile;
import java.util.List;
import java.util.Optional;

/** The tree of one file. What could not be read is absent, and a finding has said so. */
public sealed interface FeedFile {
  SourceFile source();

  /** The opening line; absent when it could not be read. */
  Optional<Opening> opening();

  List<? extends HeadLine> head();

  /** A {@code .recipe} file. */
  record RecipeFile(
      SourceFile source,
      Optional<Opening> opening,
      List<HeadLine.OfRecipe> head,
      Optional<Section<ShareLine>> mix,
      Optional<Section<ShareLine>> coat,
      Optional<Section<OverageLine>> overage,
      Optional<Section<LimitLine>> limits,
      Optional<Section<WaiverLine>> waivers,
      Optional<Section<ProcessLine>> process,
      Optional<Section<LabelLine>> label)
      implements FeedFile {
    public RecipeFile {
      head = List.copyOf(head);
    }
  }

  /** A {@code .premix} file: {@code supply} and {@code carrier}, or {@code mix}. */
  record PremixFile(
      SourceFile source,
      Optional<Opening> opening,
      List<HeadLine.OfPremix> head,
      Optional<Section<SupplyLine>> supply,
      Optional<Section<ShareLine>> mix,
      Optional<Section<ShareLine>> carrier,
      Optional<Section<OverageLine>> overage,
      Optional<Section<ProcessLine>> process)
      implements FeedFile {
    public PremixFile {
      head = List.copyOf(head);
    }
  }

  /** A {@code .limits} file. */
  record ProfileFile(
      SourceFile source,
      Optional<Opening> opening,
      List<HeadLine.OfProfile> head,
      Optional<Section<LimitLine>> limits)
      implements FeedFile {
    public ProfileFile {
      head = List.copyOf(head);
    }
  }
}
