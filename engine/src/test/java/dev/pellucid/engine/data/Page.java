package dev.pellucid.engine.data;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text with files in it: fenced blocks, each with its path below the folder behind the fence.
 *
 * @param wrong the files below {@code ## Wrong}, or all where there are no such headings
 * @param right the files below {@code ## Right}
 */
record Page(List<Block> wrong, List<Block> right) {
  private static final Pattern FENCED = Pattern.compile("(?ms)^```(\\S+)\\n(.*?)^```$");

  Page {
    wrong = List.copyOf(wrong);
    right = List.copyOf(right);
  }

  /** One file. */
  record Block(String path, String text) {}

  static Page of(String text) {
    int right = text.indexOf("\n## Right\n");
    return new Page(
        blocks(right < 0 ? text : text.substring(0, right)),
        right < 0 ? List.of() : blocks(text.substring(right)));
  }

  private static List<Block> blocks(String text) {
    List<Block> blocks = new ArrayList<>();
    Matcher fenced = FENCED.matcher(text);
    while (fenced.find()) {
      blocks.add(new Block(fenced.group(1), fenced.group(2)));
    }
    return blocks;
  }

  /** The pantry with some files laid over it. */
  static TablesRead over(Pantry pantry, List<Block> blocks) {
    blocks.forEach(block -> pantry.with(block.path(), block.text()));
    return pantry.stocked();
  }
}
