package dev.pellucid.engine.records;

import dev.pellucid.engine.records.Recall.Affected;
import dev.pellucid.engine.records.Recall.Amount;
import dev.pellucid.engine.records.Recall.Call;
import dev.pellucid.engine.records.Recall.Moved;
import dev.pellucid.engine.records.Recall.Sent;
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
      return new Call(name, sent, back, net(true), net(false));
    }

    private Amount net(boolean certain) {
      return sum(sent, certain).less(sum(back, certain));
    }

    private static Amount sum(List<Sent> of, boolean certain) {
      return of.stream()
          .filter(one -> one.certain() == certain)
          .map(one -> one.moved().amount())
          .reduce(Amount.NONE, Amount::plus);
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
    return parties.computeIfAbsent(key(name), none -> new Party(name.strip()));
  }

  static String key(String name) {
    return Ledger.key(name).replaceAll("\\s+", " ");
  }
}
