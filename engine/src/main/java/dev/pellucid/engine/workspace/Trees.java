package dev.pellucid.engine.workspace;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Parsed;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.syntax.FeedFile;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.ProfileFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The recipes, premixes and profiles of a folder as trees. Those of premixes and profiles are kept,
 * since all recipes share them; that of a recipe is made when it is asked for.
 */
public final class Trees {
  /** How a file of a recipe ends. */
  public static final String RECIPE = ".recipe";

  static final String PREMIX = ".premix";

  /** How a file of a profile ends. */
  public static final String PROFILE = ".limits";

  private final Texts texts;
  private final Map<String, Tree> shared = new LinkedHashMap<>();
  private final Map<String, String> byCode = new TreeMap<>();

  /**
   * A file and its tree.
   *
   * @param source of the text; a stand-in with the path alone where it cannot be read
   */
  record Tree(SourceFile source, Optional<FeedFile> file, List<Finding> findings) {
    Tree {
      findings = List.copyOf(findings);
    }
  }

  private Trees(Texts texts) {
    this.texts = texts;
    for (String path : texts.ending(RECIPE)) {
      byCode.putIfAbsent(stem(path), path);
    }
  }

  /** Whether a file is one that tells lines: a recipe or a premix. */
  public static boolean isOfLines(String path) {
    return path.endsWith(RECIPE) || path.endsWith(PREMIX);
  }

  /** Those of a folder. */
  public static Trees of(Texts texts) {
    return after(Optional.empty(), texts);
  }

  /** Those of a later state, in which the tree of a text that is the same object is the same. */
  static Trees after(Optional<Trees> earlier, Texts texts) {
    Trees trees = new Trees(texts);
    for (String kind : List.of(PREMIX, PROFILE)) {
      for (String path : texts.ending(kind)) {
        Optional<Tree> kept =
            earlier.isPresent()
                ? Optional.ofNullable(earlier.get().shared.get(path))
                : Optional.empty();
        trees.shared.put(path, read(texts, path, kept));
      }
    }
    return trees;
  }

  Texts texts() {
    return texts;
  }

  /** Every premix; one that cannot be read stands there without a line. */
  public List<PremixFile> premixes(List<Finding> found) {
    List<PremixFile> premixes = new ArrayList<>();
    for (FeedFile file : all(PREMIX, found)) {
      premixes.add(PremixFile.class.cast(file));
    }
    return premixes;
  }

  /** Every profile; one that cannot be read stands there without a line. */
  List<ProfileFile> profiles(List<Finding> found) {
    List<ProfileFile> profiles = new ArrayList<>();
    for (FeedFile file : all(PROFILE, found)) {
      profiles.add(ProfileFile.class.cast(file));
    }
    return profiles;
  }

  private List<FeedFile> all(String extension, List<Finding> found) {
    List<FeedFile> files = new ArrayList<>();
    for (Map.Entry<String, Tree> each : shared.entrySet()) {
      Tree tree = each.getValue();
      if (each.getKey().endsWith(extension)) {
        found.addAll(tree.findings());
        files.add(
            tree.file().isPresent() ? tree.file().get() : FeedParser.parse(tree.source()).file());
      }
    }
    return files;
  }

  /** The code of every recipe and where it is declared. */
  Map<String, Span> codes() {
    TreeMap<String, Span> codes = new TreeMap<>();
    for (String path : texts.ending(RECIPE)) {
      codes.put(stem(path), new SourceFile(path, "").beginning());
    }
    return codes;
  }

  /** The codes of every recipe. */
  public Set<String> recipes() {
    return Collections.unmodifiableSet(byCode.keySet());
  }

  /** The codes of every recipe and premix, sound or not. */
  Set<String> called() {
    Set<String> codes = new TreeSet<>(byCode.keySet());
    for (String path : texts.ending(PREMIX)) {
      codes.add(stem(path));
    }
    return codes;
  }

  /** The names of the files of profiles. */
  Set<String> profileNames() {
    Set<String> names = new TreeSet<>();
    texts.ending(PROFILE).forEach(path -> names.add(stem(path)));
    return names;
  }

  /** The path of the premix of each code, in the order of paths. */
  public Map<String, String> premixPaths() {
    Map<String, String> paths = new LinkedHashMap<>();
    for (String path : texts.ending(PREMIX)) {
      paths.put(stem(path), path);
    }
    return paths;
  }

  /** The path of the recipe of a code. */
  public Optional<String> path(String code) {
    return Optional.ofNullable(byCode.get(code));
  }

  /** The tree of a recipe; empty after a finding where it cannot be read. */
  public Optional<RecipeFile> recipe(String path, List<Finding> found) {
    Tree tree = read(texts, path, Optional.empty());
    found.addAll(tree.findings());
    return tree.file().isPresent()
        ? Optional.of(RecipeFile.class.cast(tree.file().get()))
        : Optional.empty();
  }

  /** What a file is called, without its place and its ending. */
  static String stem(String path) {
    return new SourceFile(path, "").stem();
  }

  private static Tree read(Texts texts, String path, Optional<Tree> kept) {
    List<Finding> aboutFile = new ArrayList<>();
    Optional<SourceFile> text = texts.read(path, aboutFile);
    if (text.isEmpty()) {
      return new Tree(new SourceFile(path, ""), Optional.empty(), aboutFile);
    }
    if (kept.isPresent() && kept.get().source() == text.get()) {
      return kept.get();
    }
    Parsed parsed = FeedParser.parse(new SourceBytes.Decoded(text.get(), aboutFile));
    return new Tree(text.get(), Optional.of(parsed.file()), parsed.findings());
  }
}
