package dev.pellucid.engine.outcome;

import java.io.IOException;
import java.io.OutputStream;

/** The text of one report, written piece by piece, so that nobody holds all of it. */
public interface Report {
  /** Writes it as UTF-8 and leaves the stream open. */
  void writeTo(OutputStream out) throws IOException;
}
