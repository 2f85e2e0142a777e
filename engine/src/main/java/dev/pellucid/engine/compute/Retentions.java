package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Retention;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The stability classes of a folder by a small index; index 0 is {@link Nutrient#STABLE}. */
public final class Retentions {
  private final List<Optional<Retention>> byIndex = new ArrayList<>();
  private final Map<String, Integer> indexes = new HashMap<>();

  public Retentions(Practice practice) {
    byIndex.add(Optional.empty());
    indexes.put(Nutrient.STABLE, 0);
    practice.retention().values().stream()
        .sorted(Comparator.comparing(Retention::stability))
        .forEach(this::add);
  }

  private void add(Retention retention) {
    indexes.put(retention.stability(), byIndex.size());
    byIndex.add(Optional.of(retention));
  }

  public int count() {
    return byIndex.size();
  }

  /** The index of a class; of an unknown one, which the reader has reported, that of stable. */
  public int indexOf(String stability) {
    return indexes.getOrDefault(stability, 0);
  }

  /** The class at an index; empty for stable. */
  public Optional<Retention> at(int index) {
    return byIndex.get(index);
  }
}
