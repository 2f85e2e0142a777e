package dev.pellucid.parse;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.misc.Interval;

/** A text as it is, in UTF-16 units and without its byte order mark: what stand-ins stand for. */
final class PlainLetters implements CharStream {
  private final String text;
  private int at;

  PlainLetters(String text) {
    this.text = text;
    this.at = text.startsWith("\uFEFF") ? 1 : 0;
  }

  @Override
  public String getText(Interval interval) {
    int end = Math.min(interval.b + 1, text.length());
    return interval.a >= end ? "" : text.substring(interval.a, end);
  }

  @Override
  public void consume() {
    at++;
  }

  @Override
  public int LA(int ahead) {
    int place = ahead > 0 ? at + ahead - 1 : at + ahead;
    return place >= 0 && place < text.length() ? text.charAt(place) : EOF;
  }

  @Override
  public int mark() {
    return -1;
  }

  @Override
  public void release(int marker) {}

  @Override
  public int index() {
    return at;
  }

  @Override
  public void seek(int index) {
    at = index;
  }

  @Override
  public int size() {
    return text.length();
  }

  @Override
  public String getSourceName() {
    return "plain";
  }
}
