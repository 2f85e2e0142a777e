package dev.pellucid.engine.larder;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Choices;
import dev.pellucid.text.NearNames;
import java.util.ArrayList;
import java.util.List;

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

  /** Folders in which every YAML file has the same meaning. */
  static final List<String> FOLDERS =
      List.of(NUTRIENTS, INGREDIENTS, SPECIES, PLANT, LABEL, PRICES, LOTS, BATCHES);

  /** Files with a place of their own. */
  static final List<String> SINGLE =
      List.of(
          SettingsReader.FILE,
          Sources.FILE,
          GroupsReader.FILE,
          BoundsReader.FILE,
          RetentionReader.FILE,
          SpreadsReader.FILE,
          DensitiesReader.FILE,
          SteamReader.FILE,
          CautionsReader.FILE,
          SequenceReader.FILE);

  private Places() {}

  /** Whether a file lies where it is read. */
  static boolean isPlaced(String relative) {
    return SINGLE.contains(relative)
        || (isYaml(relative)
            && FOLDERS.stream().anyMatch(folder -> relative.startsWith(folder + "/")));
  }

  static boolean isYaml(String relative) {
    return relative.endsWith(".yaml");
  }

  /** That a file is in no place where it would be read. */
  static Finding misplaced(DataFile file) {
    Finding finding =
        Finding.warning(
            MISPLACED, file.source().beginning(), "the file is in no place where data is read");
    if (file.relative().endsWith(".yml")) {
      return finding.helping("data files end in .yaml");
    }
    List<String> near = NearNames.of(file.relative(), SINGLE);
    if (!near.isEmpty()) {
      return finding.helping("did you mean " + Choices.of(near) + "?");
    }
    List<String> places = new ArrayList<>(SINGLE);
    FOLDERS.forEach(folder -> places.add(folder + "/"));
    return finding.helping("data is read from " + Choices.of(places));
  }
}
