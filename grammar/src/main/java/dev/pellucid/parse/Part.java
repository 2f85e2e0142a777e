package dev.pellucid.parse;

/** A part of a file while its lines are read: its head or one of its sections. */
interface Part {
  /** Reads one more line of it. */
  void read(Line line);
}
