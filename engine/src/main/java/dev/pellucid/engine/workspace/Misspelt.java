package dev.pellucid.engine.workspace;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where a name is declared that nothing uses, and that is like one which is used and not declared:
 * there the slip was made.
 */
final class Misspelt {
  private static final List<String> FOLDERS = List.of("nutrients/");
  private static final List<String> FILES = List.of("sources.yaml", "groups.yaml");

  private Misspelt() {}

  /** Of names that are used and not declared, those for which there is such a place. */
  static Map<String, Span> of(Collection<String> unknown, Shared shared) {
    Set<String> declared = new TreeSet<>(shared.tables().nutrients().names());
    declared.addAll(shared.tables().groups().keySet());
    declared.addAll(shared.tables().sources().keySet());
    Map<String, Span> places = new HashMap<>();
    for (String name : unknown) {
      List<Span> unused = new ArrayList<>();
      for (String near : NearNames.of(name, declared)) {
        place(near, shared.texts()).ifPresent(unused::add);
      }
      if (unused.size() == 1) {
        places.put(name, unused.get(0));
      }
    }
    return places;
  }

  /** The declaration of a name, where it is the only place at which that stands. */
  private static Optional<Span> place(String name, Texts texts) {
    Span found = null;
    for (SourceFile file : all(texts)) {
      int at = next(name, file.text(), 0);
      while (at >= 0) {
        if (found != null || !declares(file, at, name)) {
          return Optional.empty();
        }
        found = file.span(at, at + name.length());
        at = next(name, file.text(), at + 1);
      }
    }
    return Optional.ofNullable(found);
  }

  private static List<SourceFile> all(Texts texts) {
    List<String> paths = new ArrayList<>(texts.data());
    for (String kind : List.of(Trees.PREMIX, Trees.PROFILE, Trees.RECIPE)) {
      paths.addAll(texts.ending(kind));
    }
    List<SourceFile> files = new ArrayList<>();
    for (String path : paths) {
      texts.read(path, new ArrayList<>()).ifPresent(files::add);
    }
    return files;
  }

  /** Where it stands next as a whole word; -1 where it does not. */
  private static int next(String name, String text, int from) {
    int at = text.indexOf(name, from);
    while (at >= 0) {
      boolean begins = at == 0 || !isOfName(text.charAt(at - 1));
      int end = at + name.length();
      boolean ends = end == text.length() || !isOfName(text.charAt(end));
      if (begins && ends) {
        return at;
      }
      at = text.indexOf(name, at + 1);
    }
    return -1;
  }

  private static boolean isOfName(char c) {
    return Character.isLetterOrDigit(c) || c == '-';
  }

  /** Whether it is a key in column 1 of a file that declares names. */
  private static boolean declares(SourceFile file, int at, String name) {
    boolean declaring =
        FILES.contains(file.path()) || FOLDERS.stream().anyMatch(file.path()::startsWith);
    boolean columnOne = at == 0 || file.text().charAt(at - 1) == '\n';
    int end = at + name.length();
    return declaring && columnOne && end < file.text().length() && file.text().charAt(end) == ':';
  }
}
