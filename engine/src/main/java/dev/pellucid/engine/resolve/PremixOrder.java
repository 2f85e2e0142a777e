package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.ShareLine;
import dev.pellucid.syntax.Word;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Premixes so that each comes after those it is made of. Those in a circle are left out, and those
 * that stand in each other too deep, with all that hold them.
 *
 * <p>Each file is taken up once and each line looked at once, without recursion: a folder of
 * thousands in a chain takes no longer than one of thousands beside each other.
 */
final class PremixOrder {
  static final Code CYCLE = new Code("premix-cycle");
  static final Code DEEP = new Code("premix-too-deep");

  /**
   * How many premixes may stand in each other. Two is usual: minerals in a premix for all, that in
   * one for a species. Every further one is a weighing and a mixing more for the same grams.
   */
  static final int DEEPEST = 8;

  /** How many ingredients one premix may come to, each counted as often as it is reached. */
  static final int MOST_PARTS = 10_000;

  /** Of a longer way only the ends are shown. */
  private static final int MOST_SHOWN = 10;

  private final Map<String, PremixFile> files = new TreeMap<>();
  private final Map<String, List<Word>> parts = new HashMap<>();
  private final Map<String, Opening> opened = new HashMap<>();
  private final List<PremixFile> order = new ArrayList<>();
  private final Set<String> atFault = new HashSet<>();
  private final List<Finding> findings;

  /** How deep a premix is and to how many ingredients it comes. */
  private record Opening(int deep, long ingredients) {}

  PremixOrder(List<PremixFile> premixes, List<Finding> findings) {
    this.findings = findings;
    premixes.forEach(file -> files.put(file.source().stem(), file));
    files.forEach((code, file) -> parts.put(code, words(file)));
  }

  List<PremixFile> inOrder() {
    Map<String, Integer> waitingFor = new TreeMap<>();
    Map<String, List<String>> holders = new HashMap<>();
    files.keySet().forEach(code -> wait(code, waitingFor, holders));
    Deque<String> ready = new ArrayDeque<>();
    waitingFor.forEach((code, others) -> addIf(others == 0, code, ready));
    while (!ready.isEmpty()) {
      String code = ready.remove();
      waitingFor.remove(code);
      take(code);
      for (String holder : holders.getOrDefault(code, List.of())) {
        int left = waitingFor.merge(holder, -1, Integer::sum);
        addIf(left == 0, holder, ready);
      }
    }
    circles(waitingFor.keySet());
    return order;
  }

  /**
   * A premix that is not in the order.
   *
   * @param parts what it is made of
   * @param own whether its own file has a finding about it, and not one that it holds
   */
  record LeftOut(String code, SortedSet<String> parts, boolean own) {
    LeftOut {
      parts = Collections.unmodifiableSortedSet(new TreeSet<>(parts));
    }

    /** The same as what was looked up; a part may be either an ingredient or a premix. */
    Reads reads() {
      return Reads.of(
          parts.stream()
              .flatMap(
                  part ->
                      Stream.of(new Ref(Ref.Kind.INGREDIENT, part), new Ref(Ref.Kind.PREMIX, part)))
              .toList());
    }
  }

  /** Those that are not in the order. */
  List<LeftOut> leftOut() {
    List<LeftOut> leftOut = new ArrayList<>();
    for (String code : files.keySet()) {
      if (!opened.containsKey(code)) {
        TreeSet<String> names = new TreeSet<>();
        partsOf(code).forEach(part -> names.add(part.text()));
        leftOut.add(new LeftOut(code, names, atFault.contains(code)));
      }
    }
    return leftOut;
  }

  private static void addIf(boolean now, String code, Deque<String> ready) {
    if (now) {
      ready.add(code);
    }
  }

  private void wait(
      String code, Map<String, Integer> waitingFor, Map<String, List<String>> holders) {
    int others = 0;
    for (Word part : partsOf(code)) {
      if (files.containsKey(part.text())) {
        holders.computeIfAbsent(part.text(), none -> new ArrayList<>()).add(code);
        others++;
      }
    }
    waitingFor.put(code, others);
  }

