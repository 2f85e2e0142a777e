package dev.pellucid.engine.rules;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The page of a code, as the tests read it.
 *
 * <p>Below {@code ## Wrong} and {@code ## Right} stand fenced blocks. Behind each fence stands the
 * path of a file below the {@link Mill}, and perhaps one word more:
 *
 * <ul>
 *   <li>nothing: the block is the whole file;
 *   <li>{@code part}: the block takes the place of one part of the file that the mill has, a part
 *       being the head or a section, told by the first word of the block; a section that the file
 *       does not have is put at its end;
 *   <li>{@code gone}: the file is taken away;
 *   <li>{@code utf-16}: the whole file, saved as UTF-16 with its mark;
 *   <li>{@code latin-1}: the whole file, saved with one byte a letter.
 * </ul>
 *
 * <p>{@code \}{@code u0007} in a block stands for the character of that number, since a page should
 * not hold one that cannot be seen.
 *
 * @param text all of it
 */
record RecipePage(String code, String text) {
  private static final String FOLDER = "/dev/pellucid/rules/";
  private static final Pattern FENCED = Pattern.compile("(?ms)^```(\\S+)(?: (\\S+))?\\n(.*?)^```$");
  private static final Pattern ESCAPED = Pattern.compile("\\\\u([0-9A-F]{4})");

  /** How the text of a block becomes a file. */
  enum Manner {
    WHOLE,
    PART,
    GONE,
    UTF_16,
    LATIN_1;

    private static Manner of(String word) {
      return switch (word) {
        case "" -> WHOLE;
        case "part" -> PART;
        case "gone" -> GONE;
        case "utf-16" -> UTF_16;
        case "latin-1" -> LATIN_1;
        default -> throw new IllegalArgumentException("no manner of a block: " + word);
      };
    }
  }

  /** One file, or one part of it. */
  record Block(String path, Manner manner, String text) {}

  /** The page of a code, if there is one. */
  static Optional<RecipePage> of(String code) throws IOException {
    try (InputStream in = RecipePage.class.getResourceAsStream(FOLDER + code + ".md")) {
      return in == null
          ? Optional.empty()
          : Optional.of(
              new RecipePage(code, new String(in.readAllBytes(), StandardCharsets.UTF_8)));
    }
  }

  List<Block> wrong() {
    return blocks(stretch("\n## Wrong\n", "\n## Right\n"));
  }

  List<Block> right() {
    return blocks(stretch("\n## Right\n", "\n## "));
  }

  /** What stands between the title and the first heading below it. */
  String why() {
    int start = text.indexOf('\n') + 1;
    int end = text.indexOf("\n## ");
    return text.substring(start, end < 0 ? text.length() : end).strip();
  }

  private String stretch(String heading, String next) {
    int start = text.indexOf(heading);
    if (start < 0) {
      return "";
    }
    int end = text.indexOf(next, start + heading.length());
    return text.substring(start + heading.length(), end < 0 ? text.length() : end);
  }

  private static List<Block> blocks(String stretch) {
    List<Block> blocks = new ArrayList<>();
    Matcher fenced = FENCED.matcher(stretch);
    while (fenced.find()) {
      String word = fenced.group(2) == null ? "" : fenced.group(2);
      blocks.add(new Block(fenced.group(1), Manner.of(word), unescaped(fenced.group(3))));
    }
    return blocks;
  }

  private static String unescaped(String text) {
    return ESCAPED
        .matcher(text)
        .replaceAll(
            found ->
                Matcher.quoteReplacement(Character.toString(Integer.parseInt(found.group(1), 16))));
  }
}
