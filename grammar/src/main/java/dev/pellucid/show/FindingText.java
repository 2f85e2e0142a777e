package dev.pellucid.show;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Related;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Position;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Span;
import java.util.List;

/**
 * A finding as text:
 *
 * <pre>
 * catfish/CG-36.recipe:13:3: error: crude-protein is 33.1 %, the minimum is 35.0 % [below-minimum]
 *    13 |   soybean-meal-48             36.00 %
 *       |   ^^^^^^^^^^^^^^^ supplies 17.2 of the 33.1 points
 *  note: limit written at limits/catfish-grower.limits:9:3
 *  help: 6.0 points more soybean-meal-48 in place of wheat-middlings would meet it
 * </pre>
 *
 * <p>The first line has one fixed shape and is enough on its own. The excerpt is cut from the text
 * as {@link Marked} shows it. Lines end in {@code \n}.
 */
public final class FindingText {
  private FindingText() {}

  /** All of them in their order, with paths below the folder, a blank line between. */
  public static String of(List<Finding> findings) {
    return of(findings, PrintedPaths.BELOW_FOLDER);
  }

  /** All of them in their order, their places as a reader elsewhere knows them. */
  public static String of(List<Finding> findings, PrintedPaths paths) {
    StringBuilder out = new StringBuilder();
    for (Finding finding : findings) {
      if (!out.isEmpty()) {
        out.append('\n');
      }
      out.append(of(finding, paths));
    }
    return out.toString();
  }

  /** One, with paths below the folder. */
  public static String of(Finding finding) {
    return of(finding, PrintedPaths.BELOW_FOLDER);
  }

  /** One, its places as a reader elsewhere knows them. */
  public static String of(Finding finding, PrintedPaths paths) {
    return of(finding, paths, Paint.NONE);
  }

  /** The same for a screen. */
  public static String of(Finding finding, PrintedPaths paths, Paint paint) {
    StringBuilder out = new StringBuilder(firstLine(finding, paths, paint)).append('\n');
    excerpt(out, finding, paint);
    for (Related related : finding.related()) {
      line(out, "note", related.text() + " at " + paths.place(related.span()));
    }
    finding.notes().forEach(note -> line(out, "note", note));
    finding.helps().forEach(help -> line(out, "help", help));
    return out.toString();
  }

  /** {@code path:line:column: severity: headline [code]}. */
  public static String firstLine(Finding finding) {
    return firstLine(finding, PrintedPaths.BELOW_FOLDER, Paint.NONE);
  }

  private static String firstLine(Finding finding, PrintedPaths paths, Paint paint) {
    Severity severity = finding.severity();
    return paint.place(paths.place(finding.span()))
        + ": "
        + paint.grave(severity, severity.word())
        + ": "
        + finding.headline()
        + " ["
        + finding.code()
        + "]";
  }

  private static void line(StringBuilder out, String word, String text) {
    out.append(' ').append(word).append(": ").append(text).append('\n');
  }

  private static void excerpt(StringBuilder out, Finding finding, Paint paint) {
    Span span = finding.span();
    if (span.file().text().isEmpty() || wholeFile(span)) {
      return;
    }
    Position from = span.from();
    String number = String.valueOf(from.line());
    String margin = " ".repeat(Math.max(0, 5 - number.length()));
    Marked marked = Marked.of(span);
    out.append(margin).append(number).append(" | ").append(marked.line()).append('\n');
    out.append(" ".repeat(5)).append(" | ").append(" ".repeat(marked.indent()));
    String carets = marked.carets();
    String label = finding.label();
    out.append(paint.grave(finding.severity(), label.isEmpty() ? carets : carets + ' ' + label));
    out.append('\n');
  }

  private static boolean wholeFile(Span span) {
    return span.start() == 0 && span.end() == 0;
  }
}
