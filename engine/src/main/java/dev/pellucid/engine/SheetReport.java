package dev.pellucid.engine;

import dev.pellucid.engine.folder.FeedFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What came of making batch sheets.
 *
 * @param check of the whole folder
 * @param sheets those of recipes, then those of premixes
 * @param withheld codes of recipes and premixes without a sheet, since their findings say that they
 *     must not be made as written
 * @param purchases what is to be bought for the batches that are planned; absent where none is
 */
public record SheetReport(
    CheckReport check, List<Sheet> sheets, List<String> withheld, Optional<Purchases> purchases) {
  private static final String LABEL = "-label";
  private static final String PURCHASES = "purchase-list";

  /** The purchase list, rendered. */
  public record Purchases(String text, String html) {}

  public SheetReport {
    sheets = List.copyOf(sheets);
    withheld = List.copyOf(withheld);
  }

  /** How many sheets, in words. */
  public String tally() {
    long premixes = sheets.stream().filter(Sheet::premix).count();
    String all = Counted.of(sheets.size(), "batch sheet");
    return premixes == 0 ? all : all + " (" + premixes + " of premixes)";
  }

  /** How many bag labels, in words; empty where there is none. */
  public Optional<String> labelTally() {
    long labels = sheets.stream().filter(sheet -> sheet.label().isPresent()).count();
    return labels == 0 ? Optional.empty() : Optional.of(Counted.of(labels, "bag label"));
  }

  /** Codes of the sheets that are stamped as drafts not to be made. */
  public List<String> drafts() {
    return sheets.stream().filter(Sheet::draft).map(Sheet::code).toList();
  }

  /**
   * Writes every sheet twice, as {@code CODE.txt} and as {@code CODE.html}, and its label beside it
   * as {@code CODE-label.txt} and {@code CODE-label.html}, and the purchase list; takes away older
   * ones of what must not be made now.
   */
  public void write(Path to) throws IOException {
    for (Sheet sheet : sheets) {
      FeedFolder.write(to.resolve(sheet.code() + ".txt"), sheet.text());
      FeedFolder.write(to.resolve(sheet.code() + ".html"), sheet.html());
      write(to, sheet.code() + LABEL, sheet.label());
    }
    if (purchases.isPresent()) {
      FeedFolder.write(to.resolve(PURCHASES + ".txt"), purchases.get().text());
      FeedFolder.write(to.resolve(PURCHASES + ".html"), purchases.get().html());
    } else {
      FeedFolder.delete(to.resolve(PURCHASES + ".txt"));
      FeedFolder.delete(to.resolve(PURCHASES + ".html"));
    }
    for (String code : withheld) {
      FeedFolder.delete(to.resolve(code + ".txt"));
      FeedFolder.delete(to.resolve(code + ".html"));
      write(to, code + LABEL, Optional.empty());
    }
  }

  private static void write(Path to, String name, Optional<Sheet.PrintedLabel> label)
      throws IOException {
    if (label.isPresent()) {
      FeedFolder.write(to.resolve(name + ".txt"), label.get().text());
      FeedFolder.write(to.resolve(name + ".html"), label.get().html());
    } else {
      FeedFolder.delete(to.resolve(name + ".txt"));
      FeedFolder.delete(to.resolve(name + ".html"));
    }
  }
}
