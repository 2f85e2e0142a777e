package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedPlan.Available;
import dev.pellucid.engine.sharing.Wanted.Due;
import java.util.List;

/**
 * What is to be shared out, as a plan or the planned batches tell it.
 *
 * @param title of it, for people
 * @param option the words of a command line that ask for it again; empty for planned batches
 * @param recorded planned batches of premixes, and of feeds that are made as they are recorded
 * @param available what is short, as a plan tells it
 * @param allOfStore whether all that the folder keeps lots of comes from the store alone
 * @param notes what a person should know, a sentence each
 * @param slips what must be put right first, a sentence each; then nothing else counts
 */
record PlanAsked(
    String title,
    String option,
    List<Feed> feeds,
    List<BatchRecord> recorded,
    List<Available> available,
    boolean allOfStore,
    List<String> notes,
    List<String> slips) {
  PlanAsked {
    feeds = List.copyOf(feeds);
    recorded = List.copyOf(recorded);
    available = List.copyOf(available);
    notes = List.copyOf(notes);
    slips = List.copyOf(slips);
  }

  /**
   * So much of a feed, whose recipe stands at a path.
   *
   * @param bagged whether kg are those in the bags, and not of recipe
   */
  record Feed(String code, String path, boolean bagged, List<Due> due) {
    Feed {
      due = List.copyOf(due);
    }
  }

  /** Whether a batch of a feed is made by shares of its own, told beside those of its recipe. */
  boolean isRebalanced(String code) {
    return recorded.stream()
        .anyMatch(one -> one.code().equals(code) && one.rebalanced().isPresent());
  }

  static PlanAsked slips(List<String> slips) {
    return new PlanAsked("", "", List.of(), List.of(), List.of(), false, List.of(), slips);
  }
}
