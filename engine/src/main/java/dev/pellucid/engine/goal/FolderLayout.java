package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.finding.Finding;
import dev.pellucid.format.Formatter;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Lexing;
import dev.pellucid.text.Plural;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The layout of a folder's recipes, premixes and profiles: which files are not laid out as the
 * formatter would, and what they would be.
 *
 * @param files how many were looked at
 * @param changes the files that would change
 * @param leftAlone paths of files with findings of syntax, which are left as they are
 * @param refused paths of files that the formatter could not lay out without changing more than
 *     white space, which is a fault of the formatter
 */
public record FolderLayout(
    int files, List<Change> changes, List<String> leftAlone, List<String> refused) {
  private static final List<String> KINDS = List.of(".recipe", ".premix", ".limits");

  public FolderLayout {
    changes = List.copyOf(changes);
    leftAlone = List.copyOf(leftAlone);
    refused = List.copyOf(refused);
  }

  /** How many files are laid out as they should be. */
  public int inOrder() {
    return files - changes.size() - leftAlone.size() - refused.size();
  }

  /** One line for the end of a run: how many files are off. */
  public String tally() {
    return Plural.of(changes.size(), "file") + " of " + files + " not laid out";
  }

  /** Whether this is a folder of feeds at all: it has settings. */
  public static boolean isFeedFolder(Path root) {
    return Texts.holds(root, Texts.SETTINGS);
  }

  /** A file and its text as it would be laid out. */
  public record Change(SourceFile source, String laidOut) {}

  /** Looks at a folder and writes nothing. */
  public static FolderLayout of(Path root) throws IOException {
    Texts folder = Texts.at(root);
    Formatter formatter = new Formatter(Lexing::lexemes);
    List<Change> changes = new ArrayList<>();
    List<String> leftAlone = new ArrayList<>();
    List<String> refused = new ArrayList<>();
    int files = 0;
    for (String kind : KINDS) {
      for (String path : folder.ending(kind)) {
        files++;
        List<Finding> findings = new ArrayList<>();
        Optional<SourceFile> text = folder.read(path, findings);
        boolean readable =
            text.isPresent()
                && findings.isEmpty()
                && FeedParser.parse(text.get()).findings().isEmpty();
        if (!readable) {
          leftAlone.add(path);
          continue;
        }
        Optional<String> laidOut = formatter.format(text.get());
        if (laidOut.isEmpty()) {
          refused.add(path);
        } else if (!laidOut.get().equals(text.get().text())) {
          changes.add(new Change(text.get(), laidOut.get()));
        }
      }
    }
    return new FolderLayout(files, changes, leftAlone, refused);
  }

  /** Writes every change into the folder. */
  public void write(Path root) throws IOException {
    Outputs outputs = Outputs.over(root);
    for (Change change : changes) {
      outputs.write(change.source().path(), change.laidOut());
    }
  }
}
