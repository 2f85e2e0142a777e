package dev.pellucid.engine.data;

import dev.pellucid.text.BundledPath;
import java.util.List;
import java.util.Optional;

/** Every kind of data file: where such files lie below the folder, and which keys they have. */
public enum DataFileKind {
  SETTINGS(SettingsReader.FILE),
  SOURCES(Sources.FILE),
  GROUPS(GroupsReader.FILE),
  BOUNDS(BoundsReader.FILE),
  RETENTION(RetentionReader.FILE),
  SPREADS(SpreadsReader.FILE),
  DENSITIES(DensitiesReader.FILE),
  STEAM(SteamReader.FILE),
  CAUTIONS(CautionsReader.FILE),
  SEQUENCE(SequenceReader.FILE),
  NUTRIENTS(Places.NUTRIENTS + "/"),
  INGREDIENTS(Places.INGREDIENTS + "/"),
  SPECIES(Places.SPECIES + "/"),
  PLANT(Places.PLANT + "/"),
  LABEL(Places.LABEL + "/"),
  PRICES(Places.PRICES + "/"),
  LOTS(Places.LOTS + "/"),
  BATCHES(Places.BATCHES + "/"),
  PLANS(Places.PLANS + "/");

  private static final List<DataFileKind> ALL = List.of(values());

  private final String place;

  /**
   * @param place the one file of this kind, or a folder and a slash
   */
  DataFileKind(String place) {
    this.place = place;
  }

  /**
   * The kind of a file by its path below the folder, or with the program; empty where no data is
   * read.
   */
  public static Optional<DataFileKind> of(String path) {
    String relative = BundledPath.below(path);
    for (DataFileKind kind : ALL) {
      if (kind.holds(relative)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
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

  /** Its keys; those of a kind of which a folder has no file are never made. */
  Keys keys() {
    return switch (this) {
      case SETTINGS -> SettingsVocabulary.SETTINGS_KEYS;
      case SOURCES -> SourcesVocabulary.SOURCES_KEYS;
      case GROUPS -> GroupsVocabulary.GROUPS_KEYS;
      case BOUNDS -> PracticeVocabulary.BOUNDS_KEYS;
      case RETENTION -> PracticeVocabulary.RETENTION_KEYS;
      case SPREADS -> PracticeVocabulary.SPREADS_KEYS;
      case DENSITIES -> PracticeVocabulary.DENSITIES_KEYS;
      case STEAM -> PracticeVocabulary.STEAM_KEYS;
      case CAUTIONS -> PracticeVocabulary.CAUTIONS_KEYS;
      case SEQUENCE -> SequenceVocabulary.SEQUENCE_KEYS;
      case NUTRIENTS -> NutrientVocabulary.NUTRIENTS_KEYS;
      case INGREDIENTS -> IngredientVocabulary.INGREDIENT_KEYS;
      case SPECIES -> SpeciesVocabulary.SPECIES_KEYS;
      case PLANT -> PlantVocabulary.PLANT_KEYS;
      case LABEL -> LabelVocabulary.LABEL_KEYS;
      case PRICES -> PricesVocabulary.PRICES_KEYS;
      case LOTS -> LotsVocabulary.LOTS_KEYS;
      case BATCHES -> BatchVocabulary.BATCH_KEYS;
      case PLANS -> PlansVocabulary.PLANS_KEYS;
    };
  }
}
