package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FeedTables.Group;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * What nearly every other data file names or counts on: the settings, sources, groups, stability
 * classes, nutrients and species of a folder. Where one of these files is new, all is read anew,
 * for a typed ingredient counts on the order of the nutrients.
 *
 * @param files those that it was read of
 * @param plantPlace where the settings name the plant
 * @param labelPlace where the settings name the label rules
 * @param groups groups of ingredients
 * @param retention by stability class
 * @param findings what was wrong with these files
 */
record Frame(
    List<DataFile> files,
    Settings settings,
    Span plantPlace,
    Span labelPlace,
    SortedMap<String, Group> groups,
    Map<String, Retention> retention,
    Nutrients nutrients,
    SortedMap<String, Species> species,
    Names names,
    List<Finding> findings) {

  /** The same object where none of its files is new. */
  Frame next(Nodes nodes) {
    boolean same = Nodes.areSame(files, FrameReader.files(nodes));
    return same ? this : FrameReader.read(nodes);
  }
}
