package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.BatchNumber;
import dev.pellucid.engine.folder.Outputs;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Takes away what an earlier run wrote and what must not be made any more, so that nobody finds a
 * sheet that looks valid and is not. A file that this goal did not write stays, and is told.
 */
final class OlderSheets {
  private static final String LABEL = "-label";
  private static final String TEXT = ".txt";
  private static final String HTML = ".html";

  private final Outputs outputs;
  private final List<String> told = new ArrayList<>();

  OlderSheets(Outputs outputs) {
    this.outputs = outputs;
  }

  /** What a person is to know, in sentences. */
  List<String> told() {
    return List.copyOf(told);
  }

  void purchases(String name) throws IOException {
    remove(name, OwnMark.ofPurchases());
  }

  void sheet(String name) throws IOException {
    remove(name, OwnMark.ofSheet(name));
    label(name);
  }

  void label(String name) throws IOException {
    remove(name + LABEL, OwnMark.ofLabel(name));
  }

  /**
   * Sheets of batches that this run has nothing to say of: those that were made since, and those of
   * which the record is gone. Only what names the same mill goes, since another folder of feeds may
   * have its sheets here too.
   *
   * @param known names that this run has dealt with
   * @param mill the name of the folder of feeds, as its sheets have it
   * @param notPlanned why a batch is planned no more, by its number; one that is not in it has no
   *     record
   */
  void ofBatches(Collection<String> known, String mill, Map<String, String> notPlanned)
      throws IOException {
    List<String> there = outputs.names();
    TreeSet<String> numbers = new TreeSet<>();
    for (String name : there) {
      String stem = name.replaceFirst("\\.(txt|html)$", "");
      if (!stem.equals(name) && !known.contains(stem) && BatchNumber.of(stem).isPresent()) {
        numbers.add(stem);
      }
    }
    for (String number : numbers) {
      OwnMark mark = OwnMark.ofSheet(number);
      boolean gone =
          there.contains(number + TEXT)
              ? outputs.delete(number + TEXT, text -> mark.isOnText(text) && isOf(mill, text))
              : outputs.delete(number + HTML, mark::isOnHtml);
      if (gone) {
        sheet(number);
        told.add(
            "took away the older sheet of "
                + number
                + ": "
                + notPlanned.getOrDefault(number, "no record of a batch has this number"));
      }
    }
  }

  private static boolean isOf(String mill, String sheet) {
    String words = sheet.replaceAll("\\s+", " ");
    return words.contains("Mill or farm " + mill.replaceAll("\\s+", " ").strip() + " ");
  }

  private void remove(String name, OwnMark mark) throws IOException {
    remove(name + TEXT, mark::isOnText);
    remove(name + HTML, mark::isOnHtml);
  }

  private void remove(String name, Predicate<String> ours) throws IOException {
    if (!outputs.delete(name, ours)) {
      told.add("left alone, not a file that this goal wrote: " + outputs.path(name));
    }
  }
}
