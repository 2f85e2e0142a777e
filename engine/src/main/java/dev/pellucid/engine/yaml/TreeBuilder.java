package dev.pellucid.engine.yaml;

import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Mapping;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.engine.yaml.Yaml.Sequence;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/** The token stream of one file, made into nodes; what we do not take of YAML is a finding. */
final class TreeBuilder {
  private static final int DEEPEST = 20;

  private final SourceFile file;
  private final JsonParser tokens;
  private final List<Finding> findings;
  private final Offsets offsets;

  TreeBuilder(SourceFile file, JsonParser tokens, List<Finding> findings) {
    this.file = file;
    this.tokens = tokens;
    this.findings = findings;
    this.offsets = new Offsets(file);
  }

  /** The root of the only document; empty in a file without one. */
  Optional<Yaml> document() {
    JsonToken first = tokens.nextToken();
    if (first == null) {
      return Optional.empty();
    }
    Yaml root = node(first, 1);
    if (tokens.nextToken() != null) {
      findings.add(YamlFindings.secondDocument(offsets.at(start())));
    }
    return Optional.of(root);
  }

  private Yaml node(JsonToken token, int depth) {
    if (token != JsonToken.START_OBJECT && token != JsonToken.START_ARRAY) {
      return ScalarReader.read(text(), span(), findings);
    }
    Span opening = offsets.at(start());
    ScalarReader.refuseProperties(opening, findings);
    if (depth > DEEPEST) {
      findings.add(YamlFindings.tooDeep(opening, DEEPEST));
      tokens.skipChildren();
      return new Scalar("", true, opening);
    }
    return token == JsonToken.START_OBJECT ? mapping(opening, depth) : sequence(opening, depth);
  }

  private Mapping mapping(Span opening, int depth) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    JsonToken token = tokens.nextToken();
    while (token == JsonToken.PROPERTY_NAME) {
      Scalar key = ScalarReader.readKey(text(), span(), findings);
      Yaml value = node(after(), depth + 1);
      Entry earlier = entries.putIfAbsent(key.text(), new Entry(key, value));
      if (earlier != null) {
        findings.add(YamlFindings.duplicateKey(key, earlier.key()));
      } else if (isGlued(key, value)) {
        findings.add(YamlFindings.missingSpace(key.span(), key.text()));
      }
      token = tokens.nextToken();
    }
    return new Mapping(List.copyOf(entries.values()), closing(opening));
  }

  private Sequence sequence(Span opening, int depth) {
    List<Yaml> items = new ArrayList<>();
    JsonToken token = tokens.nextToken();
    while (token != null && token != JsonToken.END_ARRAY) {
      items.add(node(token, depth + 1));
      token = tokens.nextToken();
    }
    return new Sequence(items, closing(opening));
  }

  private JsonToken after() {
    JsonToken token = tokens.nextToken();
    return token == null ? JsonToken.VALUE_NULL : token;
  }

  /** {@code {to:12 %}}: YAML takes it for a key without a value. */
  private static boolean isGlued(Scalar key, Yaml value) {
    return key.plain()
        && value instanceof Scalar text
        && text.isEmpty()
        && key.text().indexOf(':') > 0;
  }

  private Span closing(Span opening) {
    return trimmed(opening.start(), offsets.unit(tokens.currentLocation().getCharOffset()));
  }

  private String text() {
    String text = tokens.getString();
    return text == null ? "" : text;
  }

  private Span span() {
    int start = offsets.unit(start());
    return trimmed(start, offsets.unit(tokens.currentLocation().getCharOffset()));
  }

  private Span trimmed(int start, int end) {
    String text = file.text();
    int last = Math.max(start, end);
    while (last > start && text.charAt(last - 1) <= ' ') {
      last--;
    }
    return file.span(start, last);
  }

  private long start() {
    return tokens.currentTokenLocation().getCharOffset();
  }
}
