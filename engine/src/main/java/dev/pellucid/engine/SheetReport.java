package dev.pellucid.engine;

import dev.pellucid.engine.folder.FeedFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * What came of making batch sheets.
 *
 * @param check of the whole folder
 * @param sheets by code
 * @param withheld codes of recipes without a sheet, since their findings say that they must not be
 *     made as written
 */
public record SheetReport(CheckReport check, List<Sheet> sheets, List<String> withheld) {
  public SheetReport {
    sheets = List.copyOf(sheets);
    withheld = List.copyOf(withheld);
  }

  /** How many sheets, in words. */
  public String tally() {
    return Counted.of(sheets.size(), "batch sheet");
  }

  /** Codes of the sheets that are stamped as drafts not to be made. */
  public List<String> drafts() {
    return sheets.stream().filter(Sheet::draft).map(Sheet::code).toList();
  }

  /** Writes every sheet twice, as {@code CODE.txt} and as {@code CODE.html}. */
  public void write(Path to) throws IOException {
    for (Sheet sheet : sheets) {
      FeedFolder.write(to.resolve(sheet.code() + ".txt"), sheet.text());
      FeedFolder.write(to.resolve(sheet.code() + ".html"), sheet.html());
    }
  }
}
