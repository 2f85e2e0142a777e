package dev.pellucid.text;

import java.util.Collection;
import java.util.List;

/** Some words as a person lists them: "draft, approved or retired". */
public final class Choices {
  private Choices() {}

  public static String of(Collection<String> words) {
    List<String> list = List.copyOf(words);
    int last = list.size() - 1;
    return last < 1
        ? String.join("", list)
        : String.join(", ", list.subList(0, last)) + " or " + list.get(last);
  }
}
