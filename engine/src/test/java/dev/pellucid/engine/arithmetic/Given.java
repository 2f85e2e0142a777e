package dev.pellucid.engine.arithmetic;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What an example of the page begins with, asked for by name. */
final class Given {
  private final String id;
  private final Map<String, Figure> figures;
  private final Set<String> asked = new TreeSet<>();

  Given(Example example) {
    this.id = example.id();
    this.figures = example.given();
  }

  /** The number, in the base of its unit: a share for a percent, hours for days. */
  double of(String name) {
    return figure(name).all().get(0);
  }

  /** The number behind its {@code ±}, in the base of its unit. */
  double spread(String name) {
    return figure(name).all().get(1);
  }

  /** The numbers of a list. */
  List<Double> all(String name) {
    return figure(name).all();
  }

  /** As it is printed, and as the files of a folder take it. */
  String text(String name) {
    return figure(name).text();
  }

  /** What was asked for so far. */
  Set<String> asked() {
    return asked;
  }

  private Figure figure(String name) {
    asked.add(name);
    Figure figure = figures.get(name);
    if (figure == null) {
      throw new AssertionError("the example " + id + " tells no " + name);
    }
    return figure;
  }
}
