package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.Bin;
import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.engine.trace.Page.Drawn;
import dev.pellucid.engine.trace.Page.Open;
import dev.pellucid.engine.trace.Recall.Kind;
import dev.pellucid.engine.trace.Trace.Reason;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What may be of a lot or a batch, and no record proves it: what came from a bin in which it lay,
 * or of a lot that lay there with it, named or not, and lines of its kind. A flush is told where it
 * was run. A planned batch takes nothing before its day is over.
 */
final class Unnamed {
  private final Ledger ledger;
  private final LocalDate today;
  private final Map<String, SortedMap<LocalDate, Sum>> ofKind = new HashMap<>();

  /** So many kg, and of how many lines no kg are told. */
  private record Sum(double kg, int untold) {
    Sum plus(Sum more) {
      return new Sum(kg + more.kg, untold + more.untold);
    }

    Sum less(Sum other) {
      return new Sum(Math.max(0, kg - other.kg), untold - other.untold);
    }
  }

  private static final Sum NOTHING = new Sum(0, 0);

  Unnamed(Ledger ledger, LocalDate today) {
    this.ledger = ledger;
    this.today = today;
  }

  void into(Account account, String key) {
    drawn(account, key);
    ledger.kinds(key).forEach(kind -> open(account, key, kind));
  }

  private void drawn(Account account, String key) {
    for (Page page : ledger.drawn(key)) {
      for (Drawn drawn : page.drawn()) {
        boolean sure = drawn.flush() && !ledger.isShared(drawn);
        boolean may = drawn.as() != Kind.FLUSH && !sure && ledger.mayBe(drawn, key);
        if (isTaken(page) && may && !isOpenToo(page, drawn, key)) {
          account.unnamed(page.day(), Kilograms.of(drawn.kg()));
        }
      }
    }
  }

  /** Whether the same kg are those of a line that may be of any lot of its kind. */
  private boolean isOpenToo(Page page, Drawn drawn, String key) {
    List<String> kinds = ledger.kinds(key);
    return !ledger.since(key).isAfter(page.day())
        && page.open().stream()
            .filter(open -> kinds.contains(open.kind()) && open.line().equals(drawn.line()))
            .filter(open -> open.kg().equals(drawn.kg()) && !open.names().isEmpty())
            .anyMatch(
                open ->
                    ByLetters.number(open.names()).equals(drawn.named())
                        || drawn.bins().contains(Bin.key(open.names())));
  }

  /** All but its own lines. */
  private void open(Account account, String key, String kind) {
    Optional<Page> itself = ledger.page(key).filter(this::isTaken);
    ofKind
        .computeIfAbsent(kind, this::byDay)
        .tailMap(ledger.since(key))
        .forEach(
            (day, sum) -> {
              Sum own =
                  itself
                      .filter(page -> page.day().equals(day))
                      .map(page -> sum(page, kind))
                      .orElse(NOTHING);
              Sum others = sum.less(own);
              account.unnamed(day, new Kilograms(others.kg(), others.untold() == 0));
            });
  }

  private SortedMap<LocalDate, Sum> byDay(String kind) {
    SortedMap<LocalDate, Sum> sums = new TreeMap<>();
    for (Page page : ledger.open(kind)) {
      if (isTaken(page)) {
        sums.merge(page.day(), sum(page, kind), Sum::plus);
      }
    }
    return sums;
  }

  private static Sum sum(Page page, String kind) {
    double kg = 0;
    int untold = 0;
    for (Open open : page.open()) {
      if (open.kind().equals(kind) && open.reason() != Reason.FLUSH_INTO) {
        kg += open.kg().orElse(0);
        untold += open.kg().isPresent() ? 0 : 1;
      }
    }
    return new Sum(kg, untold);
  }

  private boolean isTaken(Page page) {
    return page.record().isMade() || page.day().isBefore(today);
  }
}
