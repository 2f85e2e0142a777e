package dev.pellucid.engine.outcome;

import java.util.List;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A tree of JSON to text: two blanks for each level, one entry a line, {@code \n} at each end. */
final class Json {
  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
  private static final ObjectWriter WRITER =
      JsonMapper.builder()
          .build()
          .writer()
          .with(
              new DefaultPrettyPrinter()
                  .withObjectIndenter(INDENT)
                  .withArrayIndenter(INDENT)
                  .withSeparators(
                      Separators.createDefaultInstance()
                          .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                          .withObjectEmptySeparator("")
                          .withArrayEmptySeparator("")));

  private Json() {}

  static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  static ArrayNode texts(List<String> texts) {
    ArrayNode array = JsonNodeFactory.instance.arrayNode();
    texts.forEach(array::add);
    return array;
  }

  static String written(ObjectNode tree) {
    return WRITER.writeValueAsString(tree) + "\n";
  }
}
