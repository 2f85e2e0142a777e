package dev.pellucid.engine;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Parsed;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.syntax.FeedFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The recipes, premixes and profiles of a folder as trees, read when they are asked for. */
final class FeedTrees {
  private final Texts folder;

  FeedTrees(Texts folder) {
    this.folder = folder;
  }

  /** Every file of a kind; one that cannot be read stands there without a line. */
  <F extends FeedFile> List<F> all(String extension, Class<F> kind, List<Finding> found) {
    List<F> files = new ArrayList<>();
    for (String path : folder.ending(extension)) {
      FeedFile file = read(path, found).orElseGet(() -> unread(path));
      files.add(kind.cast(file));
    }
    return files;
  }

  /** The code of every recipe and where it is declared. */
  Map<String, Span> codes() {
    TreeMap<String, Span> codes = new TreeMap<>();
    for (String path : folder.ending(".recipe")) {
      SourceFile named = new SourceFile(path, "");
      codes.put(named.stem(), named.beginning());
    }
    return codes;
  }

  /** The tree of a recipe; empty after a finding where it cannot be read. */
  Optional<RecipeFile> recipe(String path, List<Finding> found) {
    return read(path, found).map(RecipeFile.class::cast);
  }

  /** The path of the recipe of a code. */
  Optional<String> path(String code) {
    return folder.ending(".recipe").stream()
        .filter(path -> new SourceFile(path, "").stem().equals(code))
        .findFirst();
  }

  private Optional<FeedFile> read(String path, List<Finding> found) {
    List<Finding> aboutFile = new ArrayList<>();
    Optional<SourceFile> text = folder.read(path, aboutFile);
    if (text.isEmpty()) {
      found.addAll(aboutFile);
      return Optional.empty();
    }
    Parsed parsed = FeedParser.parse(new SourceBytes.Decoded(text.get(), aboutFile));
    found.addAll(parsed.findings());
    return Optional.of(parsed.file());
  }

  /** Stands in for a file that is there and cannot be read, so that its name is not unknown. */
  private static FeedFile unread(String path) {
    return FeedParser.parse(new SourceFile(path, "")).file();
  }
}
