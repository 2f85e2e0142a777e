package dev.pellucid.engine.trace;

import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.trace.Recall.Limit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A recall with all that those who show it need beside the answer.
 *
 * @param house the name of the folder
 * @param day on which it is asked
 * @param otherDay another day that could be thought of, in words; empty where there is none
 * @param origins what is in it, where a batch is recalled
 * @param files by number, the file of a lot or of a record, as it is called
 * @param premixes the codes of premixes
 * @param searched what was searched, in words
 * @param unsearched what could not be, each with why; while there is any, the answer may not be
 *     whole
 */
public record RecallList(
    String house,
    LocalDate day,
    Optional<String> otherDay,
    Answer answer,
    Optional<Recall.Origins> origins,
    SortedMap<String, String> files,
    Set<String> premixes,
    String searched,
    List<String> unsearched) {
  public RecallList {
    files = new TreeMap<>(files);
    premixes = new TreeSet<>(premixes);
    unsearched = List.copyOf(unsearched);
  }

  public RecallTally tally() {
    return RecallTally.of(answer);
  }

  /** Whether each delivery of a batch with it names who got it. */
  public boolean namesEveryParty() {
    return answer.notFollowed().stream().noneMatch(one -> one.limit() == Limit.PARTY_NOT_TOLD);
  }

  /** The number of what is recalled. */
  public String number() {
    return answer.thing().number();
  }

  /** The file of a lot or of a record; its number where no file is known. */
  public String file(String number) {
    return files.getOrDefault(number, number);
  }

  /** Batches that were made and hold the thing, or may. */
  public List<Affected> made(boolean certain) {
    return (certain ? answer.certain() : answer.possible())
        .stream().filter(one -> !one.isPlanned()).toList();
  }

  /** The batch of a number among those that hold the thing or may. */
  public Optional<Affected> batch(String number) {
    return answer.batches().stream().filter(one -> one.batch().number().equals(number)).findFirst();
  }
}
