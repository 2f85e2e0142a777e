package dev.pellucid.text;

import java.util.Collection;
import java.util.List;

/** Some words as a person lists them: "draft, approved or retired". */
public final class Choices {
  private Choices() {}

  public static String of(Collection<String> words) {
    return joined(words, " or ");
  }

  /** All of them: "sections, lines and words". */
  public static String all(Collection<String> words) {
    return joined(words, " and ");
  }

  private static String joined(Collection<String> words, String before) {
    List<String> list = List.copyOf(words);
    int last = list.size() - 1;
    return last < 1
        ? String.join("", list)
        : String.join(", ", list.subList(0, last)) + before + list.get(last);
  }
}
