package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.text.Plural;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What came of making batch sheets.
 *
 * @param check of the whole folder
 * @param sheets those of recipes, then those of premixes
 * @param withheld codes of recipes and premixes, and numbers of batches, without a sheet, since
 *     their findings say that they must not be made as written
 * @param purchases what is to be bought for the batches that are planned; absent where none is
 * @param mill the name of the folder, as every sheet has it
 * @param notPlanned why a batch with a record has no sheet any more, by its number
 */
public record SheetReport(
    CheckReport check,
    List<Sheet> sheets,
    List<String> withheld,
    Optional<Purchases> purchases,
    String mill,
    Map<String, String> notPlanned) {
  private static final String PURCHASES = "purchase-list";

  /** The purchase list, rendered. */
  public record Purchases(String text, String html) {}

  public SheetReport {
    sheets = List.copyOf(sheets);
    withheld = List.copyOf(withheld);
    notPlanned = Map.copyOf(notPlanned);
  }

  /** How many sheets, in words. */
  public String tally() {
    long premixes = sheets.stream().filter(Sheet::premix).count();
    String all = Plural.of(sheets.size(), "batch sheet");
    return premixes == 0 ? all : all + " (" + premixes + " of premixes)";
  }

  /** How many bag labels, in words; empty where there is none. */
  public Optional<String> labelTally() {
    long labels = sheets.stream().filter(sheet -> sheet.label().isPresent()).count();
    return labels == 0 ? Optional.empty() : Optional.of(Plural.of(labels, "bag label"));
  }

  /** Codes of the sheets that are stamped as drafts not to be made. */
  public List<String> drafts() {
    return sheets.stream().filter(Sheet::draft).map(Sheet::code).toList();
  }

  /**
   * Writes every sheet twice, as {@code CODE.txt} and as {@code CODE.html}, and its label beside it
   * as {@code CODE-label.txt} and {@code CODE-label.html}, and the purchase list; takes away older
   * ones of what must not be made now.
   *
   * @return what a person is to know of files of before, in sentences: sheets of batches that are
   *     planned no more, which are taken away, and files that stand where an older sheet would and
   *     that this goal did not write, which are left
   */
  public List<String> write(Path to) throws IOException {
    Outputs outputs = Outputs.into(to);
    OlderSheets older = new OlderSheets(outputs);
    Set<String> known = new HashSet<>(withheld);
    for (Sheet sheet : sheets) {
      known.add(sheet.code());
      outputs.write(sheet.code() + ".txt", sheet.text());
      outputs.write(sheet.code() + ".html", sheet.html());
      if (sheet.label().isPresent()) {
        outputs.write(sheet.code() + "-label.txt", sheet.label().get().text());
        outputs.write(sheet.code() + "-label.html", sheet.label().get().html());
      } else {
        older.label(sheet.code());
      }
    }
    if (purchases.isPresent()) {
      outputs.write(PURCHASES + ".txt", purchases.get().text());
      outputs.write(PURCHASES + ".html", purchases.get().html());
    } else {
      older.purchases(PURCHASES);
    }
    for (String code : withheld) {
      older.sheet(code);
    }
    older.ofBatches(known, mill, notPlanned);
    return older.told();
  }
}
