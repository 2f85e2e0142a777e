package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.folder.Past.Then;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files that records were made from, out of the commits that they name: data, premixes and
 * profiles, and of the recipes those of the records and those that they may name as rework.
 */
final class PastTexts {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._-]*");

  private final Texts today;

  PastTexts(Texts today) {
    this.today = today;
  }

  /** What is known of each commit. */
  Map<String, Then> of(Map<String, List<BatchRecord>> byCommit) {
    Set<String> codes = new HashSet<>();
    byCommit.values().forEach(records -> records.forEach(one -> codes.addAll(codes(one))));
    Map<String, Then> first = at(byCommit.keySet(), codes);
    Set<String> named = new HashSet<>(codes);
    for (Then then : first.values()) {
      then.texts().ifPresent(texts -> named.addAll(words(texts)));
    }
    return at(byCommit.keySet(), named);
  }

  /** Its own, and that of the batch before it. */
  private static List<String> codes(BatchRecord record) {
    List<String> codes = new ArrayList<>(List.of(record.code()));
    record.after().map(it -> codeOf(it.thing())).ifPresent(codes::add);
    return codes;
  }

  /** A number ends in a day and a serial. */
  private static String codeOf(String number) {
    return number.replaceFirst("-\\d{4}-\\d{2}-\\d{2}-\\d+$", "");
  }

  private Map<String, Then> at(Collection<String> commits, Set<String> codes) {
    return today
        .past()
        .at(
            commits,
            path ->
                !OfCommit.isOfToday(path)
                    && (!path.endsWith(Trees.RECIPE) || codes.contains(Trees.stem(path))));
  }

  private static Set<String> words(Texts texts) {
    Set<String> words = new HashSet<>();
    for (String path : texts.ending(Trees.RECIPE)) {
      String text = texts.read(path, new ArrayList<>()).map(SourceFile::text).orElse("");
      Matcher word = WORD.matcher(text);
      while (word.find()) {
        words.add(word.group());
      }
    }
    return words;
  }
}
