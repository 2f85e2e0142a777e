package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Recipes and premixes of tests.
 *
 * @param lines of each, by its code
 * @param plants by code; a code that has none is made where nobody knows
 */
record MadeBy(Map<String, List<String>> lines, Map<String, String> plants, Set<String> premixes)
    implements Recipes, Plants {
  /** All of one plant. */
  static MadeBy atOnePlant(Map<String, List<String>> lines, String... premixes) {
    Map<String, String> plants =
        lines.keySet().stream().collect(Collectors.toMap(code -> code, code -> "shed"));
    return new MadeBy(lines, plants, Set.of(premixes));
  }

  @Override
  public List<String> lines(BatchRecord record) {
    return lines.getOrDefault(record.code(), List.of());
  }

  @Override
  public List<String> lines(String code) {
    return lines.entrySet().stream()
        .filter(entry -> entry.getKey().equalsIgnoreCase(code))
        .flatMap(entry -> entry.getValue().stream())
        .toList();
  }

  @Override
  public Optional<String> plant(BatchRecord record) {
    return Optional.ofNullable(plants.get(record.code()));
  }

  @Override
  public boolean isPremix(String code) {
    return premixes.contains(code);
  }

  @Override
  public boolean isFeed(String code) {
    return lines.containsKey(code) && !premixes.contains(code);
  }
}
