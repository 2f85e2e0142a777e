package dev.pellucid.engine;

/** A number of things in words: {@code 1 recipe}, {@code 14 recipes}. */
final class Counted {
  private Counted() {}

  static String of(long number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }
}
