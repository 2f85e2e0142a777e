package dev.pellucid.engine.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What was typed becomes wishes, or one sentence for each slip. */
class WishReaderTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static WishReader.Read read(
      String species, String jurisdiction, String currency, String name, String folder) {
    return new WishReader(List.of("african-catfish", "common-carp", "nile-tilapia"))
        .read(new WishReader.Typed(species, jurisdiction, currency, name, folder), DAY, "1.0");
  }

  private static String named(String folder) {
    return read("", "", "", "", folder).wishes().orElseThrow().name();
  }

  @Test
  void whereNothingIsTypedEverythingHasAValue() {
    assertEquals(
        Optional.of(new Wishes("common-carp", "none", "EUR", "Pond feeds", DAY, "1.0")),
        read("", "", "", "", "Pond feeds").wishes());
  }

  @Test
  void whatIsTypedCounts() {
    assertEquals(
        Optional.of(new Wishes("nile-tilapia", "EU", "NGN", "Sallow Mill", DAY, "1.0")),
        read(" Nile tilapia ", "eu", "NGN", "Sallow\u00a0Mill ", "x").wishes());
  }

  @Test
  void eachSlipHasASentenceThatSaysWhatToWrite() {
    assertEquals(
        List.of(
            "pellucid.species is carp, and there is no starter feed for it; did you mean"
                + " common-carp? There are african-catfish, common-carp and nile-tilapia; for"
                + " another species take one that is like it, and change its files",
            "pellucid.jurisdiction is USA, and no law of it comes with this program; write none or"
                + " EU, or begin with none and add files of law to law/",
            "pellucid.currency is euro; write three capital letters, as in EUR or NGN",
            "pellucid.name holds what cannot be seen: a<U+202E>b; write it anew, on one line"),
        read("carp", "USA", "euro", "a\u202eb", "x").slips());
    assertEquals(Optional.empty(), read("carp", "", "", "", "x").wishes());
  }

  @Test
  void whatIsLikeNothingIsAnsweredWithAllThereAre() {
    assertEquals(
        List.of(
            "pellucid.species is salmon, and there is no starter feed for it; there are"
                + " african-catfish, common-carp and nile-tilapia; for another species take one"
                + " that is like it, and change its files"),
        read("salmon", "", "", "", "x").slips());
  }

  @Test
  void anotherCurrencyThanThreeCapitalsIsASlip() {
    for (String typed : List.of("eur", "EU", "EURO", "€", "E1R")) {
      assertEquals(1, read("", "", typed, "", "x").slips().size(), typed);
    }
  }

  @Test
  void aFolderThatIsCalledOddlyIsMadeFit() {
    assertEquals("my feeds", named("my feeds"));
    assertEquals("Карп \"2\"", named("Карп \"2\""));
    assertEquals("a b c", named("a\u202eb\u0007\nc"));
    assertEquals("Feeds", named(""));
    assertEquals("Feeds", named("..."));
    assertEquals("Feeds", named("\u200b"));
    assertEquals(79, named("x".repeat(300)).length());
  }

  @Test
  void aNameOfManyLettersIsASlip() {
    assertEquals(
        List.of("pellucid.name is longer than 80 letters; write a shorter one"),
        read("", "", "", "x".repeat(81), "x").slips());
  }
}
