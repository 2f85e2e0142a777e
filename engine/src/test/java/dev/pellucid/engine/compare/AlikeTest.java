package dev.pellucid.engine.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Two feeds are alike where a whole comparison finds nothing, whatever figure of a folder moves.
 */
class AlikeTest {
  private static final Path EXAMPLE = Example.whole();
  private static final Days DAYS = Days.on(LocalDate.of(2026, 11, 25));
  private static final List<String> EDITED =
      List.of(
          ".recipe", ".premix", ".limits", "2026-11.yaml", "retention.yaml", "fish-meal-65.yaml");
  private static final int EDITS = 150;

  private final Random random = new Random(20_261_128);
  private int alike;
  private int different;

  @Test
  void alikeIsWhereNothingIsDifferent() throws IOException {
    Texts texts = Texts.at(EXAMPLE).held();
    List<String> paths =
        texts.paths().stream().filter(path -> EDITED.stream().anyMatch(path::endsWith)).toList();
    Map<String, FeedFigures> before = figures(texts);
    for (int i = 0; i < EDITS; i++) {
      String path = paths.get(random.nextInt(paths.size()));
      String text = Files.readString(EXAMPLE.resolve(path));
      figures(texts.over(Map.of(path, edited(text)))).forEach((code, is) -> look(before, code, is));
    }
    assertTrue(alike > EDITS, alike + " were alike");
    assertTrue(different > EDITS, different + " were different");
  }

  private void look(Map<String, FeedFigures> before, String code, FeedFigures is) {
    FeedFigures was = before.get(code);
    if (was != null) {
      boolean none = Effect.between(was, is).isNone();
      assertEquals(none, Alike.are(was, is), code);
      alike += none ? 1 : 0;
      different += none ? 0 : 1;
    }
  }

  /** A digit of it is another. */
  private String edited(String text) {
    List<MatchResult> digits = Pattern.compile("[0-9]").matcher(text).results().toList();
    int at = digits.get(random.nextInt(digits.size())).start();
    return text.substring(0, at) + random.nextInt(10) + text.substring(at + 1);
  }

  private static Map<String, FeedFigures> figures(Texts texts) {
    Shared shared = Shared.of(ReadFolder.of(texts), DAYS);
    Map<String, FeedFigures> figures = new TreeMap<>();
    for (Optional<Map.Entry<String, FeedFigures>> one :
        Streamed.judge(shared, texts.ending(".recipe"), recipe -> taken(shared, recipe))) {
      one.ifPresent(it -> figures.put(it.getKey(), it.getValue()));
    }
    return figures;
  }

  private static Optional<Map.Entry<String, FeedFigures>> taken(Shared shared, Checked recipe) {
    return recipe
        .recipe()
        .flatMap(
            one -> one.feed().map(feed -> FigureTaking.of(feed, one.judgement(), shared.tables())))
        .map(figures -> Map.entry(recipe.code(), figures));
  }
}
