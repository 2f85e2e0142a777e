package dev.pellucid.syntax;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The three kinds of file, told apart by the end of the file's name. */
public enum FileKind {
  RECIPE(
      ".recipe",
      SectionWord.MIX,
      SectionWord.COAT,
      SectionWord.OVERAGE,
      SectionWord.LIMITS,
      SectionWord.WAIVERS,
      SectionWord.PROCESS,
      SectionWord.LABEL),
  PREMIX(
      ".premix",
      SectionWord.SUPPLY,
      SectionWord.MIX,
      SectionWord.CARRIER,
      SectionWord.OVERAGE,
      SectionWord.PROCESS),
  PROFILE(".limits", SectionWord.LIMITS);

  private final String extension;
  private final Set<SectionWord> sections;

  FileKind(String extension, SectionWord first, SectionWord... more) {
    this.extension = extension;
    this.sections = EnumSet.of(first, more);
  }

  /** The word that opens the file: {@code recipe}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** With its point: {@code .recipe}. */
  public String extension() {
    return extension;
  }

  /** Whether such a file may have this section. */
  public boolean has(SectionWord section) {
    return sections.contains(section);
  }

  /** The sections that such a file may have, in the order in which we show them. */
  public Set<SectionWord> sections() {
    return EnumSet.copyOf(sections);
  }

  /** The words that lines of the head begin with, in the order in which we show them. */
  public List<String> headWords() {
    return switch (this) {
      case RECIPE -> List.of("status", "species", "fish", "habit", "plant", "meets", "batch");
      case PREMIX -> List.of("dose", "status", "species", "plant");
      case PROFILE ->
          List.of(
              "species",
              "materials",
              "fish",
              "kind",
              "jurisdiction",
              "source",
              "status",
              "holds",
              "must");
    };
  }

  /** The kind of a file by its name or path; empty when it is none of ours. */
  public static Optional<FileKind> of(String fileName) {
    for (FileKind kind : values()) {
      if (fileName.endsWith(kind.extension)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