  /** One whose parts have all been looked at. */
  private void take(String code) {
    int deep = 0;
    long ingredients = 0;
    for (Word part : partsOf(code)) {
      Opening of = opened.get(part.text());
      if (of == null && files.containsKey(part.text())) {
        return;
      }
      deep = Math.max(deep, of == null ? 0 : of.deep());
      ingredients += of == null ? 1 : of.ingredients();
    }
    if (deep >= DEEPEST) {
      say(code, tooDeep(code));
    } else if (ingredients > MOST_PARTS) {
      say(code, tooMany(code, ingredients));
    } else {
      opened.put(code, new Opening(deep + 1, ingredients));
      order.add(file(code));
    }
  }

  private void say(String code, Finding finding) {
    atFault.add(code);
    findings.add(finding);
  }

  private List<Word> partsOf(String code) {
    return parts.getOrDefault(code, List.of());
  }

  private PremixFile file(String code) {
    PremixFile file = files.get(code);
    if (file == null) {
      throw new IllegalStateException("no premix " + code);
    }
    return file;
  }

  private Finding tooDeep(String code) {
    List<String> way = new ArrayList<>(List.of(code));
    Word line = deepest(code);
    for (Word next = line; opened.containsKey(next.text()); next = deepest(next.text())) {
      way.add(next.text());
    }
    return Finding.error(
            DEEP,
            line.span(),
            "premixes stand in each other "
                + way.size()
                + " deep, at most "
                + DEEPEST
                + ": "
                + String.join(" > ", way))
        .helping("name what the premixes are made of in one of them instead of the premix");
  }

  /** The part that goes deepest. */
  private Word deepest(String code) {
    List<Word> all = partsOf(code);
    Word found = all.get(0);
    for (Word part : all) {
      found = deep(part) > deep(found) ? part : found;
    }
    return found;
  }

  private int deep(Word part) {
    Opening of = opened.get(part.text());
    return of == null ? 0 : of.deep();
  }

  private Finding tooMany(String code, long ingredients) {
    return Finding.error(
            DEEP,
            file(code)
                .opening()
                .map(opening -> opening.name().span())
                .orElse(file(code).source().beginning()),
            code
                + " comes to "
                + ingredients
                + " ingredients through the premixes in it, at most "
                + MOST_PARTS)
        .helping("name what the premixes are made of in one of them instead of the premix");
  }

  /** What still waits is in a circle, or holds one that is. */
  private void circles(Set<String> waiting) {
    Set<String> done = new HashSet<>();
    for (String code : waiting) {
      if (!done.contains(code)) {
        walk(code, waiting, done);
      }
    }
  }

  private void walk(String start, Set<String> waiting, Set<String> done) {
    List<String> above = new ArrayList<>(List.of(start));
    Set<String> onTheWay = new HashSet<>(above);
    Deque<Iterator<Word>> left = new ArrayDeque<>();
    left.push(partsOf(start).iterator());
    while (!left.isEmpty()) {
      if (!left.getFirst().hasNext()) {
        left.pop();
        String code = above.remove(above.size() - 1);
        onTheWay.remove(code);
        done.add(code);
        continue;
      }
      Word part = left.getFirst().next();
      if (onTheWay.contains(part.text())) {
        say(above.get(above.size() - 1), circle(above, part));
      } else if (waiting.contains(part.text()) && !done.contains(part.text())) {
        above.add(part.text());
        onTheWay.add(part.text());
        left.push(partsOf(part.text()).iterator());
      }
    }
  }

  private static Finding circle(List<String> above, Word part) {
    return Finding.error(
            CYCLE,
            part.span(),
            "premixes go round in a circle: " + String.join(" > ", shown(above)) + " > " + part)
        .helping("a premix cannot be made of itself: take one of these lines out");
  }

  private static List<String> shown(List<String> way) {
    if (way.size() <= MOST_SHOWN) {
      return way;
    }
    List<String> ends = new ArrayList<>(way.subList(0, MOST_SHOWN / 2));
    ends.add((way.size() - MOST_SHOWN) + " more");
    ends.addAll(way.subList(way.size() - MOST_SHOWN / 2, way.size()));
    return ends;
  }

  private static List<Word> words(PremixFile file) {
    List<Word> words = new ArrayList<>();
    file.supply().ifPresent(s -> s.lines().forEach(line -> words.add(line.from())));
    file.mix().ifPresent(s -> s.lines().stream().map(ShareLine::subject).forEach(words::add));
    file.carrier().ifPresent(s -> s.lines().stream().map(ShareLine::subject).forEach(words::add));
    return words;
  }
}
