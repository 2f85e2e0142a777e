package dev.pellucid.engine.trace;

import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.Moved;
import dev.pellucid.engine.trace.Recall.Sent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Who got feed of some batches. A name is one whatever its capitals and blanks; one that is written
 * otherwise is another party, and is called too.
 */
final class Parties {
  private static final double CLOSE = 1e-9;

  private final Map<String, Party> parties = new LinkedHashMap<>();

  private static final class Party {
    private final String name;
    private final List<Sent> sent = new ArrayList<>();
    private final List<Sent> back = new ArrayList<>();

    Party(String name) {
      this.name = name;
    }

    Call call() {
      Comparator<Sent> byDay = Comparator.comparing(one -> one.moved().day());
      sent.sort(byDay);
      back.sort(byDay);
      Map<String, Amount> got = byBatch(sent);
      Map<String, Amount> gave = byBatch(back);
      List<String> tooMuch =
          gave.keySet().stream().filter(batch -> isMore(of(gave, batch), of(got, batch))).toList();
      return new Call(name, sent, back, net(true, got, gave), net(false, got, gave), tooMuch);
    }

    /** Batch by batch, so that what came back of one is taken off that one alone. */
    private Amount net(boolean certain, Map<String, Amount> got, Map<String, Amount> gave) {
      return sent.stream()
          .filter(one -> one.certain() == certain)
          .map(one -> one.batch().number())
          .distinct()
          .map(batch -> of(got, batch).less(of(gave, batch)).orNothing())
          .reduce(Amount.NONE, Amount::plus);
    }

    private static Map<String, Amount> byBatch(List<Sent> all) {
      Map<String, Amount> sums = new LinkedHashMap<>();
      all.forEach(one -> sums.merge(one.batch().number(), one.moved().amount(), Amount::plus));
      return sums;
    }

    private static Amount of(Map<String, Amount> all, String batch) {
      return all.getOrDefault(batch, Amount.NONE);
    }

    private static boolean isMore(Amount back, Amount got) {
      return back.kg() > got.kg() + CLOSE || back.bags() > got.bags();
    }
  }

  static List<Call> of(List<Affected> batches) {
    Parties parties = new Parties();
    for (Affected batch : batches) {
      for (Moved moved : batch.delivered()) {
        if (!moved.party().isBlank()) {
          parties.party(moved.party()).sent.add(sent(batch, moved));
        }
      }
      for (Moved moved : batch.returned()) {
        if (!moved.party().isBlank()) {
          parties.party(moved.party()).back.add(sent(batch, moved));
        }
      }
    }
    return parties.parties.values().stream()
        .map(Party::call)
        .sorted(
            Comparator.<Call>comparingDouble(one -> -one.certain().kg())
                .thenComparingDouble(one -> -one.possible().kg())
                .thenComparing(Call::party))
        .toList();
  }

  private static Sent sent(Affected batch, Moved moved) {
    return new Sent(batch.batch(), batch.certain(), moved);
  }

  /** A party by its letters; as its name is written first. */
  private Party party(String name) {
    return parties.computeIfAbsent(ByLetters.party(name), none -> new Party(name.strip()));
  }
}
