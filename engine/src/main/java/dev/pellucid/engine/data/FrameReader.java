package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FeedTables.Group;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The files of a {@link Frame} to that frame. What others name is read before what names it: the
 * sources, settings, groups, stability classes, nutrients and species. A file that cannot be read
 * is one finding, and what it would have declared is then never called unknown elsewhere.
 */
final class FrameReader {
  private final Nodes nodes;
  private final Remarks remarks = new Remarks();
  private final List<String> missing = new ArrayList<>();

  private FrameReader(Nodes nodes) {
    this.nodes = nodes;
  }

  static Frame read(Nodes nodes) {
    return new FrameReader(nodes).frame();
  }

  /** The files that a frame is read of. */
  static List<DataFile> files(Nodes nodes) {
    List<DataFile> files = new ArrayList<>();
    files.addAll(nodes.under(Sources.FILE));
    files.addAll(nodes.under(GroupsReader.FILE));
    files.addAll(nodes.files(SettingsReader.FILE, RetentionReader.FILE));
    files.addAll(nodes.in(Places.NUTRIENTS));
    files.addAll(nodes.in(Places.SPECIES));
    return files;
  }

  private Frame frame() {
    Sources sources = new Sources(nodes.under(Sources.FILE), remarks);
    Settings settings = new SettingsReader(remarks).read(nodes.file(SettingsReader.FILE));
    SortedMap<String, Group> groups =
        new GroupsReader(remarks).read(nodes.under(GroupsReader.FILE));
    Map<String, Retention> retention =
        new RetentionReader(sources, remarks).read(nodes.file(RetentionReader.FILE));
    if (nodes.under(Sources.FILE).isEmpty()) {
      isThere(Sources.FILE, "source:", "what each source is", settings);
    }
    if (nodes.under(GroupsReader.FILE).isEmpty()) {
      isThere(GroupsReader.FILE, "groups:", "which groups of ingredients there are", settings);
    }
    Known classes = classes(retention.keySet());
    NutrientsReader nutrientsReader =
        new NutrientsReader(sources, classes, groups(groups.keySet()), remarks);
    Nutrients nutrients = nutrientsReader.read(nodes.in(Places.NUTRIENTS), placeOfData(settings));
    Known nutrientNames = nutrientsReader.known();
    SortedMap<String, Species> species = species(sources, nutrientNames);
    Names names =
        new Names(sources, groups(groups.keySet()), nutrientNames, known(species), classes);
    return new Frame(
        files(nodes),
        settings,
        placeOf(SettingsVocabulary.PLANT, settings),
        placeOf(SettingsVocabulary.LABEL, settings),
        groups,
        retention,
        nutrients.mendingFirst(atFault()),
        species,
        names,
        remarks.findings());
  }

  /** Says once that a file is not there of which others name something. */
  private void isThere(String file, String key, String what, Settings settings) {
    boolean named = false;
    for (DataFile one : nodes.files()) {
      named |= names(one.source().text(), key);
    }
    if (named) {
      remarks.add(ReferenceFindings.noFile(settings.place(), file, what));
      missing.add(file);
    }
  }

  /** Whether a name stands behind a key somewhere in a text. */
  private static boolean names(String text, String key) {
    int at = text.indexOf(key);
    while (at >= 0) {
      int behind = at + key.length();
      while (behind < text.length() && " [".indexOf(text.charAt(behind)) >= 0) {
        behind++;
      }
      if (behind < text.length() && Character.isLetter(text.charAt(behind))) {
        return true;
      }
      at = text.indexOf(key, behind);
    }
    return false;
  }

  /** The names of the files of the frame in which there is an error: all feeds hang on them. */
  private SortedSet<String> atFault() {
    SortedSet<String> atFault = new TreeSet<>(missing);
    for (DataFile file : files(nodes)) {
      if (!file.read().whole()) {
        atFault.add(file.source().fileName());
      }
    }
    for (Finding finding : remarks.findings()) {
      if (finding.severity() == Severity.ERROR
          && !finding.code().equals(ReferenceFindings.NO_FILE)
          && !finding.code().equals(NutrientFindings.NO_MOISTURE_NUTRIENT)) {
        atFault.add(finding.span().file().fileName());
      }
    }
    return atFault;
  }

  /** Where the settings keep out what comes along; the beginning of them where they do not. */
  private Span placeOfData(Settings settings) {
    SourceFile file = settings.place().file();
    return SettingsReader.isOwn(file)
        ? DataFile.fields(
                nodes.file(SettingsReader.FILE), SettingsVocabulary.SETTINGS_KEYS, new Remarks())
            .map(fields -> fields.placeOf(SettingsVocabulary.DATA))
            .orElse(file.beginning())
        : file.beginning();
  }

  private Span placeOf(Key<Text> key, Settings settings) {
    Optional<Fields> fields =
        DataFile.fields(
            nodes.file(SettingsReader.FILE), SettingsVocabulary.SETTINGS_KEYS, new Remarks());
    return fields.isPresent() ? fields.get().placeOf(key) : settings.place();
  }

  private Known classes(Set<String> classes) {
    return new Known(
        ReferenceFindings.STABILITY,
        "a stability class",
        RetentionReader.FILE,
        classes,
        couldBeRead(nodes.file(RetentionReader.FILE)));
  }

  private Known groups(Set<String> groups) {
    List<DataFile> files = nodes.under(GroupsReader.FILE);
    boolean whole = !files.isEmpty();
    for (DataFile file : files) {
      whole &= file.read().whole();
    }
    return new Known(ReferenceFindings.GROUP, "a group", GroupsReader.FILE, groups, whole);
  }

  /** Species and their groups. */
  private Known known(SortedMap<String, Species> species) {
    Set<String> words = new LinkedHashSet<>(species.keySet());
    for (Species one : species.values()) {
      words.addAll(one.groups());
    }
    boolean whole = true;
    for (DataFile file : nodes.in(Places.SPECIES)) {
      whole &= file.read().whole();
    }
    return new Known(
        ReferenceFindings.SPECIES, "a species or group of species", "species/", words, whole);
  }

  private static boolean couldBeRead(Optional<DataFile> file) {
    return file.isEmpty() || file.get().read().whole();
  }

  private SortedMap<String, Species> species(Sources sources, Known nutrients) {
    SortedMap<String, Species> species = new TreeMap<>();
    SpeciesReader reader = new SpeciesReader(sources, nutrients, remarks);
    for (DataFile file : nodes.in(Places.SPECIES)) {
      if (file.isNamed("a species", remarks)) {
        Species one = reader.read(file);
        Species earlier = species.putIfAbsent(one.name(), one);
        if (earlier != null) {
          remarks.add(
              ReferenceFindings.nameTwice(
                  one.name(), "a species", one.declared(), earlier.declared(), "another"));
        }
      }
    }
    return species;
  }
}
