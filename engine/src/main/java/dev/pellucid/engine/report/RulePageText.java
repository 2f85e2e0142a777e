package dev.pellucid.engine.report;

import java.util.ArrayList;
import java.util.List;

/** The page of a finding as plain text: without the marks of Markdown. */
public final class RulePageText {
  private static final String FENCE = "```";
  private static final String INDENT = "    ";

  private RulePageText() {}

  /** Of a page in Markdown. */
  public static String of(String page) {
    List<String> lines = new ArrayList<>();
    boolean fenced = false;
    for (String line : page.split("\n", -1)) {
      if (line.startsWith(FENCE)) {
        if (!fenced) {
          lines.add("  " + file(line.substring(FENCE.length())));
        }
        fenced = !fenced;
      } else if (fenced) {
        lines.add(line.isEmpty() ? "" : INDENT + line);
      } else {
        prose(line, lines);
      }
    }
    return String.join("\n", lines);
  }

  private static void prose(String line, List<String> lines) {
    if (line.startsWith("#")) {
      String words = line.replaceFirst("^#+ *", "");
      lines.add(words);
      lines.add((line.startsWith("##") ? "-" : "=").repeat(TextTable.length(words)));
    } else if (line.startsWith("|")) {
      if (!line.matches("[|: -]+")) {
        lines.add("  " + bare(line).replaceAll("^\\| *| *\\|$", "").replaceAll(" *\\| *", " | "));
      }
    } else {
      lines.add(bare(line));
    }
  }

  private static String bare(String line) {
    return line.replace("`", "").replace("**", "");
  }

  /** {@code recipes/CG-36.recipe, this part of it:}. */
  private static String file(String words) {
    int blank = words.indexOf(' ');
    if (blank < 0) {
      return words + ":";
    }
    String manner = words.substring(blank + 1);
    return words.substring(0, blank)
        + switch (manner) {
          case "part" -> ", this part of it:";
          case "gone" -> ", a file that is not there:";
          default -> ", saved as " + manner + ":";
        };
  }
}
