package dev.pellucid.engine.promise;

import dev.pellucid.measure.Unit;
import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.syntax.FileKind;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** The words of recipes, premixes and profiles. */
final class LanguageRows {
  private LanguageRows() {}

  static List<Row> all() {
    Map<String, List<String>> words = new LinkedHashMap<>();
    for (FileKind kind : FileKind.values()) {
      words.put("head of " + kind.extension(), kind.headWords());
      words.put(
          "sections of " + kind.extension(),
          kind.sections().stream().map(SectionWord::word).toList());
    }
    for (Step step : Step.values()) {
      words.put("step " + step.word(), step.properties().stream().map(Property::word).toList());
    }
    words.put("units", List.copyOf(Unit.symbols()));
    words.put("any place", ofTheGrammar());
    return Row.joined(Lists.rows(words));
  }

  private static List<String> ofTheGrammar() {
    TreeSet<String> words = new TreeSet<>();
    for (int type = 1; type <= FeedTokens.VOCABULARY.getMaxTokenType(); type++) {
      String literal = FeedTokens.VOCABULARY.getLiteralName(type);
      if (literal != null && literal.matches("'[a-z]+'")) {
        words.add(literal.substring(1, literal.length() - 1));
      }
    }
    return new ArrayList<>(words);
  }
}
