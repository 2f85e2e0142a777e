package dev.pellucid.engine.outcome;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.exc.JacksonIOException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/**
 * JSON written as it is told, with nothing of it kept: two blanks for each level, one entry a line,
 * {@code \n} at each end. The whole is one object, or one list.
 */
final class Json {
  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
  private static final JsonFactory FACTORY = new JsonFactory();

  private static final MathContext DIGITS = new MathContext(12);

  private final JsonGenerator out;

  private Json(JsonGenerator out) {
    this.out = out;
  }

  /** An object as UTF-8; the stream is left open. */
  static void write(OutputStream out, Consumer<Json> content) throws IOException {
    streamed(out, writer -> write(writer, content));
  }

  /** A list as UTF-8; the stream is left open. */
  static void writeList(OutputStream out, Consumer<Json> entries) throws IOException {
    streamed(
        out,
        writer -> {
          JsonGenerator generator = FACTORY.createGenerator(new Indented(), writer);
          generator.writeStartArray();
          entries.accept(new Json(generator));
          generator.writeEndArray();
          generator.writeRaw('\n');
          generator.flush();
        });
  }

  private static void streamed(OutputStream out, Consumer<Writer> content) throws IOException {
    Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
    try {
      content.accept(writer);
    } catch (JacksonIOException broken) {
      throw broken.getCause();
    }
    writer.flush();
  }

  static String text(Consumer<Json> content) {
    StringWriter text = new StringWriter();
    write(text, content);
    return text.toString();
  }

  private static void write(Writer writer, Consumer<Json> content) {
    JsonGenerator generator = FACTORY.createGenerator(new Indented(), writer);
    generator.writeStartObject();
    content.accept(new Json(generator));
    generator.writeEndObject();
    generator.writeRaw('\n');
    generator.flush();
  }

  /** A text, or null. */
  void put(String key, @Nullable String text) {
    if (text == null) {
      out.writeNullProperty(key);
    } else {
      out.writeStringProperty(key, text);
    }
  }

  void put(String key, long number) {
    out.writeNumberProperty(key, number);
  }

  void put(String key, boolean is) {
    out.writeBooleanProperty(key, is);
  }

  /** A figure, or null. */
  void put(String key, @Nullable BigDecimal figure) {
    if (figure == null) {
      out.writeNullProperty(key);
    } else {
      out.writeNumberProperty(key, figure);
    }
  }

  void put(String key, List<String> texts) {
    out.writeArrayPropertyStart(key);
    for (String text : texts) {
      out.writeString(text);
    }
    out.writeEndArray();
  }

  /** A figure, or null where there is none. */
  void figure(String key, OptionalDouble figure) {
    put(key, figure.isPresent() ? exact(figure.getAsDouble()) : null);
  }

  /** A figure, or null where there is none. */
  void figure(String key, Optional<Double> figure) {
    put(key, figure.isPresent() ? exact(figure.get()) : null);
  }

  /** A list of objects under a key. */
  <T> void list(String key, List<T> all, Consumer<T> keysOf) {
    list(key);
    for (T one : all) {
      object();
      keysOf.accept(one);
      end();
    }
    end();
  }

  /** Without what binary rounding leaves behind the twelfth digit; null over nothing. */
  static @Nullable BigDecimal exact(double value) {
    if (!Double.isFinite(value)) {
      return null;
    }
    BigDecimal exact = new BigDecimal(value, DIGITS).stripTrailingZeros();
    return exact.scale() < 0 ? exact.setScale(0) : exact;
  }

  /** {@code not-proven} for the constant of that name. */
  static String word(String constant) {
    return constant.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Begins an object under a key. */
  void object(String key) {
    out.writeObjectPropertyStart(key);
  }

  /** Begins an object in a list. */
  void object() {
    out.writeStartObject();
  }

  /** Begins a list under a key. */
  void list(String key) {
    out.writeArrayPropertyStart(key);
  }

  /** Ends the object or list that was begun last. */
  void end() {
    if (out.streamWriteContext().inArray()) {
      out.writeEndArray();
    } else {
      out.writeEndObject();
    }
  }

  /** How it is laid out. */
  private static final class Indented extends ObjectWriteContext.Base {
    @Override
    public PrettyPrinter getPrettyPrinter() {
      return new DefaultPrettyPrinter()
          .withObjectIndenter(INDENT)
          .withArrayIndenter(INDENT)
          .withSeparators(
              Separators.createDefaultInstance()
                  .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                  .withObjectEmptySeparator("")
                  .withArrayEmptySeparator(""));
    }
  }
}
