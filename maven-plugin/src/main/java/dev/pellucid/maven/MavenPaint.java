package dev.pellucid.maven;

import dev.pellucid.finding.Severity;
import dev.pellucid.show.Paint;
import java.lang.reflect.Method;
import java.util.Optional;
import org.apache.maven.plugin.AbstractMojo;

/**
 * The colours of Maven's own lines, where Maven has them on: it knows whether there is a screen,
 * what {@code -Dstyle.color} says, and which colours a person has chosen.
 *
 * <p>Maven shows no plugin how it does that, and each of its lines another class. So the class is
 * looked up in Maven itself by name; where none of those known is there, nothing is coloured.
 */
final class MavenPaint implements Paint {
  private enum Source {
    MAVEN_3("org.apache.maven.shared.utils.logging.MessageUtils", "buffer"),
    MAVEN_4("org.apache.maven.jline.MessageUtils", "builder");

    private final String type;
    private final String builder;

    Source(String type, String builder) {
      this.type = type;
      this.builder = builder;
    }

    /** How a new message is begun, where colours are on. */
    Optional<Method> find(ClassLoader maven) {
      try {
        Class<?> messages = Class.forName(type, true, maven);
        boolean on = (boolean) messages.getMethod("isColorEnabled").invoke(null);
        return on ? Optional.of(messages.getMethod(builder)) : Optional.empty();
      } catch (ReflectiveOperationException | LinkageError | ClassCastException unknown) {
        return Optional.empty();
      }
    }
  }

  private final Method builder;

  private MavenPaint(Method builder) {
    this.builder = builder;
  }

  /** As Maven paints now. */
  static Paint now() {
    return in(AbstractMojo.class.getClassLoader());
  }

  /** As the Maven paints whose classes are those of a loader. */
  static Paint in(ClassLoader maven) {
    for (Source source : Source.values()) {
      Optional<Method> builder = source.find(maven);
      if (builder.isPresent()) {
        return new MavenPaint(builder.get());
      }
    }
    return Paint.NONE;
  }

  @Override
  public String place(String words) {
    return styled("strong", words);
  }

  @Override
  public String grave(Severity severity, String words) {
    return switch (severity) {
      case ERROR -> styled("failure", words);
      case WARNING -> styled("warning", words);
      case NOTE -> styled("strong", words);
    };
  }

  private String styled(String style, String words) {
    try {
      Object message = builder.invoke(null);
      Method paint = builder.getReturnType().getMethod(style, Object.class);
      return String.valueOf(paint.invoke(message, words));
    } catch (ReflectiveOperationException unknown) {
      return words;
    }
  }
}
