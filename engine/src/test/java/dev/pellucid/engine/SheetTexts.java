package dev.pellucid.engine;

/** Texts of sheets as they are compared. */
public final class SheetTexts {
  private SheetTexts() {}

  /** Without what names the files that a sheet hangs on: it moves with any word in one of them. */
  public static String withoutFingerprint(String sheet) {
    return sheet.replaceAll("(?m)^(Fingerprint |Record .*made-from:).*\n", "");
  }
}
