package dev.pellucid.engine.rebalance;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * New shares as an edit of the text of a record: a block behind the line of its size, and a line
 * for each lot that was taken into account and is not named yet. Everything else stays as it is,
 * line ends too; a block that stood there before goes, unless a remark of a person would go with
 * it.
 */
public final class RecordEdit {
  private static final Pattern BLOCK = Pattern.compile("(?m)^rebalanced[ \\t]*:");
  private static final Pattern NEXT = Pattern.compile("(?m)^[^\\s#]");
  private static final Pattern WEIGHED = Pattern.compile("(?m)^weighed[ \\t]*:");
  private static final Pattern REMARK = Pattern.compile("(?m)(^|[ \\t])#");

  private final BatchRecord record;
  private final String text;
  private final String lineEnd;

  /** What is put in, by where it goes. */
  private final SortedMap<Integer, StringBuilder> inserts = new TreeMap<>();

  private int cutFrom;
  private int cutTo;

  private RecordEdit(BatchRecord record) {
    SourceFile source = record.declared().file();
    this.record = record;
    this.text = source.text();
    this.lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
  }

  /** A lot to be named for a line. */
  public record Named(String line, String lot) {}

  /**
   * The text with a block; empty where it cannot be put in without losing something.
   *
   * @param block its lines
   */
  public static Optional<String> of(BatchRecord record, List<String> block, List<Named> lots) {
    return new RecordEdit(record).edited(block, lots);
  }

  private Optional<String> edited(List<String> block, List<Named> lots) {
    if (!cutOldBlock()) {
      return Optional.empty();
    }
    putBlock(block);
    List<Named> lines = new ArrayList<>();
    for (Named one : lots) {
      Optional<Entry> bare =
          record.entries().stream()
              .filter(entry -> entry.line().equals(one.line()) && entry.written().isEmpty())
              .findFirst();
      bare.ifPresentOrElse(entry -> name(entry, one), () -> lines.add(one));
    }
    if (!lines.isEmpty()) {
      add(lines);
    }
    return Optional.of(done());
  }

  /** In the place of the old one, else behind the size, a line apart. */
  private void putBlock(List<String> block) {
    if (cutTo > cutFrom) {
      block.forEach(line -> insert(cutFrom, line + lineEnd));
    } else if (!block.isEmpty()) {
      insert(endOfLine(record.declared().end()), lineEnd);
      put(endOfLine(record.declared().end()), block);
    }
  }

  /** Whether nothing of a person stands in it that would go with it. */
  private boolean cutOldBlock() {
    Matcher old = BLOCK.matcher(text);
    if (!old.find()) {
      return true;
    }
    cutFrom = old.start();
    Matcher next = NEXT.matcher(text);
    cutTo = next.find(endOfLine(cutFrom)) ? next.start() : text.length();
    while (cutTo > cutFrom && isBlankOrRemark(lineBefore(cutTo))) {
      cutTo = startOfLine(cutTo - 1);
    }
    return !REMARK.matcher(text.substring(cutFrom, cutTo)).find();
  }

  /** A blank line, or a remark that begins where a key does: it belongs to what follows. */
  private static boolean isBlankOrRemark(String line) {
    return line.isBlank() || line.startsWith("#");
  }

  /** An entry that names its line alone gets its lot. */
  private void name(Entry entry, Named one) {
    int end = entry.name().end();
    int after = end;
    while (after < text.length() && text.charAt(after) == ' ') {
      after++;
    }
    boolean braces =
        after < text.length() && (text.charAt(after) == '}' || text.charAt(after) == ',');
    if (braces) {
      insert(end, ", lot: " + one.lot());
    } else {
      int key = text.lastIndexOf("line", entry.name().start());
      insert(endOfLine(end), lineEnd + " ".repeat(key - startOfLine(key)) + "lot: " + one.lot());
    }
  }

  private void add(List<Named> lots) {
    List<String> lines = new ArrayList<>();
    if (record.entries().isEmpty()) {
      Matcher weighed = WEIGHED.matcher(text);
      if (weighed.find()) {
        lots.forEach(one -> lines.add(entry("  ", one)));
        put(endOfLine(weighed.end()), lines);
        return;
      }
      lines.add("");
      lines.add("weighed:");
      lots.forEach(one -> lines.add(entry("  ", one)));
      put(cutTo > cutFrom ? cutTo : endOfLine(record.declared().end()), lines);
      return;
    }
    Entry last = record.entries().get(record.entries().size() - 1);
    int dash = text.lastIndexOf('-', text.lastIndexOf("line", last.name().start()));
    String indent = " ".repeat(Math.max(0, dash - startOfLine(Math.max(0, dash))));
    lots.forEach(one -> lines.add(entry(indent, one)));
    int end = Math.max(last.name().end(), Math.max(last.lotPlace().end(), last.weight().end()));
    put(endOfLine(end), lines);
  }

  private static String entry(String indent, Named one) {
    return indent + "- {line: " + one.line() + ", lot: " + one.lot() + "}";
  }

  private void put(int at, List<String> lines) {
    for (String line : lines) {
      insert(at, lineEnd + line);
    }
  }

  private void insert(int at, String words) {
    inserts.computeIfAbsent(at, none -> new StringBuilder()).append(words);
  }

  private String done() {
    StringBuilder out = new StringBuilder();
    int from = 0;
    for (Map.Entry<Integer, StringBuilder> one : inserts.entrySet()) {
      copy(from, one.getKey(), out);
      out.append(one.getValue());
      from = one.getKey();
    }
    copy(from, text.length(), out);
    return out.toString();
  }

  /** What stands between, without the block that goes. */
  private void copy(int from, int to, StringBuilder out) {
    int cut = Math.max(from, Math.min(to, cutFrom));
    out.append(text, from, cut).append(text, Math.max(cut, Math.min(to, cutTo)), to);
  }

  private String lineBefore(int at) {
    return text.substring(startOfLine(at - 1), at).stripTrailing();
  }

  private int startOfLine(int at) {
    return text.lastIndexOf('\n', at - 1) + 1;
  }

  /** Before the signs that end it. */
  private int endOfLine(int at) {
    int end = text.indexOf('\n', at);
    end = end < 0 ? text.length() : end;
    return end > at && text.charAt(end - 1) == '\r' ? end - 1 : end;
  }
}
