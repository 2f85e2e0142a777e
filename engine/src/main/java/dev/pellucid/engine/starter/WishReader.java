package dev.pellucid.engine.starter;

import dev.pellucid.text.Blanks;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.Sentence;
import dev.pellucid.text.Unseen;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What was typed to wishes; a sentence for each slip. */
public final class WishReader {
  /** Whose law comes with the program, and nobody's. */
  private static final List<String> JURISDICTIONS = List.of("none", "EU");

  private static final String SPECIES = "common-carp";
  private static final String CURRENCY = "EUR";
  private static final String NAMELESS = "Feeds";
  private static final int LONGEST_NAME = 80;

  private final List<String> known;
  private final List<String> slips = new ArrayList<>();

  /**
   * A reader.
   *
   * @param known every species that there are templates of
   */
  public WishReader(List<String> known) {
    this.known = List.copyOf(known);
  }

  /**
   * As it was typed; empty where nothing was.
   *
   * @param folder what the folder is called on the disk
   */
  public record Typed(
      String species, String jurisdiction, String currency, String name, String folder) {}

  /** What is wished; where there are slips, their sentences and no wishes. */
  public record Read(Optional<Wishes> wishes, List<String> slips) {
    public Read {
      slips = List.copyOf(slips);
    }
  }

  public Read read(Typed typed, LocalDate day, String version) {
    Wishes wishes =
        new Wishes(
            species(typed.species().strip()),
            jurisdiction(typed.jurisdiction().strip()),
            currency(typed.currency().strip()),
            typed.name().isBlank() ? madeFit(typed.folder()) : name(typed.name()),
            day,
            version);
    return slips.isEmpty()
        ? new Read(Optional.of(wishes), slips)
        : new Read(Optional.empty(), slips);
  }

  private String species(String typed) {
    if (typed.isEmpty()) {
      return SPECIES;
    }
    String word = typed.toLowerCase(Locale.ROOT).replace(' ', '-');
    if (!known.contains(word)) {
      List<String> near = NearNames.of(word, known);
      slip(
          "pellucid.species is "
              + typed
              + ", and there is no starter feed for it; "
              + Meant.question(near.isEmpty() ? NearNames.holding(word, known) : near)
                  .map(question -> question + " There are ")
                  .orElse("there are ")
              + Choices.all(known)
              + "; for another species take one that is like it, and change its files");
    }
    return word;
  }

  private String jurisdiction(String typed) {
    for (String one : JURISDICTIONS) {
      if (typed.equalsIgnoreCase(one)) {
        return one;
      }
    }
    if (!typed.isEmpty()) {
      slip(
          "pellucid.jurisdiction is "
              + typed
              + ", and no law of it comes with this program; write "
              + Choices.of(JURISDICTIONS)
              + ", or begin with none and add files of law to law/");
    }
    return JURISDICTIONS.get(0);
  }

  private String currency(String typed) {
    if (typed.isEmpty()) {
      return CURRENCY;
    }
    if (!typed.matches("[A-Z]{3}")) {
      slip("pellucid.currency is " + typed + "; write three capital letters, as in EUR or NGN");
    }
    return typed;
  }

  private String name(String typed) {
    String name = Blanks.plain(typed);
    if (Unseen.find(name, 0) >= 0 || name.contains("\n") || name.contains("\r")) {
      slip("pellucid.name holds what cannot be seen: " + name + "; write it anew, on one line");
    } else if (name.length() > LONGEST_NAME) {
      slip("pellucid.name is longer than " + LONGEST_NAME + " letters; write a shorter one");
    }
    return name;
  }

  /** A folder may be called what no line of a file can say. */
  private static String madeFit(String folder) {
    StringBuilder fit = new StringBuilder();
    int at = 0;
    while (at < folder.length() && fit.length() < LONGEST_NAME - 1) {
      int length = Unseen.length(folder, at);
      boolean seen = Unseen.find(folder, at, at + length) != at && folder.codePointAt(at) >= ' ';
      fit.append(seen ? folder.substring(at, at + length) : " ");
      at += length;
    }
    String name = Blanks.plain(fit.toString()).replaceAll(" +", " ");
    return name.codePoints().anyMatch(Character::isLetterOrDigit) ? name : NAMELESS;
  }

  private void slip(String sentence) {
    slips.add(Sentence.of(sentence));
  }
}
