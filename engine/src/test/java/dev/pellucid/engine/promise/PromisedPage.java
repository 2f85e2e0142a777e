package dev.pellucid.engine.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The page of what may change, held against what the code does. What is gone goes to the list of
 * what is retired, so that nobody loses it by copying a page.
 */
final class PromisedPage {
  private final List<String> removed = new ArrayList<>();
  private final List<String> changed = new ArrayList<>();
  private final List<String> added = new ArrayList<>();
  private final List<String> back = new ArrayList<>();
  private final String page;
  private String next;

  private PromisedPage(String page) {
    this.page = page;
    this.next = page;
  }

  static PromisedPage against(String page, List<Listed> lists) {
    PromisedPage held = new PromisedPage(page);
    lists.forEach(held::hold);
    Retired retired = Retired.read(block(page, Retired.BLOCK));
    lists.forEach(list -> held.notRetired(retired, list));
    held.replace(Retired.BLOCK, retired.with(held.removed).text());
    return held;
  }

  private void hold(Listed list) {
    NavigableMap<String, String> promised = list.of(block(page, list.name())).marked();
    NavigableMap<String, String> done = list.marked();
    promised.forEach((name, mark) -> compare(name, mark, done));
    done.keySet().stream().filter(name -> !promised.containsKey(name)).forEach(added::add);
    replace(list.name(), list.text());
  }

  private void compare(String name, String mark, Map<String, String> done) {
    String now = done.get(name);
    if (now == null) {
      removed.add(name);
    } else if (!now.equals(mark)) {
      changed.add(name + " was " + mark + ", is " + now);
    }
  }

  private void notRetired(Retired retired, Listed list) {
    retired.names().stream().filter(list.marked()::containsKey).forEach(back::add);
  }

  /** The page as it should be. */
  String next() {
    return next;
  }

  /** What to do about it; empty where the page is right. */
  String told() {
    StringBuilder told = new StringBuilder();
    tell(told, "REMOVED, which breaks whoever uses it. Put it back, or fill in its line", removed);
    tell(told, "CHANGED. Read in the page whether this version may do so", changed);
    tell(told, "retired, and yet there; use another word", back);
    tell(told, "Added, which is fine", added);
    if (told.isEmpty() && !next.equals(page)) {
      told.append("Only the order or the lines are others.\n");
    }
    return told.toString();
  }

  private static void tell(StringBuilder told, String what, List<String> names) {
    if (!names.isEmpty()) {
      told.append(what).append(":\n");
      names.forEach(name -> told.append("  ").append(name).append('\n'));
    }
  }

  static String block(String page, String name) {
    Matcher found = pattern(name).matcher(page);
    if (!found.find()) {
      throw new IllegalStateException("the page has no block " + name);
    }
    return found.group(2);
  }

  private void replace(String name, String text) {
    next = pattern(name).matcher(next).replaceFirst("$1" + Matcher.quoteReplacement(text) + "$3");
  }

  private static Pattern pattern(String name) {
    return Pattern.compile("(?s)(\n```" + Pattern.quote(name) + "\n)(.*?)(```\n)");
  }
}
