package dev.pellucid.engine.docs;

import dev.pellucid.engine.data.KeyTables;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The parts of pages that are made from the code, between {@code <!-- made: NAME -->} and {@code
 * <!-- end of what is made -->}.
 */
final class MadeParts {
  private static final Pattern PART =
      Pattern.compile("(?s)(<!-- made: ([a-z -]+) -->\n)(.*?)(?=<!-- end of what is made -->)");

  private static final Map<String, Supplier<String>> MAKERS = makers();

  private MadeParts() {}

  /** A page with each of its parts as it is made today. */
  static String made(String markdown) {
    return PART.matcher(markdown)
        .replaceAll(part -> Matcher.quoteReplacement(part.group(1) + "\n" + part(part.group(2))));
  }

  /** The names of the parts of a page. */
  static List<String> names(String markdown) {
    return PART.matcher(markdown).results().map(part -> part.group(2)).toList();
  }

  private static String part(String name) {
    Supplier<String> maker = MAKERS.get(name);
    if (maker == null) {
      throw new AssertionError("nobody makes a part " + name + "; see MadeParts");
    }
    return maker.get() + "\n";
  }

  private static Map<String, Supplier<String>> makers() {
    Map<String, Supplier<String>> makers = new LinkedHashMap<>();
    makers.put("units", MadeParts::units);
    makers.put("steps", MadeParts::steps);
    KeyTables.kinds().forEach(kind -> makers.put("keys of " + kind, () -> KeyTables.of(kind)));
    return makers;
  }

  private static String units() {
    StringBuilder table = new StringBuilder("| for | units |\n|---|---|\n");
    for (Kind kind : Kind.values()) {
      String symbols =
          Arrays.stream(Unit.values())
              .filter(unit -> unit.kind() == kind && kind != Kind.PRICE)
              .map(MadeParts::spellings)
              .collect(Collectors.joining(", "));
      if (!symbols.isEmpty()) {
        table.append("| ").append(kind.phrase()).append(" | ").append(symbols).append(" |\n");
      }
    }
    return table.toString();
  }

  private static String spellings(Unit unit) {
    List<String> others = new ArrayList<>();
    for (String symbol : Unit.symbols()) {
      if (!symbol.equals(unit.symbol()) && Unit.of(symbol).filter(unit::equals).isPresent()) {
        others.add("`" + symbol + "`");
      }
    }
    return "`"
        + unit.symbol()
        + "`"
        + (others.isEmpty() ? "" : " (or " + String.join(", ", others) + ")");
  }

  private static String steps() {
    StringBuilder table = new StringBuilder("| step | what is said of it |\n|---|---|\n");
    for (Step step : Step.values()) {
      String properties =
          step.properties().stream().map(MadeParts::property).collect(Collectors.joining(", "));
      table.append("| `" + step.word() + "` | " + properties + " |\n");
    }
    return table.toString();
  }

  private static String property(Property property) {
    String measured = property.takesWord() ? "a word" : property.kind().phrase();
    return "`" + property.word() + "` (" + measured + ")";
  }
}
