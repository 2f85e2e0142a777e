package dev.pellucid.engine.larder;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Choices;
import dev.pellucid.text.NearNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The data files of a folder by their places, which alone say what a file tells. */
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

  private final List<DataFile> files;

  /**
   * @param files in the order of their paths
   */
  Places(List<DataFile> files) {
    this.files = List.copyOf(files);
  }

  /** All of them, in the order of their paths. */
  List<DataFile> files() {
    return files;
  }

  /** The file of a single place. */
  Optional<DataFile> file(String relative) {
    return files.stream().filter(it -> it.relative().equals(relative)).findFirst();
  }

  /** The files of a folder, in the order of their paths. */
  List<DataFile> in(String folder) {
    return files.stream().filter(it -> it.isIn(folder) && isYaml(it.relative())).toList();
  }

  /** A warning for each file that is in no place where it would be read. */
  void warn(List<Finding> findings) {
    for (DataFile file : files) {
      boolean placed =
          SINGLE.contains(file.relative())
              || (isYaml(file.relative()) && FOLDERS.stream().anyMatch(file::isIn));
      if (!placed) {
        findings.add(misplaced(file));
      }
    }
  }

  private static boolean isYaml(String relative) {
    return relative.endsWith(".yaml");
  }

  private static Finding misplaced(DataFile file) {
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
