package dev.pellucid.parse;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The bytes of a file to its text: UTF-8, strictly. Bytes that are not UTF-8 are named with their
 * place and stand in the text as U+FFFD, so that the other lines can still be read. A file of
 * another encoding that cannot be read at all gives an empty text.
 */
public final class SourceBytes {
  static final Code UTF_16 = new Code("utf-16");
  static final Code NOT_UTF_8 = new Code("not-utf-8");
  private static final char REPLACEMENT = '\uFFFD';

  private SourceBytes() {}

  /**
   * A text and what was wrong with its bytes.
   *
   * @param findings none, or the one about the encoding
   */
  public record Decoded(SourceFile source, List<Finding> findings) {
    public Decoded {
      findings = List.copyOf(findings);
    }

    /** Whether nothing but the encoding can be spoken of. */
    public boolean isUnreadable() {
      return !findings.isEmpty() && source.text().isEmpty();
    }
  }

  public static Decoded decode(String path, byte[] bytes) {
    if (isUtf16(bytes)) {
      SourceFile empty = new SourceFile(path, "");
      return new Decoded(empty, List.of(otherEncodingFinding(empty, "UTF-16")));
    }
    String text = new String(bytes, StandardCharsets.UTF_8);
    return text.indexOf(REPLACEMENT) < 0
        ? new Decoded(new SourceFile(path, text), List.of())
        : decodeStrictly(path, bytes);
  }

  private static Finding otherEncodingFinding(SourceFile source, String encoding) {
    return Finding.error(
            UTF_16, source.beginning(), "the file is saved as " + encoding + ", not as UTF-8")
        .helping("save it again from your editor with the encoding UTF-8");
  }

  /** Told by a byte order mark, or by a zero byte beside one of the first two letters. */
  private static boolean isUtf16(byte[] bytes) {
    if (bytes.length < 2) {
      return false;
    }
    int mark = (bytes[0] & 0xFF) << 8 | (bytes[1] & 0xFF);
    boolean zeros =
        bytes.length >= 4
            && ((bytes[0] == 0 && bytes[1] != 0 && bytes[2] == 0 && bytes[3] != 0)
                || (bytes[0] != 0 && bytes[1] == 0 && bytes[2] != 0 && bytes[3] == 0));
    return mark == 0xFEFF || mark == 0xFFFE || zeros;
  }

  /** Tells bytes that are not UTF-8 from a replacement that was saved as one. */
  private static Decoded decodeStrictly(String path, byte[] bytes) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    List<Integer> badChars = new ArrayList<>();
    List<Integer> badBytes = new ArrayList<>();
    CoderResult result = decoder.decode(in, out, true);
    while (result.isError()) {
      badChars.add(out.position());
      badBytes.add(bytes[in.position()] & 0xFF);
      in.position(in.position() + result.length());
      out.put(REPLACEMENT);
      result = decoder.decode(in, out, true);
    }
    SourceFile source = new SourceFile(path, out.flip().toString());
    return badChars.isEmpty()
        ? new Decoded(source, List.of())
        : new Decoded(source, List.of(badBytesFinding(source, badChars, badBytes.get(0))));
  }

  private static Finding badBytesFinding(SourceFile source, List<Integer> places, int value) {
    int first = places.get(0);
    String name = String.format(Locale.ROOT, "%02X", value);
    Finding finding =
        Finding.error(
                NOT_UTF_8,
                source.span(first, first + 1),
                "the byte " + name + " is not UTF-8, the file was saved in another encoding")
            .helping("save it again from your editor with the encoding UTF-8");
    TreeSet<Integer> lines = new TreeSet<>();
    places.forEach(place -> lines.add(source.position(place).line()));
    lines.remove(source.position(first).line());
    return lines.isEmpty()
        ? finding
        : finding.noting(
            "such bytes also on line "
                + lines.stream().limit(10).map(String::valueOf).collect(Collectors.joining(", "))
                + (lines.size() > 10 ? " and more" : ""));
  }
}
