package dev.pellucid.text;

/**
 * How files are called for whoever reads what is printed. Inside, each path is below the folder of
 * feeds; a printer puts before it what leads to that folder from where its reader stands.
 *
 * @param before what is printed before each path, with its last {@code /}; may be empty
 */
public record PrintedPaths(String before) {
  /** For a reader who stands in the folder of feeds. */
  public static final PrintedPaths BELOW_FOLDER = new PrintedPaths("");

  public PrintedPaths {
    before = Unseen.shownOnOneLine(before);
    if (!before.isEmpty() && !before.endsWith("/")) {
      throw new IllegalArgumentException("not the way to a folder: " + before);
    }
  }

  /**
   * {@code recipes/catfish/CG-36.recipe}; a file that comes with this program keeps its mark, one
   * of an earlier commit has it before all else: {@code 9c71e80d12:recipes/catfish/CG-36.recipe}.
   */
  public String of(String path) {
    if (PastPath.is(path)) {
      return PastPath.of(PastPath.commit(path), of(PastPath.below(path)));
    }
    return BundledPath.is(path) ? path : before + path;
  }

  /** {@code recipes/catfish/CG-36.recipe}. */
  public String of(SourceFile file) {
    return of(file.path());
  }

  /** {@code recipes/catfish/CG-36.recipe:13:3}. */
  public String place(Span span) {
    return of(span.place());
  }
}
