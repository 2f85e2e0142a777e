package dev.pellucid.engine.html;

import j2html.rendering.FlatHtml;
import j2html.rendering.HtmlBuilder;
import j2html.rendering.TagBuilder;
import java.io.IOException;
import java.util.Set;

/**
 * HTML in lines, so that a change of a page can be read line by line. A line ends behind the end of
 * an element that is a block for itself, where white space means nothing; no text gets any.
 */
final class Lines implements HtmlBuilder<StringBuilder> {
  private static final Set<String> ENDS =
      Set.of("caption", "dd", "h1", "h2", "li", "p", "section", "summary", "thead", "tr");

  private final HtmlBuilder<StringBuilder> flat = FlatHtml.inMemory();

  @Override
  public TagBuilder appendStartTag(String name) throws IOException {
    return flat.appendStartTag(name);
  }

  @Override
  public HtmlBuilder<StringBuilder> appendEndTag(String name) throws IOException {
    flat.appendEndTag(name);
    if (ENDS.contains(name)) {
      flat.appendUnescapedText("\n");
    }
    return this;
  }

  @Override
  public TagBuilder appendEmptyTag(String name) throws IOException {
    return flat.appendEmptyTag(name);
  }

  @Override
  public HtmlBuilder<StringBuilder> appendEscapedText(String text) throws IOException {
    flat.appendEscapedText(text);
    return this;
  }

  @Override
  public HtmlBuilder<StringBuilder> appendUnescapedText(String text) throws IOException {
    flat.appendUnescapedText(text);
    return this;
  }

  @Override
  public StringBuilder output() {
    return flat.output();
  }

  @Deprecated
  @Override
  public HtmlBuilder<StringBuilder> append(CharSequence text) throws IOException {
    flat.append(text);
    return this;
  }

  @Deprecated
  @Override
  public HtmlBuilder<StringBuilder> append(CharSequence text, int start, int end)
      throws IOException {
    flat.append(text, start, end);
    return this;
  }

  @Deprecated
  @Override
  public HtmlBuilder<StringBuilder> append(char one) throws IOException {
    flat.append(one);
    return this;
  }
}
