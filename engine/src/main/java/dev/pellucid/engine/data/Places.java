package dev.pellucid.engine.data;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The places of data files, which alone say what a file tells. */
final class Places {
  static final Code MISPLACED = new Code("data-misplaced-file");

  static final String NUTRIENTS = "nutrients";
  static final String INGREDIENTS = "ingredients";
  static final String SPECIES = "species";
  static final String PLANT = "plant";
  static final String LABEL = "label";
  static final String PRICES = "prices";
  static final String LOTS = "lots";
  static final String BATCHES = "batches";
  static final String PLANS = "plans";

  private Places() {}

  static boolean isYaml(String relative) {
    return relative.endsWith(".yaml");
  }

  /** That a file is in no place where it would be read. */
  static Finding misplaced(DataFile file) {
    Finding finding =
        Finding.warning(
            MISPLACED, file.source().beginning(), "the file is in no place where data is read");
    Optional<String> belongs = Astray.belongs(file);
    if (belongs.isPresent()) {
      String what = belongs.get().startsWith(LOTS) ? "a file of lots" : "a batch record";
      return finding.helping(
          "it looks like " + what + ": it belongs into " + belongs.get() + ", and ends in .yaml");
    }
    if (file.relative().endsWith(".yml")) {
      return finding.helping("data files end in .yaml");
    }
    List<String> single =
        Arrays.stream(DataFileKind.values())
            .filter(kind -> !kind.isFolder())
            .map(DataFileKind::place)
            .toList();
    List<String> near = NearNames.of(file.relative(), single);
    if (!near.isEmpty()) {
      return finding.helping(Meant.question(Choices.of(near)));
    }
    List<String> places = Arrays.stream(DataFileKind.values()).map(DataFileKind::place).toList();
    return finding.helping("data is read from " + Choices.of(places));
  }
}
