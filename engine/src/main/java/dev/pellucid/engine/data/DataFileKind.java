package dev.pellucid.engine.data;

import java.util.Arrays;
import java.util.Optional;

/** Every kind of data file: where such files lie below the folder, and which keys they have. */
public enum DataFileKind {
  SETTINGS(SettingsReader.FILE, SettingsVocabulary.SETTINGS_KEYS),
  SOURCES(Sources.FILE, SourcesVocabulary.SOURCES_KEYS),
  GROUPS(GroupsReader.FILE, GroupsVocabulary.GROUPS_KEYS),
  BOUNDS(BoundsReader.FILE, PracticeVocabulary.BOUNDS_KEYS),
  RETENTION(RetentionReader.FILE, PracticeVocabulary.RETENTION_KEYS),
  SPREADS(SpreadsReader.FILE, PracticeVocabulary.SPREADS_KEYS),
  DENSITIES(DensitiesReader.FILE, PracticeVocabulary.DENSITIES_KEYS),
  STEAM(SteamReader.FILE, PracticeVocabulary.STEAM_KEYS),
  CAUTIONS(CautionsReader.FILE, PracticeVocabulary.CAUTIONS_KEYS),
  SEQUENCE(SequenceReader.FILE, SequenceVocabulary.SEQUENCE_KEYS),
  NUTRIENTS(Places.NUTRIENTS + "/", NutrientVocabulary.NUTRIENTS_KEYS),
  INGREDIENTS(Places.INGREDIENTS + "/", IngredientVocabulary.INGREDIENT_KEYS),
  SPECIES(Places.SPECIES + "/", SpeciesVocabulary.SPECIES_KEYS),
  PLANT(Places.PLANT + "/", PlantVocabulary.PLANT_KEYS),
  LABEL(Places.LABEL + "/", LabelVocabulary.LABEL_KEYS),
  PRICES(Places.PRICES + "/", PricesVocabulary.PRICES_KEYS),
  LOTS(Places.LOTS + "/", LotsVocabulary.LOTS_KEYS),
  BATCHES(Places.BATCHES + "/", BatchVocabulary.BATCH_KEYS);

  private final String place;
  private final Keys keys;

  /**
   * @param place the one file of this kind, or a folder and a slash
   */
  DataFileKind(String place, Keys keys) {
    this.place = place;
    this.keys = keys;
  }

  /** The kind of a file by its path below the folder; empty where no data is read. */
  public static Optional<DataFileKind> of(String relative) {
    return Arrays.stream(values()).filter(kind -> kind.holds(relative)).findFirst();
  }

  private boolean holds(String relative) {
    return isFolder()
        ? relative.startsWith(place) && Places.isYaml(relative)
        : relative.equals(place);
  }

  /** The one file of this kind, or a folder and a slash. */
  String place() {
    return place;
  }

  /** Whether every YAML file of a folder is of this kind. */
  boolean isFolder() {
    return place.endsWith("/");
  }

  /** The folder that such files lie in, else the name of the file without its ending. */
  String word() {
    return isFolder()
        ? place.substring(0, place.length() - 1)
        : place.substring(place.lastIndexOf('/') + 1).replace(".yaml", "");
  }

  Keys keys() {
    return keys;
  }
}
