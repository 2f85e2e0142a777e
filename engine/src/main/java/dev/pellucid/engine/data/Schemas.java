package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds;
import dev.pellucid.engine.data.Keys.Key;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * The vocabulary of the data files to JSON Schemas (draft 2020-12), from which an editor completes
 * keys, shows what they mean and marks wrong ones while a person types.
 *
 * <p>A schema knows keys, words and the shape of a figure. It is looser than the reader: it knows
 * no name of a nutrient, source or species, no kind of unit and no sum, so what it lets through may
 * still be a finding.
 */
public final class Schemas {
  private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";
  private static final String FOLDER = ".schema/";
  private static final String NUMBER = "1";

  private final StringBuilder text = new StringBuilder();
  private int depth;

  private Schemas() {}

  /** Every schema by its kind: the folder that such files lie in, else the name of the file. */
  public static SortedMap<String, String> byKind() {
    TreeMap<String, String> schemas = new TreeMap<>();
    for (DataFileKind kind : DataFileKind.values()) {
      schemas.put(kind.word(), new Schemas().of(kind.keys()));
    }
    return schemas;
  }

  /** Where the schema of a kind lies in a folder of feeds. */
  public static String path(String kind) {
    return FOLDER + kind + ".json";
  }

  /** The first line of a data file, from which an editor knows its schema; empty for others. */
  public static Optional<String> line(String file) {
    String up = "../".repeat(Math.toIntExact(file.chars().filter(c -> c == '/').count()));
    return DataFileKind.of(file)
        .map(kind -> "# yaml-language-server: $schema=" + up + path(kind.word()) + "\n");
  }

  private String of(Keys keys) {
    open("{");
    member("$schema", DIALECT, false);
    member("title", keys.thing(), false);
    block(keys);
    close("}", true);
    return text.append('\n').toString();
  }

  private void block(Keys keys) {
    member("type", "object", false);
    List<String> required = keys.names().stream().filter(Key::required).map(Key::name).toList();
    if (!required.isEmpty()) {
      list("required", required, false);
    }
    if (!keys.names().isEmpty()) {
      name("properties");
      open("{");
      for (int i = 0; i < keys.names().size(); i++) {
        property(keys.names().get(i), i == keys.names().size() - 1);
      }
      close("}", false);
    }
    name("additionalProperties");
    if (keys.others().isPresent()) {
      Keys.Others others = keys.others().get();
      holder(others.what(), others.holds(), true);
    } else {
      text.append("false\n");
    }
  }

  private void property(Key<?> key, boolean last) {
    name(key.name());
    holder(key.meaning(), key.holds(), last);
  }

  private void holder(String meaning, Holds holds, boolean last) {
    open("{");
    member("description", meaning, false);
    holds(holds);
    close("}", last);
  }

  private void holds(Holds holds) {
    Runnable schema =
        holds.byKind(
            text -> () -> scalar(text.pattern()),
            words -> () -> words(words.words()),
            list -> () -> items(list.item()),
            block -> () -> block(block.keys()));
    schema.run();
  }

  private void items(Holds item) {
    member("type", "array", false);
    name("items");
    open("{");
    holds(item);
    close("}", true);
  }

  /** YAML takes bare digits for a number, so a number passes where digits alone have a meaning. */
  private void scalar(String pattern) {
    if (pattern.isEmpty()) {
      list("type", List.of("string", "number"), true);
      return;
    }
    if (Pattern.matches(pattern, NUMBER)) {
      String number = Pattern.matches(pattern, NUMBER + ".5") ? "number" : "integer";
      list("type", List.of("string", number), false);
    } else {
      member("type", "string", false);
    }
    member("pattern", pattern, true);
  }

  private void words(List<String> words) {
    name("enum");
    text.append('[');
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      text.append(i == 0 ? "" : ", ").append(quoted(word));
      text.append(word.equals(NUMBER) ? ", " + word : "");
    }
    text.append("]\n");
  }

  private void list(String key, List<String> words, boolean last) {
    name(key);
    text.append('[')
        .append(String.join(", ", words.stream().map(Schemas::quoted).toList()))
        .append(last ? "]\n" : "],\n");
  }

  private void member(String key, String value, boolean last) {
    name(key);
    text.append(quoted(value)).append(last ? "\n" : ",\n");
  }

  private void name(String key) {
    text.append("  ".repeat(depth)).append(quoted(key)).append(": ");
  }

  private void open(String bracket) {
    text.append(bracket).append('\n');
    depth++;
  }

  private void close(String bracket, boolean last) {
    depth--;
    text.append("  ".repeat(depth)).append(bracket).append(depth == 0 ? "" : last ? "\n" : ",\n");
  }

  private static String quoted(String plain) {
    return '"' + plain.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
