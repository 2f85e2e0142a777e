package dev.pellucid.engine.form;

import dev.pellucid.text.ToBeGiven;

/**
 * A new file.
 *
 * @param path below the folder
 * @param text with {@link ToBeGiven#MARK} where a person is still to give something
 */
public record Form(String path, String text) {

  /** In how many lines something is still to be given; a check names each of them. */
  public int toGive() {
    int lines = 0;
    for (String line : text.lines().toList()) {
      int remark = line.indexOf('#');
      String told = remark < 0 ? line : line.substring(0, remark);
      lines += told.contains(ToBeGiven.MARK) ? 1 : 0;
    }
    return lines;
  }

  /** The same at the same place with another text. */
  public Form with(String other) {
    return new Form(path, other);
  }
}
