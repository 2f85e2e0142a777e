package dev.pellucid.engine;

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
}
