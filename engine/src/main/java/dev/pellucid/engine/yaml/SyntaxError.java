package dev.pellucid.engine.yaml;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;

/**
 * Where the YAML parser gave up, in our words.
 *
 * <p>The place is the one that the scanner below Jackson tells, since Jackson's own is that of the
 * token before. Of the library's words only the kind of failure is read; none is shown.
 */
final class SyntaxError {
  private final SourceFile file;
  private final Offsets offsets;
  private final MarkedYamlEngineException cause;

  private SyntaxError(SourceFile file, MarkedYamlEngineException cause) {
    this.file = file;
    this.offsets = new Offsets(file);
    this.cause = cause;
  }

  static Finding explain(SourceFile file, JacksonException failed) {
    if (failed.getCause() instanceof MarkedYamlEngineException marked) {
      return new SyntaxError(file, marked).finding();
    }
    long point = failed.getLocation() == null ? 0 : failed.getLocation().getCharOffset();
    return YamlFindings.unreadable(new Offsets(file).at(point));
  }

  private Finding finding() {
    Span problem = place(cause.getProblemMark());
    String context = cause.getContext() == null ? "" : cause.getContext();
    String words = cause.getProblem() == null ? "" : cause.getProblem();
    Span opened = place(cause.getContextMark());
    if (!problem.text().isEmpty() && "%@`".contains(problem.text())) {
      return YamlFindings.reserved(problem);
    }
    if (problem.text().equals("\t")) {
      return YamlFindings.tab(problem);
    }
    if (context.contains("quoted scalar")) {
      return YamlFindings.openQuote(opened);
    }
    if (context.contains("flow")) {
      return YamlFindings.openBracket(opened, problem);
    }
    if (words.contains("mapping values are not allowed") && hasColonBefore(problem)) {
      return YamlFindings.colonInText(problem, problem);
    }
    if (words.contains("could not find expected ':'")) {
      return YamlFindings.missingColon(line(opened));
    }
    if (words.contains("mapping values are not allowed") || context.contains("block")) {
      return YamlFindings.indentation(line(problem));
    }
    return YamlFindings.unreadable(problem);
  }

  private Span place(Optional<Mark> mark) {
    return mark.map(found -> offsets.at(found.getIndex())).orElseGet(file::beginning);
  }

  private boolean hasColonBefore(Span problem) {
    String line = file.line(problem.from().line());
    return line.substring(0, Math.min(line.length(), problem.from().column() - 1)).contains(": ");
  }

  /** The text of the line of a place, without the white space around it. */
  private Span line(Span place) {
    String text = file.line(place.from().line());
    int lineStart = place.start() - (place.from().column() - 1);
    int start = lineStart + text.length() - text.stripLeading().length();
    return file.span(start, Math.max(start, lineStart + text.stripTrailing().length()));
  }
}
