package dev.pellucid.parse;

import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile;
import dev.pellucid.syntax.FileKind;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The text of one file to its tree and to everything that is wrong with the text.
 *
 * <p>The route: {@link Tokens} cuts the text into tokens and {@link Line} the tokens into lines;
 * {@link FileReader} takes the lines in turn, sees which section each belongs to, and has {@link
 * LineReader} match it alone against the rule of that section. A line that fits becomes a record,
 * made by the class named after its lines; one that does not goes to the slips, which say what is
 * wrong with it. No line can change how another is read, except a heading.
 */
public final class FeedParser {
  private FeedParser() {}

  /**
   * Reads one file. There is always a tree; what could not be read is absent from it, and a finding
   * says so.
   *
   * @throws IllegalArgumentException if the name ends in none of {@code .recipe}, {@code .premix}
   *     and {@code .limits}
   */
  public static Parsed parse(SourceFile source) {
    return parse(source, List.of(), false);
  }

  /**
   * Reads one file from what {@link SourceBytes} made of its bytes; its findings come first.
   *
   * @throws IllegalArgumentException as above
   */
  public static Parsed parse(SourceBytes.Decoded decoded) {
    if (decoded.isUnreadable()) {
      return new Parsed(parse(decoded.source()).file(), decoded.findings());
    }
    return parse(decoded.source(), decoded.findings(), !decoded.findings().isEmpty());
  }

  /**
   * Reads one file from its bytes, which must be UTF-8; what is not is a finding.
   *
   * @throws IllegalArgumentException as above
   */
  public static Parsed parse(String path, byte[] bytes) {
    return parse(SourceBytes.decode(path, bytes));
  }

  private static Parsed parse(SourceFile source, List<Finding> aboutBytes, boolean lossTold) {
    Optional<FileKind> kind = FileKind.of(source.path());
    if (kind.isEmpty()) {
      throw new IllegalArgumentException("not one of our files: " + source);
    }
    Tokens tokens = new Tokens(source);
    Blemishes blemishes = new Blemishes(source, tokens, lossTold);
    FileReader reader = new FileReader(source, kind.get(), tokens, blemishes);
    FeedFile file = reader.read();
    List<Finding> findings = new ArrayList<>(aboutBytes);
    findings.addAll(blemishes.findings());
    Tabs.addTo(findings, source);
    findings.addAll(reader.findings());
    findings.sort(null);
    return new Parsed(file, findings);
  }
}
