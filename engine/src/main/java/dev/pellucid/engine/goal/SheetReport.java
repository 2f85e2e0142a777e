package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.text.Plural;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
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
   * @return names of files that stand where an older one would, and that this goal did not write:
   *     they are left
   */
  public List<String> write(Path to) throws IOException {
    Outputs outputs = Outputs.into(to);
    List<String> left = new ArrayList<>();
    for (Sheet sheet : sheets) {
      outputs.write(sheet.code() + ".txt", sheet.text());
      outputs.write(sheet.code() + ".html", sheet.html());
      if (sheet.label().isPresent()) {
        outputs.write(sheet.code() + LABEL + ".txt", sheet.label().get().text());
        outputs.write(sheet.code() + LABEL + ".html", sheet.label().get().html());
      } else {
        left.addAll(withoutLabel(outputs, sheet.code()));
      }
    }
    if (purchases.isPresent()) {
      outputs.write(PURCHASES + ".txt", purchases.get().text());
      outputs.write(PURCHASES + ".html", purchases.get().html());
    } else {
      left.addAll(without(outputs, PURCHASES, OwnMark.ofPurchases()));
    }
    for (String code : withheld) {
      left.addAll(without(outputs, code, OwnMark.ofSheet(code)));
      left.addAll(withoutLabel(outputs, code));
    }
    return left;
  }

  private static List<String> withoutLabel(Outputs outputs, String code) throws IOException {
    return without(outputs, code + LABEL, OwnMark.ofLabel(code));
  }

  private static List<String> without(Outputs outputs, String name, OwnMark mark)
      throws IOException {
    List<String> left = new ArrayList<>();
    if (!outputs.delete(name + ".txt", mark::isOnText)) {
      left.add(name + ".txt");
    }
    if (!outputs.delete(name + ".html", mark::isOnHtml)) {
      left.add(name + ".html");
    }
    return left;
  }
}
