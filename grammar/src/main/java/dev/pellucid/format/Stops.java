package dev.pellucid.format;

/** The columns, from 1, at which the pieces of a line begin. */
final class Stops {
  static final int SUBJECT = 3;
  static final int HEAD_VALUE = 13;
  static final int PROPERTY = 14;
  static final int FIGURE = 32;
  static final int PHRASE = 45;

  private Stops() {}
}
