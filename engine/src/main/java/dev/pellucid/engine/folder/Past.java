package dev.pellucid.engine.folder;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * How a folder was in earlier commits. Where these are kept, and how they are had from there, is
 * for others to know; what cannot be had is told in words and never an exception.
 */
public interface Past {
  /** Of a folder that no version control keeps. */
  Past NONE = new None();

  /** Whether a version control keeps the folder at all, so that a commit of it can be named. */
  boolean isKept();

  /**
   * The folder in some commits.
   *
   * @param commits as they are written, each in hexadecimal digits, perhaps shortened
   * @param read which files are wanted, by their paths below the folder; others need not be there
   * @return what is known of each
   */
  Map<String, Then> at(Collection<String> commits, Predicate<String> read);

  /**
   * How the files of a place below the folder were written in every commit that changed one.
   *
   * @param place the name of a folder, without a slash at its end
   */
  History history(String place);

  /**
   * The folder in a commit, with the data under it that came along then.
   *
   * @param texts absent where they cannot be had
   * @param doubt in words that stand behind a colon: why they cannot be had, or what of them may be
   *     otherwise; empty for none
   * @param help what to do about that; may be empty
   */
  record Then(Optional<Texts> texts, String doubt, String help) {
    public static Then of(Texts texts) {
      return new Then(Optional.of(texts), "", "");
    }

    /** One that cannot be had. */
    public static Then gone(String why, String help) {
      return new Then(Optional.empty(), why, help);
    }
  }

  /**
   * What was written at a place.
   *
   * @param written the oldest first; of two that are in no order, either
   * @param doubt in words that stand behind a colon: why it is not whole; empty where it is
   */
  record History(List<Written> written, String doubt) {
    public static final History NONE = new History(List.of(), "");

    public History {
      written = List.copyOf(written);
    }
  }

  /**
   * A file as a commit wrote it.
   *
   * @param path below the folder
   * @param commit its name, shortened
   * @param text empty where the commit took the file away
   */
  record Written(String path, String commit, Optional<String> text) {}

  /** Knows nothing. */
  final class None implements Past {
    private None() {}

    @Override
    public boolean isKept() {
      return false;
    }

    @Override
    public Map<String, Then> at(Collection<String> commits, Predicate<String> read) {
      Map<String, Then> gone = new HashMap<>();
      commits.forEach(
          one ->
              gone.put(
                  one,
                  Then.gone(
                      "no version control is known here that keeps the folder",
                      "run this where the folder is under git")));
      return gone;
    }

    @Override
    public History history(String place) {
      return History.NONE;
    }
  }
}
