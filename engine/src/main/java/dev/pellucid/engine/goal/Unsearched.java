package dev.pellucid.engine.goal;

import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.RecordName;
import dev.pellucid.text.Unseen;

/** What could hold an answer and could not be searched. */
sealed interface Unsearched {
  /** Which it is and why, for a reader who knows files by these paths. */
  String sentence(PrintedPaths paths);

  /** Whether it may be the record of a batch, by its name. */
  default boolean isRecordOf(String number) {
    return false;
  }

  /**
   * A file or folder.
   *
   * @param path below the folder of feeds; empty for that folder itself
   * @param why as a sentence goes on behind the path
   */
  record File(String path, String why) implements Unsearched {
    @Override
    public String sentence(PrintedPaths paths) {
      String called = Unseen.shownOnOneLine(paths.of(path));
      return (called.isEmpty() ? "the folder itself" : called) + " " + why;
    }

    @Override
    public boolean isRecordOf(String number) {
      return RecordName.of(path.substring(path.lastIndexOf('/') + 1))
          .filter(name -> name.number().equalsIgnoreCase(number.strip()))
          .isPresent();
    }
  }

  /** A line of a record that names nothing that the folder has, so that it may be of any lot. */
  record Line(String path, String line) implements Unsearched {
    @Override
    public String sentence(PrintedPaths paths) {
      return Unseen.shownOnOneLine(paths.of(path))
          + " has a line "
          + Unseen.shownOnOneLine(line)
          + ", of which this folder knows nothing: it may be of any lot";
    }
  }

  /**
   * The recipe that a batch was made by, as it was then.
   *
   * @param why it cannot be had; may be empty
   */
  record RecipeThen(String batch, String why) implements Unsearched {
    @Override
    public String sentence(PrintedPaths paths) {
      return "the recipe of the day on which "
          + batch
          + " was made cannot be had"
          + (why.isEmpty() ? "" : ": " + why)
          + "; what its record leaves out is looked for in the recipe of today";
    }
  }

  /** A recipe or premix that no file tells of. */
  record Code(String code) implements Unsearched {
    @Override
    public String sentence(PrintedPaths paths) {
      return code + " has no recipe or premix that can be read";
    }
  }
}
