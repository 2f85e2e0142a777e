package dev.pellucid.engine.promise;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.ReportTexts;
import dev.pellucid.engine.ReportedFolder;
import dev.pellucid.engine.data.Schemas;
import dev.pellucid.engine.goal.CheckReports;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What this version does, as the lists of the page. */
final class Lists {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path OUTCOME =
      Path.of("src", "main", "resources", "dev", "pellucid", "outcome");
  private static final JsonMapper JSON = new JsonMapper();

  private Lists() {}

  /**
   * All of them.
   *
   * @param folder an empty one, to check a few feeds in
   */
  static List<Listed> all(Path folder) throws IOException {
    List<Listed> all = new ArrayList<>();
    all.add(new Listed("codes", "code", codes(), true));
    all.add(new Listed("language", "word", LanguageRows.all(), false));
    all.add(new Listed("keys", "key", keys(), false));
    all.add(new Listed("goals", "parameter", GoalRows.all(), false));
    for (String file : List.of("findings", "compare", "least-cost", "recall", "share-out")) {
      all.add(new Listed(file + ".json", "field", fields(file), false));
    }
    ReportedFolder.copyTo(folder);
    CheckReports reports =
        Pellucid.checkWithReports(FolderState.at(folder), PrintedPaths.BELOW_FOLDER, DAY);
    String sarif = report(reports, "findings.sarif");
    all.add(new Listed("findings.sarif", "field", SeenRows.ofJson("log", tree(sarif)), false));
    String junit = report(reports, "limits-junit.xml");
    all.add(new Listed("limits-junit.xml", "part", SeenRows.ofXml(junit), false));
    return all;
  }

  private static String report(CheckReports reports, String name) {
    return ReportTexts.of(Objects.requireNonNull(reports.files().get(name), name));
  }

  private static List<Row> codes() throws IOException {
    SortedMap<String, List<String>> bySort = new TreeMap<>();
    for (String line : Files.readAllLines(OUTCOME.resolve("kinds.txt"))) {
      String[] words = line.split(" +", -1);
      String sort = words[2] + " " + words[1];
      bySort.computeIfAbsent(sort, key -> new ArrayList<>()).add(words[0]);
    }
    return rows(bySort);
  }

  static List<Row> rows(Map<String, List<String>> words) {
    List<Row> rows = new ArrayList<>();
    words.forEach((head, all) -> rows.add(new Row(head, all)));
    return rows;
  }

  private static List<Row> keys() {
    List<Row> rows = new ArrayList<>();
    Schemas.byKind().forEach((kind, schema) -> rows.addAll(SchemaRows.written(kind, tree(schema))));
    return Row.joined(rows);
  }

  private static List<Row> fields(String file) throws IOException {
    String schema = Files.readString(OUTCOME.resolve(file + ".schema.json"));
    return Row.joined(SchemaRows.read(file, tree(schema)));
  }

  private static JsonNode tree(String json) {
    return JSON.readTree(json);
  }
}
