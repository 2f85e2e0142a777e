package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds;
import dev.pellucid.engine.data.Keys.Key;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The keys of each kind of data file as tables of Markdown, made from the vocabulary. */
public final class KeyTables {
  private final StringBuilder text = new StringBuilder();
  private final Set<String> told = new LinkedHashSet<>();

  private KeyTables() {}

  /** Every kind by its word. */
  public static List<String> kinds() {
    return Arrays.stream(DataFileKind.values()).map(DataFileKind::word).toList();
  }

  /** The tables of a kind: its own keys, then those of each block in it. */
  public static String of(String kind) {
    DataFileKind found =
        Arrays.stream(DataFileKind.values())
            .filter(one -> one.word().equals(kind))
            .findFirst()
            .orElseThrow();
    KeyTables tables = new KeyTables();
    tables.table(found.keys());
    return tables.text.toString();
  }

  private void table(Keys keys) {
    if (!told.add(keys.thing())) {
      return;
    }
    text.append(text.isEmpty() ? "" : "\nKeys of " + keys.thing() + ":\n\n");
    text.append("| key | must | holds | is |\n|---|---|---|---|\n");
    List<Keys> inner = new ArrayList<>();
    for (Key<?> key : keys.names()) {
      row("`" + key.name() + "`", key.required() ? "yes" : "", key.holds(), key.meaning());
      block(key.holds()).ifPresent(inner::add);
    }
    if (keys.others().isPresent()) {
      Keys.Others others = keys.others().get();
      row("*" + others.what() + "*", "", others.holds(), "");
      block(others.holds()).ifPresent(inner::add);
    }
    inner.forEach(this::table);
  }

  private void row(String key, String must, Holds holds, String meaning) {
    text.append("| " + key + " | " + must + " | " + words(holds) + " | " + escaped(meaning));
    text.append(" |\n");
  }

  private static String escaped(String cell) {
    return cell.replace("|", "\\|");
  }

  private static Optional<Keys> block(Holds holds) {
    return holds.byKind(
        text -> Optional.empty(),
        words -> Optional.empty(),
        list -> block(list.item()),
        block -> Optional.of(block.keys()));
  }

  private static String words(Holds holds) {
    return holds.byKind(
        text -> text(text),
        words ->
            words.words().stream().map(word -> "`" + word + "`").collect(Collectors.joining(", ")),
        list -> "a list: " + words(list.item()),
        block -> block.keys().thing());
  }

  /** What may stand there, by the pattern that it is held to. */
  private static String text(Holds.Text text) {
    if (text.equals(Vocabulary.TEXT)) {
      return "text";
    }
    if (text.equals(Vocabulary.WORD)) {
      return "a name";
    }
    if (text.equals(Vocabulary.AMOUNT)) {
      return "a figure with its unit";
    }
    if (text.equals(Vocabulary.AMOUNT_OR_NONE)) {
      return "a figure with its unit, or `none`";
    }
    if (text.equals(Vocabulary.RANGE)) {
      return "a range: `10 to 20 %`";
    }
    if (text.equals(Vocabulary.CONTENT)) {
      return "`65 %`, `65 ± 1.5 %`, `below 0.02 mg/kg` or `none`";
    }
    if (text.equals(Vocabulary.CONTENT_OR_NOT_KNOWN)) {
      return "`65 %`, `65 ± 1.5 %`, `below 0.02 mg/kg`, `none` or `not-known`";
    }
    if (text.equals(Vocabulary.DAY)) {
      return "a day: `2027-03-31`";
    }
    return text.equals(Vocabulary.COUNT) ? "a whole number" : "as it is told";
  }
}
